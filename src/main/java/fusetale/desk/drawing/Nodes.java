package fusetale.desk.drawing;

import fusetale.desk.kit.Faces;
import fusetale.report.drawing.Box;
import fusetale.report.drawing.DrawnNet;
import fusetale.report.drawing.DrawnPoint;
import fusetale.report.drawing.Flag;
import fusetale.report.drawing.Label;
import fusetale.report.drawing.Outline;
import fusetale.report.drawing.Segment;
import fusetale.report.drawing.Spot;
import fusetale.report.drawing.Stroke;
import fusetale.report.drawing.Tone;
import fusetale.report.drawing.Weight;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.shape.ArcTo;
import javafx.scene.shape.Circle;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.CubicCurveTo;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Text;
import org.jspecify.annotations.Nullable;

/** Turns the plan of a drawing, which knows no toolkit, into nodes. Colours come from the style sheet by tone. */
final class Nodes {
    private static final double POINT_BASE = 4.5;

    private Nodes() {}

    /** One stroke or filled shape; a hatch is a box of stripes. */
    static Node stroke(Stroke stroke) {
        if (stroke.tone() == Tone.HATCH) {
            Box box = stroke.outline().bounds();
            Region hatch = fusetale.desk.kit.Signs.hatch(box.width(), box.height());
            hatch.relocate(box.x(), box.y());
            hatch.resize(box.width(), box.height());
            return hatch;
        }
        Path path = path(stroke.outline());
        if (stroke.filled()) {
            path.setStroke(null);
            path.getStyleClass().setAll("drawn-fill", tone(stroke.tone()));
        } else {
            line(path, stroke.weight());
            path.getStyleClass().setAll("drawn-line", tone(stroke.tone()));
        }
        return path;
    }

    /** One text. */
    static Text label(Label label) {
        Text text = new Text(label.text());
        Faces face = switch (label.role()) {
            case NAME, NET, POINT -> Faces.TABLE_NAME;
            case VALUE, NOTE -> Faces.TABLE;
            case HEADING -> Faces.HEADING;
            case FIGURE -> Faces.TABLE_FIGURE;
        };
        text.setFont(face.at(label.role().pixels()));
        text.getStyleClass().setAll("drawn-fill", tone(label.tone()));
        double left = switch (label.anchor()) {
            case START -> label.x();
            case MIDDLE -> label.x() - text.getLayoutBounds().getWidth() / 2;
            case END -> label.x() - text.getLayoutBounds().getWidth();
        };
        text.setX(left);
        text.setY(label.y());
        return text;
    }

    /** Wires, joints and flags of a net. */
    static Group net(DrawnNet net) {
        Path wires = new Path();
        for (Segment wire : net.wires()) {
            wires.getElements().addAll(new MoveTo(wire.x1(), wire.y1()), new LineTo(wire.x2(), wire.y2()));
        }
        line(wires, Weight.WIRE);
        wires.getStyleClass().setAll("drawn-line", tone(Tone.INK));
        Group group = new Group(wires);
        if (!net.joints().isEmpty()) {
            Path dots = new Path();
            net.joints().forEach(j -> dots.getElements().addAll(dot(j)));
            dots.setStroke(null);
            dots.getStyleClass().setAll("drawn-fill", tone(Tone.INK));
            group.getChildren().add(dots);
        }
        for (Flag flag : net.flags()) {
            group.getChildren().addAll(strokes(flag.strokes()));
            flag.labels().forEach(l -> group.getChildren().add(label(l)));
        }
        return group;
    }

    /** The rings of a test point. */
    static Group point(DrawnPoint point) {
        Group group = new Group();
        ring(group, point, point.red(), Tone.PAPER, Tone.INK);
        Spot black = point.black();
        if (black != null) {
            ring(group, point, black, Tone.INK, Tone.PAPER);
        }
        return group;
    }

    private static void ring(Group group, DrawnPoint point, Spot at, Tone ground, Tone number) {
        Circle ring = new Circle(at.x(), at.y(), DrawnPoint.RADIUS);
        ring.getStyleClass().setAll("drawn-fill", "drawn-ring", tone(ground));
        ring.setStrokeWidth(Weight.WIRE.pixels());
        group.getChildren().add(ring);
        group.getChildren()
                .add(label(new Label(
                        point.number(), at.x(), at.y() + POINT_BASE, Label.Anchor.MIDDLE, Label.Role.POINT, number)));
    }

    /** Strokes in their order; lines of one tone and weight that follow each other are one node, since each node costs its styling. */
    static List<Node> strokes(List<Stroke> strokes) {
        List<Node> nodes = new ArrayList<>();
        @Nullable Stroke last = null;
        for (Stroke next : strokes) {
            if (last != null && alike(last, next) && nodes.get(nodes.size() - 1) instanceof Path before) {
                before.getElements().addAll(path(next.outline()).getElements());
            } else {
                nodes.add(stroke(next));
            }
            last = next;
        }
        return nodes;
    }

    private static boolean alike(Stroke one, Stroke other) {
        return !one.filled()
                && !other.filled()
                && one.tone() == other.tone()
                && one.tone() != Tone.HATCH
                && one.weight() == other.weight();
    }

    /** A full circle around a joint. */
    private static List<PathElement> dot(Spot at) {
        double r = DrawnNet.JOINT_RADIUS;
        return List.of(
                new MoveTo(at.x() - r, at.y()),
                new ArcTo(r, r, 0, at.x() + r, at.y(), false, true),
                new ArcTo(r, r, 0, at.x() - r, at.y(), false, true),
                new ClosePath());
    }

    private static Path path(Outline outline) {
        Path path = new Path();
        for (Outline.Step step : outline.steps()) {
            if (step instanceof Outline.Move m) {
                path.getElements().add(new MoveTo(m.x(), m.y()));
            } else if (step instanceof Outline.Line l) {
                path.getElements().add(new LineTo(l.x(), l.y()));
            } else if (step instanceof Outline.Curve c) {
                path.getElements().add(new CubicCurveTo(c.x1(), c.y1(), c.x2(), c.y2(), c.x(), c.y()));
            } else {
                path.getElements().add(new ClosePath());
            }
        }
        return path;
    }

    private static void line(Path path, Weight weight) {
        path.setFill(null);
        path.setStrokeWidth(weight.pixels());
        path.setStrokeLineCap(weight == Weight.SWIPE ? StrokeLineCap.BUTT : StrokeLineCap.ROUND);
        path.setStrokeLineJoin(StrokeLineJoin.ROUND);
    }

    /** The style class of a tone. */
    static String tone(Tone tone) {
        return "tone-" + tone.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
