package fusetale.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.circuit.Connector;
import fusetale.circuit.Controller;
import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Pin;
import fusetale.circuit.TestPoint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The drawings of the shipped circuits say what their files say, and nothing on them touches what it should not. */
class DrawingPlanTest {
    static Stream<Arguments> drawings() {
        return Shipped.drawings();
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void linesDotsAndNamesJoinWhatTheFileJoins(String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        Map<Net, Set<String>> expected = new LinkedHashMap<>();
        for (Part part : circuit.parts()) {
            for (Pin pin : part.pins()) {
                pinOn(expected, pin.net(), part.name() + "." + pin.name());
            }
            if (part instanceof Controller c) {
                for (int i = 0; i < c.checks().size(); i++) {
                    pinOn(expected, c.checks().get(i).net(), c.name() + ".check " + (i + 1));
                }
            }
        }
        for (Connector connector : circuit.connectors()) {
            for (Connector.Contact contact : connector.pins()) {
                String pin = connector.name() + "." + contact.label();
                pinOn(expected, contact.board(), pin + ".board");
                pinOn(expected, contact.harness(), pin + ".harness");
            }
        }
        pinOn(expected, Mains.LINE, "mains.line");
        pinOn(expected, Mains.NEUTRAL, "mains.neutral");

        assertThat(Walked.groups(plan)).containsExactlyInAnyOrderElementsOf(expected.values());
    }

    private static void pinOn(Map<Net, Set<String>> nets, Net net, String pin) {
        nets.computeIfAbsent(net, n -> new TreeSet<>()).add(pin);
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void wiresOfDifferentNetsTouchNowhere(String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        List<String> touching = new ArrayList<>();
        for (DrawnNet one : plan.nets()) {
            for (DrawnNet two : plan.nets()) {
                if (one.net().compareTo(two.net()) < 0) {
                    for (Segment a : one.wires()) {
                        for (Segment b : two.wires()) {
                            if (a.bounds().meets(b.bounds()) && !crossing(a, b)) {
                                touching.add(one.net() + " " + a + " " + two.net() + " " + b);
                            }
                        }
                    }
                }
            }
        }
        assertThat(touching).isEmpty();
    }

    /** Straight across each other, both going on for a whole square. */
    private static boolean crossing(Segment a, Segment b) {
        if (a.level() == b.level()) {
            return false;
        }
        Segment level = a.level() ? a : b;
        Segment upright = a.level() ? b : a;
        Box air = new Box(upright.x1(), level.y1(), 0, 0).grown(9.9);
        return Box.between(level.x1(), air.y(), level.x2(), air.bottom()).holds(air)
                && Box.between(air.x(), upright.y1(), air.right(), upright.y2()).holds(air);
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void symbolsTouchNoOtherSymbol(String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        List<DrawnPart> symbols = plan.symbols().toList();
        List<String> touching = new ArrayList<>();
        for (int i = 0; i < symbols.size(); i++) {
            for (int j = i + 1; j < symbols.size(); j++) {
                DrawnPart one = symbols.get(i);
                DrawnPart two = symbols.get(j);
                if (one.solids().stream().anyMatch(a -> two.solids().stream().anyMatch(a.grown(-0.1)::meets))) {
                    touching.add(one.name() + " " + two.name());
                }
            }
        }
        assertThat(touching).isEmpty();
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void wiresPassNoSymbol(String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        List<String> touching = new ArrayList<>();
        plan.symbols()
                .forEach(part -> part.solids()
                        .forEach(solid -> plan.nets()
                                .forEach(net -> net.wires().forEach(wire -> {
                                    if (Box.between(wire.x1(), wire.y1(), wire.x2(), wire.y2())
                                            .grown(0.05)
                                            .meets(solid.grown(-0.5))) {
                                        touching.add(part.name() + " " + net.net() + " " + wire);
                                    }
                                }))));
        assertThat(touching).isEmpty();
    }

    /** A text, whose it is, and whether it stands inside its symbol. */
    private record Text(String owner, Label label, boolean inside) {}

    private static List<Text> texts(DrawingPlan plan) {
        List<Text> texts = new ArrayList<>();
        plan.symbols()
                .forEach(p -> p.labels()
                        .forEach(l -> texts.add(new Text(
                                p.name(),
                                l,
                                p.bounds()
                                        .grown(2)
                                        .holds(l.bounds().middleX(), l.bounds().middleY())))));
        plan.sections().forEach(s -> texts.add(new Text(s.heading(), s.title(), false)));
        plan.nets().forEach(n -> n.flags().forEach(f -> f.labels().forEach(l -> texts.add(new Text("", l, false)))));
        return texts;
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void textsTouchNothing(String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        List<Text> texts = texts(plan);
        Set<String> touching = new LinkedHashSet<>();
        for (int i = 0; i < texts.size(); i++) {
            Text text = texts.get(i);
            Box box = text.label().bounds();
            for (int j = i + 1; j < texts.size(); j++) {
                if (texts.get(j).label().bounds().meets(box)) {
                    touching.add(
                            text.label().text() + " on " + texts.get(j).label().text());
                }
            }
            plan.symbols()
                    .filter(p -> !(text.inside() && p.name().equals(text.owner())))
                    .filter(p -> p.solids().stream().anyMatch(box::meets))
                    .forEach(p -> touching.add(text.owner() + " " + text.label().text() + " on symbol " + p.name()));
            plan.nets()
                    .forEach(n -> n.wires().stream()
                            .filter(w -> w.bounds().meets(box))
                            .forEach(w -> touching.add(
                                    text.owner() + " " + text.label().text() + " on wire " + n.net())));
            plan.sections().stream()
                    .filter(s -> s.frame().stream().anyMatch(box::meets))
                    .forEach(s ->
                            touching.add(text.owner() + " " + text.label().text() + " on the frame of " + s.heading()));
        }
        assertThat(touching).isEmpty();
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void flagsTouchNoSymbolWireOrFlag(String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        List<String> touching = new ArrayList<>();
        List<Flag> all = plan.nets().stream().flatMap(n -> n.flags().stream()).toList();
        for (DrawnNet net : plan.nets()) {
            for (Flag flag : net.flags()) {
                Box box = flag.bounds();
                plan.symbols()
                        .filter(p -> p.solids().stream().anyMatch(box::meets))
                        .forEach(p -> touching.add(net.net() + " on " + p.name()));
                plan.nets()
                        .forEach(n -> n.wires().stream()
                                .filter(w -> Box.between(w.x1(), w.y1(), w.x2(), w.y2())
                                        .grown(0.05)
                                        .meets(box))
                                .forEach(w -> touching.add(net.net() + " on wire " + n.net())));
                all.stream()
                        .filter(f -> !f.equals(flag) && f.bounds().meets(box))
                        .forEach(f -> touching.add(net.net() + " on a flag"));
            }
        }
        assertThat(touching).isEmpty();
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void everyTestPointSitsOnItsNetAndTouchesNothingElse(
            String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        assertThat(plan.points().stream().map(DrawnPoint::name))
                .containsExactlyElementsOf(
                        circuit.points().stream().map(TestPoint::name).toList());
        for (DrawnPoint point : plan.points()) {
            TestPoint of = circuit.point(point.name()).orElseThrow();
            sits(plan, point.name(), point.red(), of.at());
            Spot black = point.black();
            if (black != null) {
                sits(plan, point.name() + " black", black, of.against());
            } else {
                boolean signs = plan.net(of.against().name()).orElseThrow().flags().stream()
                        .allMatch(Flag::ground);
                assertThat(signs).as(point.name() + " against a ground sign").isTrue();
            }
        }
    }

    private static void sits(DrawingPlan plan, String point, Spot at, Net net) {
        Box ring = DrawnPoint.ring(at);
        assertThat(plan.net(net.name()).orElseThrow().wires())
                .as(point + " on " + net)
                .anyMatch(w -> w.holds(at.x(), at.y()));
        assertThat(plan.symbols().filter(p -> p.solids().stream().anyMatch(ring::meets)))
                .as(point + " on a symbol")
                .isEmpty();
        assertThat(texts(plan).stream().filter(t -> t.label().bounds().meets(ring)))
                .as(point + " on a text")
                .isEmpty();
        assertThat(plan.nets().stream()
                        .filter(n -> !n.net().equals(net.name()))
                        .filter(n -> n.wires().stream().anyMatch(w -> w.bounds().meets(ring))))
                .as(point + " on another net")
                .isEmpty();
        assertThat(plan.points().stream()
                        .flatMap(p -> Stream.of(p.red(), p.black() == null ? p.red() : p.black()))
                        .distinct()
                        .filter(o -> !o.equals(at) && DrawnPoint.ring(o).meets(ring)))
                .as(point + " on another ring")
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void nothingIsOutsideTheSheet(String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        Box sheet = new Box(0, 0, plan.width(), plan.height()).grown(-10);
        assertThat(plan.symbols().map(DrawnPart::extent)).allMatch(sheet::holds);
        assertThat(texts(plan)).allMatch(t -> sheet.holds(t.label().bounds()));
        assertThat(plan.nets()).allMatch(n -> n.wires().stream().allMatch(w -> sheet.holds(w.bounds())));
        assertThat(plan.points()).allMatch(p -> sheet.holds(DrawnPoint.ring(p.red())));
        assertThat(plan.sections()).allMatch(s -> sheet.holds(s.bounds()));
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void everyPartIsInASectionWhereThereAreAny(String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        if (!plan.sections().isEmpty()) {
            assertThat(plan.sections().stream().flatMap(s -> s.parts().stream()))
                    .containsExactlyInAnyOrderElementsOf(
                            plan.symbols().map(DrawnPart::name).toList());
        }
    }

    @ParameterizedTest(name = "{0}, {1}")
    @MethodSource("drawings")
    void drawnTwiceItIsTheSame(String name, SymbolStyle style, Circuit circuit, DrawingPlan plan) {
        assertThat(DrawingPlan.of(circuit, style)).isEqualTo(plan);
    }

    @Test
    void smallBoardFitsAWindowAndTheTableGameAScreenAndAHalf() {
        DrawingPlan small = DrawingPlan.of(Shipped.circuit("first-light"), SymbolStyle.IEC_60617);
        DrawingPlan large = DrawingPlan.of(Shipped.circuit("night-ferry"), SymbolStyle.IEC_60617);

        assertThat(small.width()).isLessThanOrEqualTo(1200);
        assertThat(small.height()).isLessThanOrEqualTo(330);
        assertThat(large.width()).isLessThanOrEqualTo(2000);
    }
}
