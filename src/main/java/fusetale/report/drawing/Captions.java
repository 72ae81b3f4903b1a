package fusetale.report.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds a place for the name and value of every part, beside its symbol and clear of everything else. */
final class Captions {
    /** Room between a symbol and its name [px]. */
    private static final double GAP = 6;

    private static final double LINE = 16;
    private static final double WORD_SPACE = 6;

    /** What leaves a port is kept free so far [px]. */
    private static final double EXIT = 12;

    private final List<Box> taken = new ArrayList<>();

    /** Something that texts keep off. */
    void keepOff(Box box) {
        taken.add(box);
    }

    /** A symbol, its leads and the first bit of its wires. */
    void keepOff(DrawnPart part) {
        taken.addAll(part.solids());
        part.labels().forEach(l -> taken.add(l.bounds()));
        for (Port port : part.ports().values()) {
            double endX = port.x() + EXIT * port.side().stepX();
            double endY = port.y() + EXIT * port.side().stepY();
            taken.add(Box.between(port.x(), port.y(), endX, endY).grown(2));
        }
    }

    /** The part with its name and value, as well placed as can be. */
    DrawnPart captioned(DrawnPart part) {
        List<List<Label>> choices = part.kind().equals(Symbols.kind("contact")) ? ofContact(part) : ofPart(part);
        List<Label> best = choices.stream()
                .min(Comparator.comparingDouble(this::collisions))
                .orElseThrow();
        best.forEach(l -> taken.add(l.bounds()));
        List<Label> all = new ArrayList<>(part.labels());
        all.addAll(best);
        return part.labelled(all);
    }

    /** How much of texts would lie on something. */
    private double collisions(List<Label> labels) {
        double area = 0;
        for (Label label : labels) {
            Box box = label.bounds().grown(1.5);
            for (Box other : taken) {
                if (other.meets(box)) {
                    double width = Math.min(other.right(), box.right()) - Math.max(other.x(), box.x());
                    double height = Math.min(other.bottom(), box.bottom()) - Math.max(other.y(), box.y());
                    area += width * height + 1;
                }
            }
        }
        return area;
    }

    private static List<List<Label>> ofContact(DrawnPart part) {
        Leg leg = part.leg("");
        double x = (leg.x1() + leg.x2()) / 2;
        double y = (leg.y1() + leg.y2()) / 2;
        Box body = part.solids().get(0);
        Label.Role role = Label.Role.NOTE;
        if (leg.y1() != leg.y2()) {
            return List.of(
                    List.of(new Label(part.name(), body.right() + 4, y + 5, Label.Anchor.START, role)),
                    List.of(new Label(part.name(), body.x() - 4, y + 5, Label.Anchor.END, role)));
        }
        return List.of(
                List.of(new Label(part.name(), x, body.y() - 5, Label.Anchor.MIDDLE, role)),
                List.of(new Label(part.name(), x, body.bottom() + 13, Label.Anchor.MIDDLE, role)));
    }

    private static List<List<Label>> ofPart(DrawnPart part) {
        boolean named = part.labels().stream().anyMatch(l -> l.role() == Label.Role.NAME);
        if (named) {
            return List.of(List.of());
        }
        Box body = body(part);
        boolean lies = part.ports().values().stream().allMatch(p -> p.side().level());
        List<List<Label>> choices = new ArrayList<>();
        List<List<Label>> sides = List.of(
                beside(part, body.right() + GAP, body.middleY(), Label.Anchor.START),
                beside(part, body.x() - GAP, body.middleY(), Label.Anchor.END));
        List<List<Label>> over = List.of(
                inOneLine(part, body.middleX(), body.y() - GAP),
                inOneLine(part, body.middleX(), body.bottom() + GAP + 10),
                inTwoLines(part, body.middleX(), body.y() - GAP - (part.value().isEmpty() ? 0 : LINE)),
                inTwoLines(part, body.middleX(), body.bottom() + GAP + 10));
        choices.addAll(lies ? over : sides);
        choices.addAll(lies ? sides : over);
        choices.add(beside(part, body.right() + GAP, body.y() - 2, Label.Anchor.START));
        choices.add(beside(part, body.right() + GAP, body.bottom() + 2, Label.Anchor.START));
        choices.add(beside(part, body.x() - GAP, body.y() - 2, Label.Anchor.END));
        choices.add(beside(part, body.x() - GAP, body.bottom() + 2, Label.Anchor.END));
        return choices;
    }

    private static Box body(DrawnPart part) {
        Box body = part.solids().get(0);
        for (int i = 0; i < part.solids().size() - part.ports().size(); i++) {
            body = body.with(part.solids().get(i));
        }
        return body;
    }

    /** Name and value in lines below each other, the value broken at its commas. */
    private static List<Label> beside(DrawnPart part, double x, double middle, Label.Anchor anchor) {
        List<String> values =
                part.value().isEmpty() ? List.of() : List.of(part.value().split(", ", -1));
        double line = middle + 5 - values.size() * LINE / 2;
        List<Label> labels = new ArrayList<>();
        labels.add(new Label(part.name(), x, line, anchor, Label.Role.NAME));
        for (String value : values) {
            line += LINE;
            labels.add(new Label(value, x, line, anchor, Label.Role.VALUE));
        }
        return labels;
    }

    private static List<Label> inTwoLines(DrawnPart part, double x, double first) {
        Label name = new Label(part.name(), x, first, Label.Anchor.MIDDLE, Label.Role.NAME);
        return part.value().isEmpty()
                ? List.of(name)
                : List.of(name, new Label(part.value(), x, first + LINE, Label.Anchor.MIDDLE, Label.Role.VALUE));
    }

    private static List<Label> inOneLine(DrawnPart part, double x, double line) {
        if (part.value().isEmpty()) {
            return inTwoLines(part, x, line);
        }
        double name = Letters.width(part.name(), Label.Role.NAME);
        double value = Letters.width(part.value(), Label.Role.VALUE);
        double left = x - (name + WORD_SPACE + value) / 2;
        return List.of(
                new Label(part.name(), left, line, Label.Anchor.START, Label.Role.NAME),
                new Label(part.value(), left + name + WORD_SPACE, line, Label.Anchor.START, Label.Role.VALUE));
    }
}
