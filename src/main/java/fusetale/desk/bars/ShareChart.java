package fusetale.desk.bars;

import fusetale.desk.kit.MarkedAxis;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import javafx.collections.FXCollections;
import javafx.scene.chart.CategoryAxis;
import javafx.scene.chart.XYChart;

/** A JavaFX chart of test points down and shares across, whose marks are the product's own signs. */
final class ShareChart extends XYChart<Number, String> {
    private static final double LEAST_COLUMN = 60;
    private static final double MARGIN = 12;

    private final ShareModel scale;
    private final MarkedAxis axis;
    private final CategoryAxis points;
    private final List<BarLine> lines;

    private ShareChart(ShareModel scale, MarkedAxis axis, CategoryAxis points, List<BarLine> lines) {
        super(axis, points);
        this.scale = scale;
        this.axis = axis;
        this.points = points;
        this.lines = lines;
        setAnimated(false);
        setLegendVisible(false);
        setHorizontalGridLinesVisible(false);
        setVerticalGridLinesVisible(true);
        setAlternativeRowFillVisible(false);
        setHorizontalZeroLineVisible(false);
        setVerticalZeroLineVisible(false);
        setFocusTraversable(false);
        setData(FXCollections.observableArrayList());
        getPlotChildren().addAll(lines);
    }

    /**
     * A chart.
     *
     * @param rows one a test point, from top to bottom
     * @param plotWidth about how wide the plot is [px], which the figures at its right take their part of
     */
    static ShareChart of(List<BarRow> rows, double plotWidth) {
        ShareModel scale = ShareModel.of(rows);
        List<BarLine> lines = rows.stream().map(BarLine::new).toList();
        double figures = BarLine.Columns.width(lines, LEAST_COLUMN) + 2 * MARGIN;
        double part = Math.min(0.6, figures / Math.max(plotWidth, 1));
        double high = scale.low() + (scale.high() - scale.low()) / (1 - part);
        List<String> names = new ArrayList<>(rows.stream().map(BarRow::point).toList());
        // a category axis counts from below
        Collections.reverse(names);
        CategoryAxis points = new CategoryAxis(FXCollections.observableArrayList(names));
        points.setAnimated(false);
        points.setGapStartAndEnd(true);
        return new ShareChart(scale, new MarkedAxis(scale.low(), high, scale.marks()), points, lines);
    }

    List<BarLine> lines() {
        return lines;
    }

    /** Right edges of the columns of figures within the plot [px]. */
    BarLine.Columns columns() {
        return BarLine.Columns.of(lines, axis.getWidth() - MARGIN, LEAST_COLUMN);
    }

    @Override
    protected void layoutPlotChildren() {
        double height = points.getHeight() / Math.max(1, lines.size());
        BarLine.Columns columns = columns();
        for (BarLine line : lines) {
            double middle = points.getDisplayPosition(line.row().point());
            line.resizeRelocate(0, middle - height / 2, axis.getWidth(), height);
            line.place(scale, axis, columns, height);
        }
    }

    @Override
    protected void dataItemAdded(Series<Number, String> series, int itemIndex, Data<Number, String> item) {}

    @Override
    protected void dataItemRemoved(Data<Number, String> item, Series<Number, String> series) {}

    @Override
    protected void dataItemChanged(Data<Number, String> item) {}

    @Override
    protected void seriesAdded(Series<Number, String> series, int seriesIndex) {}

    @Override
    protected void seriesRemoved(Series<Number, String> series) {}
}
