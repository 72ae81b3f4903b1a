package fusetale.report;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A logarithmic axis of times after switching on, with the marks a person counts in. */
final class TimeAxis extends LogAxis {
    private static final long serialVersionUID = 1;

    /** Marks [s] and how they are called. */
    private static final Map<Double, String> MARKS = marks();

    private final double low;
    private final double high;

    /**
     * An axis.
     *
     * @param low lower end [s], above 0
     * @param high upper end [s]
     */
    TimeAxis(double low, double high) {
        super(null);
        this.low = low;
        this.high = high;
        setRange(low, high);
        setAxisLineVisible(true);
        setAxisLinePaint(Ink.RULE);
        setTickMarksVisible(false);
        setTickLabelFont(Type.TABLE.at(14));
        setTickLabelPaint(Ink.SOFT_INK);
    }

    /** The marks within the axis [s]. */
    List<Double> marksWithin() {
        return MARKS.keySet().stream().filter(m -> m >= low && m <= high).toList();
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        List<NumberTick> ticks = new ArrayList<>();
        for (double at : marksWithin()) {
            ticks.add(new NumberTick(TickType.MAJOR, at, MARKS.get(at), TextAnchor.TOP_CENTER, TextAnchor.CENTER, 0));
        }
        return ticks;
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }

    private static Map<Double, String> marks() {
        Map<Double, String> marks = new LinkedHashMap<>();
        marks.put(0.001, "1 ms");
        marks.put(0.01, "10 ms");
        marks.put(0.1, "0.1 s");
        marks.put(1.0, "1 s");
        marks.put(10.0, "10 s");
        marks.put(60.0, "1 min");
        marks.put(600.0, "10 min");
        marks.put(3600.0, "1 h");
        marks.put(8 * 3600.0, "8 h");
        marks.put(24 * 3600.0, "1 day");
        return marks;
    }
}
