package fusetale.report.drawing;

import fusetale.report.Ink;
import fusetale.report.Picture;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;

/** A plan as a picture, healthy or with marks. */
public final class DrawingPicture implements Picture {
    private final DrawingPlan plan;
    private final Marks marks;
    private final String sentence;

    /**
     * A picture to paint.
     *
     * @param plan what is drawn
     * @param marks what is marked on it
     * @param sentence what it shows, as one sentence
     */
    public DrawingPicture(DrawingPlan plan, Marks marks, String sentence) {
        this.plan = plan;
        this.marks = marks;
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

    /** Every part with what it is joined to; what is marked first. */
    @Override
    public String description() {
        return String.join("\n", new DrawingText(plan, marks).lines());
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
        marks.swipes().forEach(painter::stroke);
        painter.headings(plan.sections());
        painter.ink(plan);
        marks.strokes().forEach(painter::stroke);
        marks.labels().forEach(painter::label);
    }
}
