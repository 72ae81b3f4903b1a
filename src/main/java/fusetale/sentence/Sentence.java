package fusetale.sentence;

import fusetale.bench.Arrangement;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import java.util.ArrayList;
import java.util.List;

/**
 * The whole state of the bench, of which {@link Sentences} makes one line and back. Two are equal where they mean the same:
 * the arrangement's deeds are put in order, and its name is made of them.
 *
 * @param supposition what is supposed wrong, and what is swapped
 * @param arrangement how the bench is set
 * @param setting how the meter is set
 */
public record Sentence(Supposition supposition, Arrangement arrangement, Setting setting) {
    /** Puts the deeds in order. */
    public Sentence {
        arrangement = named(arrangement);
    }

    /**
     * Where a repair begins: nothing supposed, the circuit file's first arrangement, the usual meter on d.c. volts, or with
     * the power off on ohms.
     */
    public static Sentence atFirst(Circuit circuit) {
        Arrangement first = circuit.settings().isEmpty() ? Arrangement.powered(circuit) : firstOf(circuit);
        MeterFunction function = first.powerOn() ? MeterFunction.DC_VOLTS : MeterFunction.OHMS;
        return new Sentence(
                Supposition.NOTHING,
                BenchDraft.settled(circuit, first),
                Setting.usual().withFunction(function));
    }

    private static Arrangement firstOf(Circuit circuit) {
        try {
            return Arrangement.of(circuit, circuit.settings().get(0));
        } catch (UnfitArrangement unfit) {
            throw new IllegalArgumentException(circuit.name() + " has arrangements of another circuit", unfit);
        }
    }

    /** An arrangement with its deeds in order, under a name made of them: equal deeds, equal arrangements. */
    public static Arrangement named(Arrangement arrangement) {
        return new BenchDraft(arrangement).done();
    }

    /** The same bench, supposing something else. */
    public Sentence withSupposition(Supposition other) {
        return new Sentence(other, arrangement, setting);
    }

    /** The same with the bench set otherwise. */
    public Sentence withArrangement(Arrangement other) {
        return new Sentence(supposition, other, setting);
    }

    /** The same with the meter set otherwise. */
    public Sentence withSetting(Setting other) {
        return new Sentence(supposition, arrangement, other);
    }

    /**
     * The same without one thing supposed.
     *
     * @param piece which, from 0, in the order of the sentence: swaps, then faults
     * @throws IndexOutOfBoundsException where there are not so many
     */
    public Sentence suppositionWithout(int piece) {
        List<Swap> swaps = new ArrayList<>(supposition.swaps());
        List<Fault> faults = new ArrayList<>(supposition.faults());
        if (piece < swaps.size()) {
            swaps.remove(piece);
        } else {
            faults.remove(piece - swaps.size());
        }
        return withSupposition(new Supposition(faults, swaps));
    }
}
