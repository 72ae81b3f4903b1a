package fusetale.desk.waves;

import fusetale.desk.kit.MarkedAxis;
import fusetale.desk.kit.Signs;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.chart.LineChart;
import javafx.scene.chart.XYChart;
import javafx.scene.shape.Line;

/** The large chart of one trace: healthy ink over the broad supposed line, and an upright line where the cursor stands. */
final class CursorChart extends LineChart<Number, Number> {
    private static final Words WORDS = Words.of(CursorChart.class);

    private static final double MILLI = 1000;
    private static final long MOST_MARKS = 5;
    private static final int MOST_SAMPLES = 700;
    private static final double FIGURES_WIDTH = 58;

    /** Room beyond both ends of the value axis, so that a broad line there is whole. */
    private static final double ROOM_RATIO = 0.07;

    private final WaveModel model;
    private final Line line = new Line();
    private final Node ring = Signs.ring();
    private final Node diamond = Signs.diamond();
    private double seconds;

    CursorChart(WaveModel model) {
        super(timeAxis(model), valueAxis(model));
        this.model = model;
        setAnimated(false);
        setLegendVisible(false);
        setCreateSymbols(false);
        setHorizontalGridLinesVisible(false);
        setVerticalGridLinesVisible(false);
        setHorizontalZeroLineVisible(model.low() < 0 && model.high() > 0);
        setVerticalZeroLineVisible(false);
        setFocusTraversable(false);
        line.getStyleClass().add("wave-cursor");
        setData(FXCollections.observableArrayList(List.of(series(model.supposed()), series(model.built()))));
        for (Node each : List.of(line, diamond, ring)) {
            each.setMouseTransparent(true);
            getPlotChildren().add(each);
        }
    }

    private static MarkedAxis timeAxis(WaveModel model) {
        double end = model.seconds() * MILLI;
        double step = WaveModel.step(end);
        Map<Double, String> marks = new HashMap<>();
        long last = (long) Math.floor(end / step);
        for (long k = 0; k <= last; k++) {
            String figure = model.axisEnd(k * step);
            marks.put(k * step, k == last ? WORDS.say("milliseconds", figure) : figure);
        }
        return new MarkedAxis(0, end, marks);
    }

    private static MarkedAxis valueAxis(WaveModel model) {
        double room = ROOM_RATIO * (model.high() - model.low());
        Map<Double, String> marks = new HashMap<>();
        long first = Math.round(model.low() / model.tick());
        long last = Math.round(model.high() / model.tick());
        long every = last - first <= MOST_MARKS ? 1 : last - first <= 2 * MOST_MARKS ? 2 : 5;
        for (long k = first; k <= last; k++) {
            if (k % every == 0) {
                marks.put(k * model.tick(), model.axisEnd(k * model.tick()));
            }
        }
        MarkedAxis axis = new MarkedAxis(model.low() - room, model.high() + room, marks);
        // charts below each other begin at one place
        axis.setMinWidth(FIGURES_WIDTH);
        axis.setPrefWidth(FIGURES_WIDTH);
        return axis;
    }

    private static XYChart.Series<Number, Number> series(Curve curve) {
        XYChart.Series<Number, Number> series = new XYChart.Series<>();
        double[] samples = curve.thinned(MOST_SAMPLES);
        List<XYChart.Data<Number, Number>> data = new ArrayList<>();
        for (int k = 0; k < samples.length; k += 2) {
            data.add(new XYChart.Data<>(samples[k] * MILLI, samples[k + 1]));
        }
        series.setData(FXCollections.observableArrayList(data));
        return series;
    }

    WaveModel model() {
        return model;
    }

    /** Puts the cursor at a time [s]. */
    void cursor(double at) {
        seconds = at;
        placeCursor();
    }

    /** The time [s] under a point of the scene, within the chart. */
    double timeAt(double sceneX, double sceneY) {
        double x = getXAxis().sceneToLocal(sceneX, sceneY).getX();
        double milli = getXAxis().getValueForDisplay(x).doubleValue();
        return Math.max(0, Math.min(model.seconds(), milli / MILLI));
    }

    @Override
    protected void layoutPlotChildren() {
        super.layoutPlotChildren();
        placeCursor();
    }

    private void placeCursor() {
        double x = getXAxis().getDisplayPosition(seconds * MILLI);
        line.setStartX(x);
        line.setEndX(x);
        line.setStartY(0);
        line.setEndY(getYAxis().getHeight());
        ring.setLayoutX(x);
        ring.setLayoutY(getYAxis().getDisplayPosition(model.builtAt(seconds)));
        diamond.setLayoutX(x);
        diamond.setLayoutY(getYAxis().getDisplayPosition(model.supposedAt(seconds)));
    }
}
