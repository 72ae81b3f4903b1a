package fusetale.sentence;

import fusetale.bench.Driven;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.Mains;
import fusetale.circuit.MeterFunction;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NavigableMap;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.Optional;

/** Takes a piece of a state away, or changes its amount. */
final class PieceChange {
    /** What a repairer has in a drawer or a lamp holder [W]: common practice. */
    private static final AmountRange LAMPS = new AmountRange(Unit.WATT, 100, 5, 1000);

    /** What the reservoirs of such machines hold [V], either way: common practice. */
    private static final AmountRange CHARGES = new AmountRange(Unit.VOLT, 10, -400, 400);

    /** Mains that are lower or higher by more than this share of nominal are no mains. */
    private static final double MAINS_LOW = 0.5;

    private static final double MAINS_HIGH = 1.5;
    private static final double USUAL_PULSE_SECONDS = 0.04;

    private final Circuit circuit;
    private final Sentence state;
    private final Piece piece;

    private PieceChange(Circuit circuit, Sentence state, Piece piece) {
        this.circuit = circuit;
        this.state = state;
        this.piece = piece;
    }

    static Sentence without(Circuit circuit, Sentence state, Piece piece) {
        return new PieceChange(circuit, state, piece).without();
    }

    static Sentence withAmount(Circuit circuit, Sentence state, Piece piece, Quantity amount) {
        return new PieceChange(circuit, state, piece).with(amount);
    }

    /** What the amount of a fault may be, or of what is done at the bench; empty where there is none. */
    static Optional<AmountRange> range(Circuit circuit, Optional<Fault> fault, Piece.Kind kind) {
        return switch (kind) {
            case FAULT -> fault.flatMap(f -> form(circuit, f)).flatMap(f -> Optional.ofNullable(f.amount()));
            case MAINS -> Optional.of(mains(circuit.mains()));
            case HERTZ -> Optional.of(frequency(circuit.mains()));
            case LAMP -> Optional.of(LAMPS);
            case CHARGED -> Optional.of(CHARGES);
            case PULSED ->
                Optional.of(new AmountRange(
                        Unit.SECOND, USUAL_PULSE_SECONDS, Driven.SHORTEST_PULSE_SECONDS, Driven.LONGEST_PULSE_SECONDS));
            case WORDS, SWAP, POWER, PULLED, UNPLUGGED, LIFTED, CLIP, HELD, SWITCH, METER, RANGE, FUNCTION, LEADS ->
                Optional.empty();
        };
    }

    /** The amount that a piece of a state has; empty where it has none. */
    static Optional<Quantity> amount(Circuit circuit, Sentence state, Piece piece) {
        return new PieceChange(circuit, state, piece).amount();
    }

    private Optional<Quantity> amount() {
        BenchDraft bench = new BenchDraft(state.arrangement());
        return switch (piece.kind()) {
            case FAULT ->
                Optional.ofNullable(
                        state.supposition().faults().get(piece.index()).amount());
            case MAINS -> Optional.of(new Quantity(bench.mainsVolts, Unit.VOLT));
            case HERTZ -> Optional.ofNullable(bench.mainsHertz).map(h -> new Quantity(h, Unit.HERTZ));
            case LAMP -> Optional.ofNullable(bench.lampWatts).map(w -> new Quantity(w, Unit.WATT));
            case CHARGED ->
                name(bench.charged).map(c -> new Quantity(Objects.requireNonNull(bench.charged.get(c)), Unit.VOLT));
            case PULSED ->
                name(bench.pulsedSeconds)
                        .map(p -> new Quantity(Objects.requireNonNull(bench.pulsedSeconds.get(p)), Unit.SECOND));
            case WORDS, SWAP, POWER, PULLED, UNPLUGGED, LIFTED, CLIP, HELD, SWITCH, METER, RANGE, FUNCTION, LEADS ->
                Optional.empty();
        };
    }

    private static AmountRange mains(Mains mains) {
        double nominal = mains.volts().si();
        return new AmountRange(Unit.VOLT, nominal, MAINS_LOW * nominal, MAINS_HIGH * nominal);
    }

    private static AmountRange frequency(Mains mains) {
        double usual = Math.max(
                Mains.LOWEST_HERTZ, Math.min(Mains.HIGHEST_HERTZ, mains.hertz().si()));
        return new AmountRange(Unit.HERTZ, usual, Mains.LOWEST_HERTZ, Mains.HIGHEST_HERTZ);
    }

