package fusetale.report.drawing;

import fusetale.circuit.Part;
import fusetale.circuit.Stand;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A part's symbol around (0, 0), the usual way round. Built up stroke by stroke; belongs to one draughtsman.
 */
final class Symbol {
    private static final double LONGEST_LEAD = 60;

    private final String name;
    private final String kind;
    private String value = "";
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Box> solids = new ArrayList<>();
    private final List<Label> inside = new ArrayList<>();
    private final Map<String, Port> ports = new LinkedHashMap<>();
    private final Map<String, Leg> legs = new LinkedHashMap<>();

    Symbol(String name, String kind) {
        this.name = name;
        this.kind = kind;
    }

    Symbol value(String text) {
        value = text;
        return this;
    }

    Symbol line(String path, Weight weight) {
        strokes.add(Stroke.ink(path, weight));
        return this;
    }

    Symbol line(Outline outline, Weight weight) {
        strokes.add(new Stroke(outline, weight));
        return this;
    }

    Symbol filled(String path, Tone tone) {
        strokes.add(new Stroke(Outline.of(path), Weight.FILLED, tone));
        return this;
    }

    Symbol filled(Outline outline, Tone tone) {
        strokes.add(new Stroke(outline, Weight.FILLED, tone));
        return this;
    }

    Symbol solid(double x1, double y1, double x2, double y2) {
        solids.add(Box.between(x1, y1, x2, y2));
        return this;
    }

    Symbol port(Part part, String pin, double x, double y, Side side) {
        return port(pin, part.net(pin).name(), x, y, side);
    }

    Symbol port(String pin, String net, double x, double y, Side side) {
        ports.put(pin, new Port(net, x, y, side));
        return this;
    }

    Symbol leg(String place, double x1, double y1, double x2, double y2, double body) {
        legs.put(place, new Leg(x1, y1, x2, y2, body));
        return this;
    }

    Symbol text(String text, double x, double y, Label.Role role) {
        inside.add(new Label(text, x, y, Label.Anchor.MIDDLE, role));
        return this;
    }

    Symbol text(String text, double x, double y, Label.Anchor anchor, Label.Role role) {
        inside.add(new Label(text, x, y, anchor, role));
        return this;
    }

    /** Two leads of a part that lies on the x axis, from its body out to {@code reach} on either side. */
    Symbol leads(Part part, double body, double reach) {
        String one = part.pins().get(0).name();
        String two = part.pins().get(1).name();
        return line(Outline.line(-reach, 0, -body, 0), Weight.WIRE)
                .line(Outline.line(body, 0, reach, 0), Weight.WIRE)
                .port(part, one, -reach, 0, Side.LEFT)
                .port(part, two, reach, 0, Side.RIGHT)
                .leg("", -reach, 0, reach, 0, 2 * body);
    }

    /** Where its part stands. Texts inside stay upright. */
    DrawnPart at(Stand stand) {
        Outline.Place place = Placement.of(stand);
        Map<String, Port> placed = new LinkedHashMap<>();
        ports.forEach((pin, port) -> {
            double[] p = place.of(port.x(), port.y());
            placed.put(pin, new Port(port.net(), p[0], p[1], port.side().on(stand)));
        });
        Map<String, Leg> turned = new LinkedHashMap<>();
        legs.forEach((where, leg) -> turned.put(where, leg.mapped(place)));
        List<Box> covered = new ArrayList<>();
        for (Box box : solids) {
            double[] one = place.of(box.x(), box.y());
            double[] two = place.of(box.right(), box.bottom());
            covered.add(Box.between(one[0], one[1], two[0], two[1]));
        }
        List<Box> bodies = List.copyOf(covered);
        placed.values().forEach(port -> covered.add(lead(port, bodies)));
        List<Stroke> drawn = strokes.stream().map(s -> s.mapped(place)).toList();
        Box bounds = covered.get(0);
        for (Box box : covered) {
            bounds = bounds.with(box);
        }
        for (Stroke stroke : drawn) {
            bounds = bounds.with(stroke.outline().bounds());
        }
        return new DrawnPart(
                name,
                kind,
                value,
                bounds,
                covered,
                drawn,
                inside.stream().map(label -> upright(label, stand, place)).toList(),
                placed,
                turned);
    }

    /** What the lead of a port covers, from its end to the symbol's body. */
    private static Box lead(Port port, List<Box> bodies) {
        Side inwards = port.side().opposite();
        double length = 0;
        boolean reached = false;
        while (!reached && length < LONGEST_LEAD) {
            length++;
            double x = port.x() + length * inwards.stepX();
            double y = port.y() + length * inwards.stepY();
            reached = bodies.stream().anyMatch(b -> b.holds(x, y));
        }
        double endX = port.x() + length * inwards.stepX();
        double endY = port.y() + length * inwards.stepY();
        double half = Weight.WIRE.pixels() / 2;
        return inwards.level()
                ? Box.between(port.x(), port.y() - half, endX, endY + half)
                : Box.between(port.x() - half, port.y(), endX + half, endY);
    }

    /** A base line lies below the middle of its letters whichever way the part is turned. */
    private static Label upright(Label label, Stand stand, Outline.Place place) {
        double half = (Letters.ABOVE - 0.04) * label.role().pixels() / 2;
        double[] middle = place.of(label.x(), label.y() - half);
        boolean flipped = label.anchor() != Label.Anchor.MIDDLE
                && (stand.mirrored() ? stand.turn() == Stand.Turn.NONE : stand.turn() == Stand.Turn.HALF);
        Label.Anchor anchor = !flipped
                ? label.anchor()
                : label.anchor() == Label.Anchor.START ? Label.Anchor.END : Label.Anchor.START;
        return new Label(label.text(), middle[0], middle[1] + half, anchor, label.role());
    }
}
