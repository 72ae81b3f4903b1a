package fusetale.report.drawing;

import fusetale.report.Ink;
import fusetale.report.Pen;
import fusetale.report.Signs;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** Paints a plan on light paper. */
final class Painter {
    private final Graphics2D g;
    private final Pen pen;
    private final boolean blackOnly;

    /**
     * A painter.
     *
     * @param blackOnly whether only black and greys are used
     */
    Painter(Graphics2D g, boolean blackOnly) {
        this.g = g;
        this.blackOnly = blackOnly;
        this.pen = new Pen(g);
    }

    /** Frames of sections. */
    void sections(List<Section> sections) {
        for (Section section : sections) {
            Box box = section.bounds();
            g.setColor(color(Tone.FAINT_RULE));
            g.setStroke(new BasicStroke(1.25f));
            g.draw(new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height()));
        }
    }

    /** Their headings. */
    void headings(List<Section> sections) {
        sections.forEach(s -> label(s.title()));
    }

    /** All of a plan but its sections. */
    void ink(DrawingPlan plan) {
        plan.nets().forEach(this::net);
        plan.symbols().forEach(p -> {
            p.strokes().forEach(this::stroke);
            p.labels().forEach(this::label);
        });
        plan.points().forEach(this::point);
    }

    private void net(DrawnNet net) {
        g.setColor(color(Tone.INK));
        g.setStroke(line(Weight.WIRE));
        for (Segment wire : net.wires()) {
            g.draw(new Line2D.Double(wire.x1(), wire.y1(), wire.x2(), wire.y2()));
        }
        for (Spot joint : net.joints()) {
            g.fill(shape(Outline.circle(joint.x(), joint.y(), DrawnNet.JOINT_RADIUS)));
        }
        for (Flag flag : net.flags()) {
            flag.strokes().forEach(this::stroke);
            flag.labels().forEach(this::label);
        }
    }

    private void point(DrawnPoint point) {
        ring(point, point.red(), color(Tone.PAPER), Tone.INK);
        Spot black = point.black();
        if (black != null) {
            ring(point, black, color(Tone.INK), Tone.PAPER);
        }
    }

    private void ring(DrawnPoint point, Spot at, Color ground, Tone number) {
        Shape circle = shape(Outline.circle(at.x(), at.y(), DrawnPoint.RADIUS));
        g.setColor(ground);
        g.fill(circle);
        g.setColor(color(Tone.INK));
        g.setStroke(line(Weight.WIRE));
        g.draw(circle);
        label(new Label(point.number(), at.x(), at.y() + 4.5, Label.Anchor.MIDDLE, Label.Role.POINT, number));
    }

    /** One stroke or filled shape. */
    void stroke(Stroke stroke) {
        if (stroke.tone() == Tone.HATCH) {
            Box box = stroke.outline().bounds();
            Rectangle2D hatched = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
            if (blackOnly) {
                Signs.blackHatch(g, hatched);
            } else {
                Signs.hatch(g, hatched);
            }
            return;
        }
        g.setColor(color(stroke.tone()));
        if (stroke.filled()) {
            g.fill(shape(stroke.outline()));
        } else {
            g.setStroke(line(stroke.weight()));
            g.draw(shape(stroke.outline()));
        }
    }

    /** One text. */
    void label(Label label) {
        pen.write(
                label.text(),
                Letters.font(label.role()),
                color(label.tone()),
                label.anchor() == Label.Anchor.START
                        ? label.x()
                        : label.bounds().x(),
                label.y());
    }

    private static BasicStroke line(Weight weight) {
        return new BasicStroke((float) weight.pixels(), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private Color color(Tone tone) {
        return blackOnly ? grey(tone) : onLightPaper(tone);
    }

    private static Color grey(Tone tone) {
        return switch (tone) {
            case INK, SOFT_INK, MARKER_LINE, HATCH -> Color.BLACK;
            case RULE -> new Color(0x707070);
            case FAINT_RULE -> new Color(0xB0B0B0);
            case PAPER -> Color.WHITE;
            case MARKER_FILL -> new Color(0xD8D8D8);
            case SHADE -> new Color(0xE8E8E8);
        };
    }

    private static Color onLightPaper(Tone tone) {
        return switch (tone) {
            case INK -> Ink.INK;
            case SOFT_INK -> Ink.SOFT_INK;
            case RULE -> Ink.RULE;
            case FAINT_RULE -> Ink.FAINT_RULE;
            case PAPER -> Ink.PAPER;
            case MARKER_LINE -> Ink.MARKER_LINE;
            case MARKER_FILL -> Ink.MARKER_FILL;
            case SHADE -> Ink.HEALTHY_RANGE;
            case HATCH -> Ink.DANGER_GROUND;
        };
    }

    private static Shape shape(Outline outline) {
        Path2D path = new Path2D.Double();
        for (Outline.Step step : outline.steps()) {
            if (step instanceof Outline.Move m) {
                path.moveTo(m.x(), m.y());
            } else if (step instanceof Outline.Line l) {
                path.lineTo(l.x(), l.y());
            } else if (step instanceof Outline.Curve c) {
                path.curveTo(c.x1(), c.y1(), c.x2(), c.y2(), c.x(), c.y());
            } else {
                path.closePath();
            }
        }
        return path;
    }
}
