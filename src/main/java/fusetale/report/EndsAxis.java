package fusetale.report;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;

/** An axis that writes its two ends only. */
final class EndsAxis extends NumberAxis {
    private static final long serialVersionUID = 1;

    @SuppressWarnings("serial") // charts are drawn, never serialised
    private final DoubleFunction<String> text;

    private final double low;
    private final double high;

    /**
     * An axis.
     *
     * @param low lower end
     * @param high upper end
     * @param room what to leave beyond both, as a share of the whole, so that a broad line at an end is not cut
     * @param text how an end is written
     */
    EndsAxis(double low, double high, double room, DoubleFunction<String> text) {
        super(null);
        this.text = text;
        this.low = low;
        this.high = high;
        setRange(new Range(low - room * (high - low), high + room * (high - low)), true, false);
        setAxisLineVisible(true);
        setAxisLinePaint(Ink.RULE);
        setTickMarksVisible(false);
        setTickLabelFont(Type.TABLE.at(14));
        setTickLabelPaint(Ink.SOFT_INK);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        boolean across = RectangleEdge.isTopOrBottom(edge);
        return List.of(
                tick(low, across ? TextAnchor.TOP_LEFT : TextAnchor.BOTTOM_RIGHT), tick(high, TextAnchor.TOP_RIGHT));
    }

    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }

    private NumberTick tick(double at, TextAnchor anchor) {
        return new NumberTick(TickType.MAJOR, at, text.apply(at), anchor, TextAnchor.CENTER, 0);
    }
}
