package fusetale.report;

import fusetale.explore.Compared;
import java.awt.Color;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleInsets;

/** The chart of how far each reading moved: a row a reading, the healthy range drawn, all on {@link MovedAxis}. */
final class StripChart {
    /** Height [px] below the rows for the scale. */
    static final double SCALE_HEIGHT = 24;

    private StripChart() {}

    /** The chart; its data area is the whole width it is drawn in, and its height less {@link #SCALE_HEIGHT}. */
    static JFreeChart of(List<Compared> rows) {
        double lowest = 0;
        double highest = 0;
        for (Compared row : rows) {
            lowest = Math.min(lowest, signed(row));
            highest = Math.max(highest, signed(row));
        }
        XYPlot plot = new XYPlot(null, new MovedAxis(lowest, highest), rowAxis(rows.size()), null);
        plot.addAnnotation(new StripLines());
        for (int i = 0; i < rows.size(); i++) {
            plot.addAnnotation(new StripRow(rows.get(i), i));
        }
        plot.setBackgroundPaint(null);
        plot.setOutlineVisible(false);
        plot.setRangeGridlinesVisible(false);
        plot.setInsets(RectangleInsets.ZERO_INSETS);
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        AxisSpace below = new AxisSpace();
        below.setBottom(SCALE_HEIGHT);
        plot.setFixedDomainAxisSpace(below);
        plot.setFixedRangeAxisSpace(new AxisSpace());
        return bare(plot);
    }

    /** A chart without ground, title, legend, padding. */
    static JFreeChart bare(XYPlot plot) {
        JFreeChart chart = new JFreeChart(null, null, plot, false);
        chart.setBackgroundPaint(new Color(0, 0, 0, 0));
        chart.setPadding(RectangleInsets.ZERO_INSETS);
        return chart;
    }

    /** How far a reading moved, negative where it fell. OL counts as higher than any figure. */
    static double signed(Compared compared) {
        boolean fell = compared.asBuilt().overRange()
                ? !compared.asSupposed().overRange()
                : !compared.asSupposed().overRange()
                        && compared.asSupposed().value() < compared.asBuilt().value();
        return fell ? -compared.moved() : compared.moved();
    }

    /** Where the low end of the healthy range stands on the scale of its row. */
    static double lowEnd(Compared compared) {
        return ofRange(compared, compared.healthy().low(), -1);
    }

    /** Where the high end of the healthy range stands on the scale of its row. */
    static double highEnd(Compared compared) {
        return ofRange(compared, compared.healthy().high(), 1);
    }

    private static double ofRange(Compared compared, double end, double otherwise) {
        double low = compared.healthy().low();
        double high = compared.healthy().high();
        if (compared.asBuilt().overRange() || Double.isInfinite(high)) {
            return otherwise;
        }
        double half = Math.max((high - low) / 2, compared.asBuilt().halfWidth());
        double share = half == 0 ? 0 : (end - compared.asBuilt().value()) / half;
        // nominal lies within the range but for rounding, so an end is never more than its whole width away
        return Math.max(-2, Math.min(2, share));
    }

    private static NumberAxis rowAxis(int rows) {
        NumberAxis axis = new NumberAxis();
        axis.setInverted(true);
        axis.setRange(-0.5, Math.max(1, rows) - 0.5);
        axis.setVisible(false);
        return axis;
    }
}
