package fusetale.report;

import fusetale.explore.HealthyRange;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTick;
import org.jfree.chart.axis.TickType;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.Range;

/**
 * How far a reading moved, lower to the left and higher to the right: linear within what healthy machines show (−1 to 1),
 * a decade a step outside, so that a rail of 5 V and one of 190 V stand on one scale.
 */
final class MovedAxis extends NumberAxis {
    private static final long serialVersionUID = 1;

    private static final double[] TICKS = {-10_000, -1000, -100, -10, -3, 3, 10, 100, 1000, 10_000};

    private static final double OVER_RANGE = HealthyRange.TO_OR_FROM_OVER_RANGE;

    private final double leftEnd;
    private final double rightEnd;

    /**
     * An axis from {@code lowest} to {@code highest}, both rounded outwards and never nearer than 3 half-widths.
     *
     * @param lowest most negative figure to show
     * @param highest most positive figure to show
     */
    MovedAxis(double lowest, double highest) {
        super(null);
        leftEnd = -end(-lowest);
        rightEnd = end(highest);
        setRange(new Range(leftEnd, rightEnd), true, false);
        setAxisLineVisible(false);
        setTickMarksVisible(false);
        setTickLabelFont(Type.TABLE.at(14));
        setTickLabelPaint(Ink.SOFT_INK);
    }

    /** A figure's place on the scale, in steps: 1 at the edge of the healthy range, one more a decade. */
    static double steps(double moved) {
        double size = Math.abs(moved);
        return size <= 1 ? moved : Math.signum(moved) * (1 + Math.log10(size));
    }

    /** The figures marked on the scale. */
    double[] marks() {
        return Arrays.stream(TICKS)
                .filter(at -> at >= leftEnd && at <= rightEnd)
                .toArray();
    }

    @Override
    public double valueToJava2D(double value, Rectangle2D area, RectangleEdge edge) {
        double within = Math.max(leftEnd, Math.min(rightEnd, value));
        double share = (steps(within) - steps(leftEnd)) / (steps(rightEnd) - steps(leftEnd));
        return area.getX() + share * area.getWidth();
    }

    @Override
    public double java2DToValue(double x, Rectangle2D area, RectangleEdge edge) {
        double share = (x - area.getX()) / area.getWidth();
        double step = steps(leftEnd) + share * (steps(rightEnd) - steps(leftEnd));
        double size = Math.abs(step);
        return size <= 1 ? step : Math.signum(step) * Math.pow(10, size - 1);
    }

    @Override
    public List<NumberTick> refreshTicks(Graphics2D g, AxisState state, Rectangle2D area, RectangleEdge edge) {
        List<NumberTick> ticks = new ArrayList<>();
        for (double at : marks()) {
            String text = Math.abs(at) >= OVER_RANGE ? Figures.OVER_RANGE : Figures.plain(Math.abs(at)) + "×";
            ticks.add(new NumberTick(TickType.MAJOR, at, text, TextAnchor.TOP_CENTER, TextAnchor.CENTER, 0));
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

    /** A little outside the figure, so that a sign at the end is whole; 5 at least. */
    private static double end(double size) {
        return Math.max(5, size * 1.8);
    }
}
