package fusetale.explore;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import java.util.List;

/**
 * What is the same for all suppositions of a batch.
 *
 * @param healthy the machine as built
 * @param arrangement how the bench is set, the voltage of the mains included
 * @param meter what is measured with
 * @param checks what is measured; may be empty where only the state is wanted
 * @param fuses what becomes of overloaded fuses
 */
public record Batch(Circuit healthy, Arrangement arrangement, Meter meter, List<Check> checks, Fuses fuses) {
    /** Copies the list. */
    public Batch {
        checks = List.copyOf(checks);
    }

    /** What becomes of fuses that carry more than they can. */
    public enum Fuses {
        /** Those that melt for certain are opened before readings are taken, as in an {@link Explorer}'s answer. */
        MELT,
        /** All hold: the first moments after switching on. */
        HOLD
    }

    /** A batch that takes no readings and melts no fuses. */
    public static Batch of(Circuit healthy, Arrangement arrangement) {
        return new Batch(healthy, arrangement, Meter.trueRms4000(), List.of(), Fuses.HOLD);
    }

    /** The same with another arrangement. */
    public Batch with(Arrangement other) {
        return new Batch(healthy, other, meter, checks, fuses);
    }
}
