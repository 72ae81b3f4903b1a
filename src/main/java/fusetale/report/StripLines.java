package fusetale.report;

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

/** The upright lines of the strip, behind its rows. */
final class StripLines extends AbstractXYAnnotation {
    private static final long serialVersionUID = 1;

    @Override
    public void draw(
            Graphics2D g,
            XYPlot plot,
            Rectangle2D area,
            ValueAxis moved,
            ValueAxis rows,
            int rendererIndex,
            @Nullable PlotRenderingInfo info) {
        g.setStroke(new BasicStroke(1f));
        if (moved instanceof MovedAxis axis) {
            for (double at : axis.marks()) {
                line(g, area, axis.valueToJava2D(at, area, RectangleEdge.BOTTOM));
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

    private static void line(Graphics2D g, Rectangle2D area, double x) {
        g.setColor(Ink.FAINT_RULE);
        g.draw(new Line2D.Double(x, area.getMinY(), x, area.getMaxY()));
    }
}
