package fusetale.report;

import fusetale.explore.Compared;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.annotations.AbstractXYAnnotation;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.ui.RectangleEdge;
import org.jspecify.annotations.Nullable;

/** One row of the strip: the healthy range as a broad bar, the way a reading went as a stem, ring and diamond. */
final class StripRow extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1;

    private static final double BAR_HEIGHT = 14;

    @SuppressWarnings("serial") // charts are drawn, never serialised
    private final Compared compared;

    private final int row;

    StripRow(Compared compared, int row) {
        this.compared = compared;
        this.row = row;
    }

    @Override
    public void draw(
            Graphics2D g,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis moved,
            ValueAxis rows,
            int rendererIndex,
            @Nullable PlotRenderingInfo info) {
        double y = rows.valueToJava2D(row, area, RectangleEdge.LEFT);
        double nominal = moved.valueToJava2D(0, area, RectangleEdge.BOTTOM);
        double supposed = moved.valueToJava2D(StripChart.signed(compared), area, RectangleEdge.BOTTOM);
        double low = moved.valueToJava2D(StripChart.lowEnd(compared), area, RectangleEdge.BOTTOM);
        double high = moved.valueToJava2D(StripChart.highEnd(compared), area, RectangleEdge.BOTTOM);
        g.setColor(Ink.HEALTHY_RANGE);
        g.fill(new Rectangle2D.Double(low, y - BAR_HEIGHT / 2, high - low, BAR_HEIGHT));
        boolean tells = !compared.tooCloseToTell();
        g.setColor(tells ? Ink.MARKER_LINE : Ink.SOFT_INK);
        g.setStroke(new BasicStroke(tells ? 3.2f : 1.4f));
        g.draw(new Line2D.Double(nominal, y, supposed, y));
        if (tells) {
            Signs.diamond(g, supposed, y);
        } else {
            Signs.hollowDiamond(g, supposed, y, Ink.PAPER);
        }
        Signs.ring(g, nominal, y);
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
