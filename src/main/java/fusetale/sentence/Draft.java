package fusetale.sentence;

import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.bench.MeterRange;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** A state that a line is changing. What was said and what follows from it are told apart only when all is read. */
final class Draft {
    private static final List<Unit> RANGES = List.of(Unit.VOLT, Unit.OHM, Unit.AMPERE);

    private final Circuit circuit;
    private final List<Fault> faults;
    private final List<Swap> swaps;
    final BenchDraft bench;

    private Meter meter;
    private @Nullable Quantity range;
    private MeterFunction function;

    @Nullable
    Leads leads;

    /** Whether faults stand beside each other, instead of the later replacing the earlier at the same place. */
    private boolean collecting;

    private boolean benchAnew;
    private boolean powerSaid;
    private boolean functionSaid;
    private boolean rangeSaid;
    private boolean chargeSaid;
    private boolean pulseSaid;

    Draft(Circuit circuit, Sentence now) {
        this.circuit = circuit;
        this.faults = new ArrayList<>(now.supposition().faults());
        this.swaps = new ArrayList<>(now.supposition().swaps());
        this.bench = new BenchDraft(now.arrangement());
        Setting setting = now.setting();
        this.range = rangeOf(setting.meter());
        this.meter = range == null ? setting.meter() : Meter.of(setting.meter().model());
        this.function = setting.function();
        this.leads = setting.leads();
    }

    /** The range that a meter was set to by hand; null for none. */
    static @Nullable Quantity rangeOf(Meter meter) {
        for (Unit unit : RANGES) {
            try {
                return Notation.parse(meter.chosen(), unit);
            } catch (NotationException otherUnit) {
                // the next, then
            }
        }
        return null;
    }

    void supposeNothing() {
        faults.clear();
        swaps.clear();
    }

    /** From here on what is supposed stands beside what was supposed. */
    void collect() {
        collecting = true;
    }

    /** The bench as drawn, the usual meter: what a whole sentence does not say goes without saying. */
    void setBenchAnew() {
        benchAnew = true;
        bench.become(Arrangement.powered(circuit));
        Setting usual = Setting.usual();
        meter = usual.meter();
        function = usual.function();
        range = null;
        leads = null;
    }

    void suppose(Fault fault) {
        int there = -1;
        for (int i = 0; !collecting && i < faults.size(); i++) {
            there = faults.get(i).target().equals(fault.target()) ? i : there;
        }
        put(faults, there, fault);
    }

    void suppose(Swap swap) {
        int there = -1;
        for (int i = 0; !collecting && i < swaps.size(); i++) {
            boolean same = swaps.get(i).part().equals(swap.part())
                    && swaps.get(i).fitting().sameAspect(swap.fitting());
            there = same ? i : there;
        }
        put(swaps, there, swap);
    }

    private static <T> void put(List<T> list, int there, T one) {
        if (there < 0) {
            list.add(one);
        } else {
            list.set(there, one);
        }
    }

    void power(boolean on) {
        powerSaid = true;
        bench.powerOn = on;
    }

    void function(MeterFunction wanted) {
        functionSaid = true;
        function = wanted;
    }

    void meter(Meter wanted) {
        meter = wanted;
        if (!rangeSaid) {
            range = null;
        }
    }

    void range(@Nullable Quantity wanted) {
        range = wanted;
        rangeSaid = wanted != null;
    }

    void charge(String capacitor, double volts) {
        chargeSaid = true;
        bench.charged.put(capacitor, volts);
    }

    void hold(String driven) {
        bench.pulsedSeconds.remove(driven);
        bench.heldOn.add(driven);
    }

    void release(String driven) {
        bench.pulsedSeconds.remove(driven);
        bench.heldOn.remove(driven);
    }

    void pulse(String driven, double seconds) {
        pulseSaid = true;
        bench.heldOn.remove(driven);
        bench.pulsedSeconds.put(driven, seconds);
    }

    void arrange(Arrangement wanted) {
        bench.become(wanted);
        powerSaid = true;
    }

    /**
     * Takes back whatever was done to a part or one place or pin of it.
     *
     * @param target {@code D1}, {@code BR201.leg1}, {@code BR201.ac1}
     * @return whether there was anything
     */
    boolean putBack(String target) {
        boolean any = faults.removeIf(f -> f.target().equals(target) || f.part().equals(target));
        any |= swaps.removeIf(s -> s.part().equals(target));
        any |= bench.pulled.remove(target);
        any |= bench.unplugged.remove(target);
        any |= bench.lifted.removeIf(p -> p.equals(target) || p.startsWith(target + "."));
        any |= bench.heldOn.remove(target);
        any |= bench.pulsedSeconds.remove(target) != null;
        any |= bench.switches.remove(target) != null;
        any |= bench.charged.remove(target) != null;
        return any;
    }

