package fusetale.report;

import fusetale.explore.Times;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;

/** A logarithmic axis of times after switching on, with the marks a person counts in. */
final class TimeAxis extends LogAxis {
    private static final long serialVersionUID = 1;

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
        return List.copyOf(Times.marks(low, high).keySet());
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        List<NumberTick> ticks = new ArrayList<>();
        Times.marks(low, high)
                .forEach((at, text) -> ticks.add(
                        new NumberTick(TickType.MAJOR, at, text, TextAnchor.TOP_CENTER, TextAnchor.CENTER, 0)));
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
}
