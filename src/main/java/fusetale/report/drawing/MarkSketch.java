package fusetale.report.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Collects the marks of one drawing. Used once. */
final class MarkSketch {
    private static final double LINE = 18;
    private static final double PAD = 4;
    private static final double HATCH = 15;
    private static final double STRAP = 15;
    private static final double SLASH = 7;
    private static final int DOTS = 9;

    private final DrawingPlan plan;
    private final Clearing clearing;
    private final List<Stroke> swipes = new ArrayList<>();
    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final Map<String, Caption> captions = new LinkedHashMap<>();
    private final Map<String, List<String>> said = new LinkedHashMap<>();

    MarkSketch(DrawingPlan plan) {
        this.plan = plan;
        this.clearing = new Clearing(plan);
    }

    Marks marks() {
        captions.values().forEach(c -> place(c.leg(), c.lines()));
        return new Marks(swipes, strokes, labels, said);
    }

    DrawingPlan plan() {
        return plan;
    }

    Optional<DrawnPart> symbol(String name) {
        return plan.symbol(name);
    }

    /** A piece of the path of a fault; texts keep off it. */
    void swipe(Stroke stroke) {
        swipes.add(stroke);
        List<Outline.Line> ends = new ArrayList<>();
        stroke.outline().mapped((x, y) -> {
            ends.add(new Outline.Line(x, y));
            return new double[] {x, y};
        });
        for (int i = 1; i < ends.size(); i++) {
            clearing.keepOff(Box.between(
                            ends.get(i - 1).x(),
                            ends.get(i - 1).y(),
                            ends.get(i).x(),
                            ends.get(i).y())
                    .grown(Weight.SWIPE.pixels() / 2 - 2));
        }
    }

    void over(Outline outline, Weight weight, Tone tone) {
        strokes.add(new Stroke(outline, weight, tone));
    }

    /** One line of a caption: how it is grounded. */
    enum Ground {
        /** The highlighter: supposed. */
        SWIPED,
        /** Nothing: a remark. */
        PLAIN,
        /** A hatched box before it: above a rating. */
        HATCHED,
        /** A frame: how the bench is set. */
        FRAMED
    }

    /** What is to be written beside a leg. */
    private record Caption(DrawnPart part, Leg leg, List<Line> lines) {}

    /** One line of a caption. */
    record Line(String text, Ground ground) {
        private double width() {
            double text = Letters.width(this.text, role());
            return text + 2 * PAD + (ground == Ground.HATCHED ? HATCH + PAD : 0);
        }

        private Label.Role role() {
            return switch (ground) {
                case SWIPED -> Label.Role.NAME;
                case PLAIN -> Label.Role.VALUE;
                case HATCHED -> Label.Role.FIGURE;
                case FRAMED -> Label.Role.NOTE;
            };
        }
    }

    /** Lines to be written beside a leg of a part, behind those that are there already. */
    void caption(DrawnPart part, Leg leg, List<Line> lines) {
        Caption caption = captions.computeIfAbsent(part.name() + leg, k -> new Caption(part, leg, new ArrayList<>()));
        for (Line line : lines) {
            caption.lines().add(line);
            say(part.name(), line.text());
        }
    }

    /** Writes lines where there is room nearest to their leg; where there is none for all, half of them here, half there. */
    private void place(Leg leg, List<Line> lines) {
        double width = lines.stream().mapToDouble(Line::width).max().orElse(0);
        Box beside = Box.between(leg.x1(), leg.y1(), leg.x2(), leg.y2()).grown(8);
        Optional<Box> free = clearing.nearest(beside, width, LINE * lines.size());
        if (free.isEmpty() && lines.size() > 1) {
            int half = (lines.size() + 1) / 2;
            place(leg, lines.subList(0, half));
            place(leg, lines.subList(half, lines.size()));
            return;
        }
        Box room = free.orElse(new Box(beside.right() + 3, beside.middleY() - LINE / 2, width, LINE));
        clearing.keepOff(room);
        boolean left = room.right() < beside.x();
        double y = room.y();
        for (Line line : lines) {
            write(line, left ? room.right() - line.width() : room.x(), y);
            y += LINE;
        }
    }

    private void write(Line line, double x, double y) {
        double start = x + PAD;
        double width = line.width();
        switch (line.ground()) {
            case SWIPED ->
                swipes.add(new Stroke(
                        Outline.of("M " + (x + 2) + " " + y + " L " + (x + width + 1) + " " + (y - 0.5) + " L "
                                + (x + width - 1) + " " + (y + LINE) + " L " + (x - 1) + " " + (y + LINE - 0.5) + " Z"),
                        Weight.FILLED,
                        Tone.MARKER_FILL));
            case HATCHED -> {
                strokes.add(new Stroke(
                        Outline.rectangle(new Box(x, y + (LINE - HATCH) / 2, HATCH, HATCH)),
                        Weight.FILLED,
                        Tone.HATCH));
                start = x + HATCH + PAD + 1;
            }
            case FRAMED ->
                strokes.add(new Stroke(Outline.rectangle(new Box(x, y + 1, width, LINE - 2)), Weight.RING, Tone.RULE));
            case PLAIN -> {}
        }
        labels.add(new Label(line.text(), start, y + 14, Label.Anchor.START, line.role()));
    }

    /** Says something of a part without writing it. */
    void say(String name, String words) {
        said.computeIfAbsent(name, n -> new ArrayList<>()).add(words);
    }