    /** Whether it was said that the power is on, or off. */
    boolean powerSaid() {
        return powerSaid;
    }

    /** Whether it was said what the meter is set to. */
    boolean functionSaid() {
        return functionSaid;
    }

    /**
     * The state, with what follows from what was said.
     *
     * @throws SentenceException where it contradicts itself, or names what the circuit or the meter does not have
     */
    Sentence done() throws SentenceException {
        Quantity hand = range;
        if (rangeSaid && !functionSaid && hand != null && hand.unit() != function.unit()) {
            function(
                    hand.unit() == Unit.OHM
                            ? MeterFunction.OHMS
                            : hand.unit() == Unit.VOLT ? MeterFunction.DC_VOLTS : MeterFunction.DC_AMPS);
        }
        supply();
        if (!meter.has(function)) {
            if (functionSaid) {
                throw SentenceException.near(
                        function.words(),
                        Texts.say("meter.lacks", meter.name(), function.words(), String.join(", ", meter.functions())),
                        meter.functions());
            }
            function = bench.powerOn ? MeterFunction.DC_VOLTS : MeterFunction.OHMS;
        }
        bench.settle(circuit);
        Sentence done =
                new Sentence(new Supposition(faults, swaps), bench.done(), new Setting(ranged(), function, leads));
        check(done);
        return done;
    }

    /** Ohms want the power off, volts want it on, and so on; what was said stands. */
    private void supply() throws SentenceException {
        if (functionSaid && !powerSaid) {
            bench.powerOn = function.powered() && (bench.charged.isEmpty() || !function.ofVolts());
        } else if (chargeSaid && !powerSaid) {
            bench.powerOn = false;
        } else if (pulseSaid && !powerSaid) {
            bench.powerOn = true;
        }
        if (bench.powerOn && !function.powered()) {
            if (functionSaid) {
                throw SentenceException.near(
                        function.words(), Texts.say("function.power-off", function.words()), List.of("power off"));
            }
            function = MeterFunction.DC_VOLTS;
        }
        if (benchAnew && !functionSaid && !bench.powerOn) {
            function = MeterFunction.OHMS;
        }
        if (bench.powerOn && !chargeSaid) {
            bench.charged.clear();
        }
        if (!bench.powerOn && !pulseSaid) {
            bench.pulsedSeconds.clear();
        }
    }

    private Meter ranged() throws SentenceException {
        Quantity hand = range;
        if (hand == null) {
            return meter;
        }
        List<MeterRange> ranges = ranges(meter, function);
        if (hand.unit() == function.unit() && ranges.stream().anyMatch(r -> r.isCalled(hand.si()))) {
            return meter.withRange(hand).orElse(meter);
        }
        if (!rangeSaid) {
            return meter;
        }
        List<String> has = ranges.stream()
                .map(r -> SentencePrinter.said(new Quantity(r.fullScale(), function.unit())))
                .toList();
        throw SentenceException.near(
                SentencePrinter.said(hand),
                has.isEmpty()
                        ? Texts.say("range.none", meter.name(), function.words())
                        : Texts.say(
                                "range.lacks",
                                meter.name(),
                                SentencePrinter.said(hand),
                                function.words(),
                                String.join(", ", has)),
                has);
    }

    /** The ranges one can choose by hand. */
    static List<MeterRange> ranges(Meter meter, MeterFunction function) {
        return switch (function) {
            case DC_VOLTS -> meter.directRanges();
            case AC_VOLTS -> meter.alternatingRanges();
            case OHMS ->
                meter.ohmsRanges().stream().map(Meter.OhmsRange::display).toList();
            case DC_AMPS ->
                meter.ampsRanges().stream().map(Meter.AmpsRange::display).toList();
            case DIODE_TEST, CONTINUITY -> List.of();
        };
    }

    private void check(Sentence done) throws SentenceException {
        try {
            Catalogue.check(circuit, done.supposition());
            done.arrangement().appliedTo(circuit);
        } catch (UnfitSupposition | UnfitArrangement unfit) {
            String message = String.valueOf(unfit.getMessage());
            throw new SentenceException(message.lines().collect(Collectors.joining("; ")), message);
        }
    }
}
