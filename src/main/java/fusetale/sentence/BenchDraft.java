package fusetale.sentence;

import fusetale.bench.Arrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.circuit.Switch;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** An arrangement that is being changed, its deeds in order. */
final class BenchDraft {
    private static final Comparator<BenchSetting.Clip> CLIPS = Comparator.comparing(
                    BenchSetting.Clip::from, NaturalOrder.NAMES)
            .thenComparing(BenchSetting.Clip::to, NaturalOrder.NAMES);

    boolean powerOn;
    double mainsVolts;

    @Nullable
    Double mainsHertz;

    @Nullable
    Double lampWatts;

    final NavigableSet<String> pulled = new TreeSet<>(NaturalOrder.NAMES);
    final NavigableSet<String> unplugged = new TreeSet<>(NaturalOrder.NAMES);
    final NavigableSet<String> lifted = new TreeSet<>(NaturalOrder.NAMES);
    final NavigableSet<BenchSetting.Clip> clips = new TreeSet<>(CLIPS);
    final NavigableSet<String> heldOn = new TreeSet<>(NaturalOrder.NAMES);
    final NavigableMap<String, Boolean> switches = new TreeMap<>(NaturalOrder.NAMES);
    final NavigableMap<String, Double> charged = new TreeMap<>(NaturalOrder.NAMES);
    final NavigableMap<String, Double> pulsedSeconds = new TreeMap<>(NaturalOrder.NAMES);

    BenchDraft(Arrangement of) {
        powerOn = of.powerOn();
        mainsVolts = of.mainsVolts();
        mainsHertz = of.mainsHertz();
        lampWatts = of.seriesLampWatts();
        pulled.addAll(of.pulledFuses());
        unplugged.addAll(of.unplugged());
        lifted.addAll(of.liftedPins());
        of.clips().forEach(c -> clips.add(inOrder(c.from(), c.to())));
        heldOn.addAll(of.heldOn());
        switches.putAll(of.switches());
        charged.putAll(of.charged());
        pulsedSeconds.putAll(of.pulsedSeconds());
    }

    /** An arrangement that says nothing the circuit says already: nominal mains where they are off, switches as drawn. */
    static Arrangement settled(Circuit circuit, Arrangement arrangement) {
        BenchDraft draft = new BenchDraft(arrangement);
        draft.settle(circuit);
        return draft.done();
    }

    void settle(Circuit circuit) {
        if (!powerOn && !(mainsVolts > 0)) {
            mainsVolts = circuit.mains().volts().si();
        }
        Double hertz = mainsHertz;
        if (hertz != null && hertz == circuit.mains().hertz().si()) {
            mainsHertz = null;
        }
        switches.entrySet()
                .removeIf(s -> circuit.part(s.getKey())
                        .filter(p -> p instanceof Switch drawn && drawn.closed() == s.getValue())
                        .isPresent());
    }

    /** A clip lead has no direction. */
    static BenchSetting.Clip inOrder(String one, String other) {
        return NaturalOrder.NAMES.compare(one, other) <= 0
                ? new BenchSetting.Clip(one, other)
                : new BenchSetting.Clip(other, one);
    }

    /** All fuses in, all plugs in, all pins soldered, nothing clipped, held, pulsed or charged, switches as drawn. */
    void undoDeeds() {
        pulled.clear();
        unplugged.clear();
        lifted.clear();
        clips.clear();
        heldOn.clear();
        switches.clear();
        charged.clear();
        pulsedSeconds.clear();
    }

    /** Takes all over from another arrangement. */
    void become(Arrangement other) {
        undoDeeds();
        BenchDraft that = new BenchDraft(other);
        powerOn = that.powerOn;
        mainsVolts = that.mainsVolts;
        mainsHertz = that.mainsHertz;
        lampWatts = that.lampWatts;
        pulled.addAll(that.pulled);
        unplugged.addAll(that.unplugged);
        lifted.addAll(that.lifted);
        clips.addAll(that.clips);
        heldOn.addAll(that.heldOn);
        switches.putAll(that.switches);
        charged.putAll(that.charged);
        pulsedSeconds.putAll(that.pulsedSeconds);
    }

    /** The arrangement, under a name made of its deeds. */
    Arrangement done() {
        Arrangement done = new Arrangement(
                "",
                powerOn,
                mainsVolts,
                lampWatts,
                List.copyOf(pulled),
                List.copyOf(unplugged),
                List.copyOf(lifted),
                List.copyOf(clips),
                List.copyOf(heldOn),
                switches,
                charged,
                pulsedSeconds,
                mainsHertz);
        String name = BenchPieces.of(done, 0).stream().map(Piece::text).collect(Collectors.joining(", "));
        return done.withName(name);
    }
}