    /** A stroke of the highlighter along a leg. */
    void swipe(Leg leg) {
        swipes.add(new Stroke(Outline.line(leg.x1(), leg.y1(), leg.x2(), leg.y2()), Weight.SWIPE, Tone.MARKER_FILL));
    }

    /** A half ring from before a leg's body to behind it: current has a way round. */
    void strap(Leg leg, boolean dotted) {
        Frame frame = new Frame(leg);
        double half = Math.max(10, leg.body() / 2 + 3);
        Outline arc = arc(half, frame.bulge()).mapped(frame.place());
        if (!dotted) {
            over(arc, Weight.MARK, Tone.MARKER_LINE);
            return;
        }
        for (int i = 0; i <= DOTS; i++) {
            double angle = Math.PI * i / DOTS;
            double[] at = frame.place().of(-half * Math.cos(angle), -frame.bulge() * Math.sin(angle));
            over(Outline.circle(at[0], at[1], 1.7), Weight.FILLED, Tone.MARKER_LINE);
        }
    }

    private static Outline arc(double half, double bulge) {
        double k = 0.5523;
        return Outline.of("M " + -half + " 0 C " + -half + " " + -bulge * k + " " + -half * k + " " + -bulge + " 0 "
                + -bulge + " C " + half * k + " " + -bulge + " " + half + " " + -bulge * k + " " + half + " 0");
    }

    /** A gap in each lead with a slash at it: nothing gets through. */
    void slashes(Leg leg, Tone tone) {
        Frame frame = new Frame(leg);
        double lead = (leg.length() - leg.body()) / 2;
        double at = lead < 4 ? 0 : leg.body() / 2 + lead / 2;
        slash(frame, -at, tone);
        if (at > 0) {
            slash(frame, at, tone);
        }
    }

    private void slash(Frame frame, double at, Tone tone) {
        over(Outline.line(at - 2.5, 0, at + 2.5, 0).mapped(frame.place()), Weight.MARK, Tone.PAPER);
        over(Outline.line(at - 4, SLASH, at + 4, -SLASH).mapped(frame.place()), Weight.MARK, tone);
    }

    /** A leg as an axis: x along it from its middle, y across. */
    private record Frame(Leg leg) {
        double bulge() {
            return STRAP + (leg.body() > 40 ? 4 : 0);
        }

        Outline.Place place() {
            double length = Math.max(leg.length(), 1e-6);
            double alongX = (leg.x2() - leg.x1()) / length;
            double alongY = (leg.y2() - leg.y1()) / length;
            double middleX = (leg.x1() + leg.x2()) / 2;
            double middleY = (leg.y1() + leg.y2()) / 2;
            return (x, y) -> new double[] {middleX + x * alongX - y * alongY, middleY + x * alongY + y * alongX};
        }
    }

    /** A fuse's body with its line broken, in shade. */
    void blown(Leg leg) {
        Outline.Place place = new Frame(leg).place();
        double half = leg.body() / 2;
        Outline box = Outline.rectangle(new Box(-half, -6, 2 * half, 12)).mapped(place);
        over(box, Weight.FILLED, Tone.SHADE);
        over(box, Weight.SYMBOL, Tone.INK);
        over(Outline.of("M " + -half + " 0 L -6 0 L -3 -4").mapped(place), Weight.WIRE, Tone.INK);
        over(Outline.of("M " + half + " 0 L 6 0 L 3 4").mapped(place), Weight.WIRE, Tone.INK);
    }

    /** A body that is not there: its outline in dashes. */
    void absent(Leg leg) {
        Outline.Place place = new Frame(leg).place();
        double half = leg.body() / 2;
        over(Outline.rectangle(new Box(-half - 1.5, -7.5, 2 * half + 3, 15)).mapped(place), Weight.FILLED, Tone.PAPER);
        for (double x = -half; x < half - 3; x += 9) {
            over(Outline.line(x, -6, x + 4.5, -6).mapped(place), Weight.RING, Tone.RULE);
            over(Outline.line(x, 6, x + 4.5, 6).mapped(place), Weight.RING, Tone.RULE);
        }
    }

    /** A connector's pin pulled apart. */
    void apart(Leg leg) {
        Outline.Place place = new Frame(leg).place();
        over(Outline.rectangle(new Box(-13, -8, 26, 16)).mapped(place), Weight.FILLED, Tone.PAPER);
        over(Outline.rectangle(new Box(-19, -2.5, 9, 5)).mapped(place), Weight.FILLED, Tone.INK);
        over(
                Outline.of("M 8 -6.5 C 11.6 -6.5 14.5 -3.6 14.5 0 C 14.5 3.6 11.6 6.5 8 6.5")
                        .mapped(place),
                Weight.SYMBOL,
                Tone.INK);
    }

    /** A switch's blade set otherwise than drawn. */
    void blade(Leg leg, boolean closed) {
        Outline.Place place = new Frame(leg).place();
        over(Outline.rectangle(new Box(-12, -14, 24, 18)).mapped(place), Weight.FILLED, Tone.PAPER);
        over(Outline.circle(-14, 0, 3).mapped(place), Weight.FILLED, Tone.INK);
        over(Outline.circle(14, 0, 3).mapped(place), Weight.FILLED, Tone.INK);
        over(Outline.of(closed ? "M -14 0 L 15 -3" : "M -14 0 L 11 -13").mapped(place), Weight.BASE, Tone.INK);
    }
}
