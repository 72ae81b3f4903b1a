package fusetale.report.drawing;

import fusetale.bench.Arrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.explore.Question;
import fusetale.explore.Words;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** Marks of how the bench is set. */
final class ArrangementMarks {
    private static final Words WORDS = Words.of(ArrangementMarks.class);

    private final MarkSketch sketch;
    private final Arrangement arrangement;
    private final Circuit circuit;

    ArrangementMarks(MarkSketch sketch, Question question) {
        this.sketch = sketch;
        this.arrangement = question.arrangement();
        this.circuit = question.healthy();
    }

    void draw() {
        mains();
        for (String fuse : arrangement.pulledFuses()) {
            sketch.symbol(fuse).ifPresent(part -> {
                sketch.absent(part.leg(""));
                caption(part, part.leg(""), WORDS.say("pulled"));
            });
        }
        arrangement.unplugged().forEach(this::unplugged);
        arrangement.liftedPins().forEach(this::lifted);
        new TreeMap<>(arrangement.switches())
                .forEach((name, closed) -> sketch.symbol(name).ifPresent(part -> {
                    sketch.blade(part.leg(""), closed);
                    caption(part, part.leg(""), WORDS.say(closed ? "closed" : "open"));
                }));
        arrangement.heldOn().forEach(name -> caption(name, WORDS.say("held-on")));
        for (Map.Entry<String, Double> pulse : new TreeMap<>(arrangement.pulsedSeconds()).entrySet()) {
            caption(pulse.getKey(), WORDS.say("pulsed", value(pulse.getValue(), Unit.SECOND)));
        }
        for (Map.Entry<String, Double> charge : new TreeMap<>(arrangement.charged()).entrySet()) {
            caption(charge.getKey(), WORDS.say("charged", value(charge.getValue(), Unit.VOLT)));
        }
        arrangement.clips().forEach(this::clip);
    }

    private static String value(double si, Unit unit) {
        return Symbols.value(new Quantity(si, unit));
    }

    private void mains() {
        Double watts = arrangement.seriesLampWatts();
        if (!arrangement.powerOn()) {
            caption(Mains.NAME, WORDS.say("plug-out"));
        } else if (watts != null) {
            caption(Mains.NAME, WORDS.say("series-lamp", value(watts, Unit.WATT)));
        }
    }

    private void unplugged(String connector) {
        sketch.plan().connectors().stream()
                .filter(c -> c.name().equals(connector))
                .flatMap(c -> c.contacts().stream())
                .forEach(contact -> {
                    sketch.apart(contact.leg(""));
                    sketch.say(contact.name(), WORDS.say("unplugged"));
                });
    }

    private void lifted(String pin) {
        int dot = pin.indexOf('.');
        Optional<DrawnPart> found = dot < 0 ? Optional.empty() : sketch.symbol(pin.substring(0, dot));
        found.ifPresent(part -> {
            Port port = part.ports().get(pin.substring(dot + 1));
            if (port != null) {
                Side in = port.side().opposite();
                Leg lead = new Leg(port.x(), port.y(), port.x() + 10 * in.stepX(), port.y() + 10 * in.stepY(), 0);
                sketch.slashes(lead, Tone.INK);
                caption(part, lead, WORDS.say("lifted", pin.substring(dot + 1)));
            }
        });
    }

    private void caption(String name, String words) {
        sketch.symbol(name).ifPresent(part -> caption(part, part.leg(""), words));
    }

    private void caption(DrawnPart part, Leg leg, String words) {
        sketch.caption(part, leg, List.of(new MarkSketch.Line(words, MarkSketch.Ground.FRAMED)));
    }

    /** A thick line that hangs from place to place. */
    private void clip(BenchSetting.Clip clip) {
        Spot from = spot(clip.from());
        Spot to = spot(clip.to());
        if (from == null || to == null) {
            return;
        }
        double sag = Math.max(from.y(), to.y()) + 40;
        sketch.over(
                new Outline(List.of(
                        new Outline.Move(from.x(), from.y()),
                        new Outline.Curve(from.x(), sag, to.x(), sag, to.x(), to.y()))),
                Weight.BASE,
                Tone.RULE);
        for (Spot end : List.of(from, to)) {
            sketch.over(Outline.circle(end.x(), end.y(), 4.5), Weight.FILLED, Tone.RULE);
        }
        sketch.say(Mains.NAME, WORDS.say("clip", clip.from(), clip.to()));
    }

    /** Where a clip bites: a pin, a test point, any place of a net. */
    private @Nullable Spot spot(String point) {
        int dot = point.indexOf('.');
        if (dot > 0 && sketch.symbol(point.substring(0, dot)).isPresent()) {
            Port port = sketch.symbol(point.substring(0, dot)).get().ports().get(point.substring(dot + 1));
            if (port != null) {
                return new Spot(port.x(), port.y());
            }
        }
        for (DrawnPoint each : sketch.plan().points()) {
            if (each.name().equals(point)) {
                return each.red();
            }
        }
        String net = circuit.find(point).map(Net::name).orElse("");
        return sketch.plan().net(net).flatMap(ArrangementMarks::anywhere).orElse(null);
    }

    private static Optional<Spot> anywhere(DrawnNet net) {
        if (!net.joints().isEmpty()) {
            return Optional.of(net.joints().get(0));
        }
        return net.wires().isEmpty()
                ? net.flags().stream().map(f -> new Spot(f.x(), f.y())).findFirst()
                : Optional.of(
                        new Spot(net.wires().get(0).x1(), net.wires().get(0).y1()));
    }
}