    private static Optional<FaultForm> form(Circuit circuit, Fault fault) {
        try {
            return Optional.of(Catalogue.form(circuit, fault));
        } catch (UnfitSupposition none) {
            return Optional.empty();
        }
    }

    private Sentence without() {
        BenchDraft bench = new BenchDraft(state.arrangement());
        Setting setting = state.setting();
        switch (piece.kind()) {
            case WORDS -> {
                return state;
            }
            case SWAP -> {
                return state.suppositionWithout(piece.index());
            }
            case FAULT -> {
                return state.suppositionWithout(state.supposition().swaps().size() + piece.index());
            }
            case POWER -> {
                bench.powerOn = true;
                bench.charged.clear();
                setting = setting.function().powered() ? setting : on(setting, MeterFunction.DC_VOLTS);
            }
            case MAINS -> bench.mainsVolts = circuit.mains().volts().si();
            case HERTZ -> bench.mainsHertz = null;
            case LAMP -> bench.lampWatts = null;
            case PULLED -> remove(bench.pulled);
            case UNPLUGGED -> remove(bench.unplugged);
            case LIFTED -> remove(bench.lifted);
            case CLIP -> remove(bench.clips);
            case HELD -> remove(bench.heldOn);
            case SWITCH -> remove(bench.switches);
            case CHARGED -> remove(bench.charged);
            case PULSED -> remove(bench.pulsedSeconds);
            case METER -> setting = setting.withMeter(Setting.usual().meter());
            case RANGE -> setting = setting.withMeter(Meter.of(setting.meter().model()));
            case FUNCTION ->
                setting = on(setting, state.arrangement().powerOn() ? MeterFunction.DC_VOLTS : MeterFunction.OHMS);
            case LEADS -> setting = setting.withLeads(null);
        }
        return new Sentence(state.supposition(), bench.done(), setting);
    }

    /** A range belongs to the function that it was set in. */
    private static Setting on(Setting setting, MeterFunction function) {
        return setting.function() == function
                ? setting
                : new Setting(Meter.of(setting.meter().model()), function, setting.leads());
    }

    private void remove(NavigableSet<?> deeds) {
        Iterator<?> all = deeds.iterator();
        for (int i = 0; all.hasNext(); i++) {
            all.next();
            if (i == piece.index()) {
                all.remove();
                return;
            }
        }
    }

    private void remove(NavigableMap<String, ?> deeds) {
        name(deeds).ifPresent(deeds::remove);
    }

    private Optional<String> name(NavigableMap<String, ?> deeds) {
        return deeds.keySet().stream().skip(piece.index()).findFirst();
    }

    private Sentence with(Quantity amount) {
        List<Fault> supposed = state.supposition().faults();
        Optional<Fault> fault =
                piece.kind() == Piece.Kind.FAULT ? Optional.of(supposed.get(piece.index())) : Optional.empty();
        AmountRange range = range(circuit, fault, piece.kind())
                .orElseThrow(() -> new IllegalArgumentException("no amount in " + piece.text()));
        if (!range.holds(amount)) {
            throw new IllegalArgumentException(amount + " in " + piece.text());
        }
        if (fault.isPresent()) {
            List<Fault> faults = new ArrayList<>(state.supposition().faults());
            Fault old = fault.get();
            faults.set(piece.index(), new Fault(old.part(), old.place(), old.mode(), amount));
            List<Swap> swaps = state.supposition().swaps();
            return state.withSupposition(new Supposition(faults, swaps));
        }
        BenchDraft bench = new BenchDraft(state.arrangement());
        switch (piece.kind()) {
            case MAINS -> bench.mainsVolts = amount.si();
            case HERTZ -> bench.mainsHertz = amount.si();
            case LAMP -> bench.lampWatts = amount.si();
            case CHARGED -> name(bench.charged).ifPresent(c -> bench.charged.put(c, amount.si()));
            case PULSED -> name(bench.pulsedSeconds).ifPresent(p -> bench.pulsedSeconds.put(p, amount.si()));
            default -> throw new IllegalArgumentException("no amount in " + piece.text());
        }
        return state.withArrangement(bench.done());
    }
}
