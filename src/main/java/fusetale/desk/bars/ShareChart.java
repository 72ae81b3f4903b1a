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
    private static final double MARGIN = 12;
    private static final double LEAST_SCALE = 160;

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
     * @param plotWidth how wide the plot is [px]
     */
    static ShareChart of(List<BarRow> rows, double plotWidth) {
        ShareModel scale = ShareModel.of(rows);
        List<BarLine> lines = rows.stream().map(BarLine::new).toList();
        double figures = BarLine.Columns.width(lines, ColumnHeads.widths()) + 2 * MARGIN;
        double points = lines.stream().mapToDouble(BarLine::pointWidth).max().orElse(0) + 3 * MARGIN;
        double across = Math.max(LEAST_SCALE, plotWidth - figures - points);
        double pixel = (scale.high() - scale.low()) / across;
        MarkedAxis axis = new MarkedAxis(scale.low() - points * pixel, scale.high() + figures * pixel, scale.marks());
        // names, figures and the heads of columns stand in the plot and above it
        axis.setTickLabelsVisible(false);
        axis.setTickMarkVisible(false);
        List<String> names = new ArrayList<>(rows.stream().map(BarRow::point).toList());
        // a category axis counts from below
        Collections.reverse(names);
        CategoryAxis category = new CategoryAxis(FXCollections.observableArrayList(names));
        category.setAnimated(false);
        category.setGapStartAndEnd(true);
        category.setTickLabelsVisible(false);
        category.setTickMarkVisible(false);
        category.setMinWidth(1);
        category.setPrefWidth(1);
        return new ShareChart(scale, axis, category, lines);
    }

    List<BarLine> lines() {
        return lines;
    }

    ShareModel scale() {
        return scale;
    }

    /** Where a mark of the scale stands in the plot [px]. */
    double x(double mark) {
        return axis.getDisplayPosition(mark);
    }

    /** Right edges of the columns of figures within the plot [px]. */
    BarLine.Columns columns() {
        return BarLine.Columns.of(lines, axis.getWidth() - MARGIN, ColumnHeads.widths());
    }

    @Override
    protected void layoutPlotChildren() {
        double height = points.getHeight() / Math.max(1, lines.size());
        BarLine.Columns columns = columns();
        for (int k = 0; k < lines.size(); k++) {
            lines.get(k).resizeRelocate(0, k * height, axis.getWidth(), height);
            lines.get(k).place(scale, axis, columns, height);
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
