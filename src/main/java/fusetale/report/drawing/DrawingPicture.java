package fusetale.report.drawing;

import fusetale.report.Ink;
import fusetale.report.Picture;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;

/** A plan as a picture, healthy or with marks. */
public final class DrawingPicture implements Picture {
    private final DrawingPlan plan;
    private final String sentence;

    /** The drawing of a healthy machine. */
    public DrawingPicture(DrawingPlan plan, String sentence) {
        this.plan = plan;
        this.sentence = sentence;
    }

    @Override
    public int width() {
        return (int) Math.ceil(plan.width());
    }

    @Override
    public int height() {
        return (int) Math.ceil(plan.height());
    }

    @Override
    public String sentence() {
        return sentence;
    }

    @Override
    public String description() {
        return "";
    }

    @Override
    public void paint(Graphics2D g) {
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setColor(Ink.PAPER);
        g.fill(new Rectangle2D.Double(0, 0, plan.width(), plan.height()));
        Painter painter = new Painter(g);
        painter.sections(plan.sections());
        painter.ink(plan);
    }
}
