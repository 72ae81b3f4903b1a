package fusetale.report;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Harm;
import fusetale.explore.Happening;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jspecify.annotations.Nullable;

/**
 * When what happens: a row an event, its bar from the first to the last of the machines drawn, a stroke where half of them have come
 * to it. Hatched what is lost, grey what passes a rating, a frame what melts on purpose.
 */
final class TimelineChart {
    private static final double BAR_HEIGHT = 14;
    private static final double LEAST_BAR = 4;
    private static final double DECADE_BEFORE = 3;
    private static final double LEAST_SECONDS = 1e-3;

    /** So that the last mark is not cut. */
    private static final double ROOM = 1.2;

    private TimelineChart() {}

    /** The chart; its data area is the whole width it is drawn in, and its height less {@link StripChart#SCALE_HEIGHT}. */
    static JFreeChart of(List<Happening> rows, Aftermath.Settings settings) {
        double soonest =
                rows.stream().mapToDouble(Happening::leastSeconds).min().orElse(settings.horizonSeconds() / 1000);
        double low = Math.max(LEAST_SECONDS, soonest / DECADE_BEFORE);
        NumberAxis rowAxis = new NumberAxis(null);
        rowAxis.setRange(-0.5, Math.max(0.5, rows.size() - 0.5));
        rowAxis.setInverted(true);
        rowAxis.setVisible(false);
        XYPlot plot = new XYPlot(null, new TimeAxis(low, ROOM * settings.horizonSeconds()), rowAxis, null);
        plot.addAnnotation(new Marks());
        for (int k = 0; k < rows.size(); k++) {
            plot.addAnnotation(new Row(rows.get(k), k));
        }
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setDomainGridlinesVisible(false);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        AxisSpace below = new AxisSpace();
        below.setBottom(StripChart.SCALE_HEIGHT);
        plot.setFixedDomainAxisSpace(below);
        plot.setFixedRangeAxisSpace(new AxisSpace());
        return StripChart.bare(plot);
    }

    /** Draws the bar of one event as its gravity asks for. */
    static void bar(Graphics2D g, Rectangle2D box, Harm.Gravity gravity) {
        switch (gravity) {
            case DAMAGE -> Signs.hatch(g, box);
            case WARNING -> {
                g.setColor(Ink.RULE);
                g.fill(box);
            }
            case RELIEF -> {
                g.setColor(Ink.PAPER);
                g.fill(box);
                g.setColor(Ink.INK);
                g.setStroke(new BasicStroke(2f));
                g.draw(box);
            }
        }
    }

    /** One row. */
    private static final class Row extends AbstractXYAnnotation {
        private static final long serialVersionUID = 1;

        @SuppressWarnings("serial") // charts are drawn, never serialised
        private final Happening event;

        private final int row;

        Row(Happening event, int row) {
            this.event = event;
            this.row = row;
        }

        @Override
        public void draw(
                Graphics2D g,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis times,
                ValueAxis rows,
                int rendererIndex,
                @Nullable PlotRenderingInfo info) {
            double y = rows.valueToJava2D(row, area, RectangleEdge.LEFT);
            double from = x(event.leastSeconds(), times, area);
            double to = Math.max(from + LEAST_BAR, x(event.mostSeconds(), times, area));
            bar(g, new Rectangle2D.Double(from, y - BAR_HEIGHT / 2, to - from, BAR_HEIGHT), event.gravity());
            double middle = x(event.middleSeconds(), times, area);
            g.setColor(Ink.MARKER_LINE);
            g.setStroke(new BasicStroke(2.4f));
            g.draw(new Line2D.Double(middle, y - BAR_HEIGHT / 2 - 3, middle, y + BAR_HEIGHT / 2 + 3));
        }

        private static double x(double seconds, ValueAxis times, Rectangle2D area) {
            double within = Math.max(times.getLowerBound(), Math.min(seconds, times.getUpperBound()));
            return times.valueToJava2D(within, area, RectangleEdge.BOTTOM);
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return this == other;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(this);
        }
    }

    /** Upright lines at the marks of the axis. */
    private static final class Marks extends AbstractXYAnnotation {
        private static final long serialVersionUID = 1;

        @Override
        public void draw(
                Graphics2D g,
                XYPlot plot,
                Rectangle2D area,
                ValueAxis times,
                ValueAxis rows,
                int rendererIndex,
                @Nullable PlotRenderingInfo info) {
            g.setStroke(new BasicStroke(1f));
            g.setColor(Ink.FAINT_RULE);
            if (times instanceof TimeAxis axis) {
                for (double at : axis.marksWithin()) {
                    double x = axis.valueToJava2D(at, area, RectangleEdge.BOTTOM);
                    g.draw(new Line2D.Double(x, area.getMinY(), x, area.getMaxY()));
                }
            }
        }

        @Override
        public boolean equals(@Nullable Object other) {
            return this == other;
        }

        @Override
        public int hashCode() {
            return System.identityHashCode(this);
        }
    }
}
