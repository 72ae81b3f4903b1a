package fusetale.desk.kit;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javafx.scene.chart.ValueAxis;

/** An axis of a chart whose ends and marks are settled beforehand. */
public final class MarkedAxis extends ValueAxis<Number> {
    private final Map<Double, String> marks;

    /**
     * An axis.
     *
     * @param low lower end
     * @param high upper end
     * @param marks what is written where
     */
    public MarkedAxis(double low, double high, Map<Double, String> marks) {
        super(low, high);
        this.marks = new TreeMap<>(marks);
        setAnimated(false);
        setMinorTickVisible(false);
    }

    @Override
    protected List<Number> calculateMinorTickMarks() {
        return List.of();
    }

    @Override
    protected void setRange(Object range, boolean animate) {
        currentLowerBound.set(getLowerBound());
        double length = getSide().isVertical() ? getHeight() : getWidth();
        setScale(calculateNewScale(length, getLowerBound(), getUpperBound()));
    }

    @Override
    protected Object getRange() {
        return marks;
    }

    @Override
    protected List<Number> calculateTickValues(double length, Object range) {
        return List.copyOf(marks.keySet());
    }

    @Override
    protected String getTickMarkLabel(Number value) {
        return marks.getOrDefault(value.doubleValue(), "");
    }
}
