package fusetale.match;

import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.explore.Progress;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Finds out what is wrong with one machine. Works out what every supposition lets expect as it is asked for, keeps it, and
 * weighs it against what was read. May be used by one thread at a time; {@code stopped} may be set from any.
 */
public final class Matcher {
    /**
     * How to work.
     *
     * @param threads machines to solve at once, 1 or more
     * @param seed of the drawn machines
     * @param cache folder in which to keep what was worked out; null for none
     */
    public record Settings(int threads, long seed, @Nullable Path cache) {}

    /** For one machine. */
    public static Matcher of(Circuit circuit, Meter meter, Settings settings) {
        throw new UnsupportedOperationException();
    }

    /**
     * Weighs all suppositions. The first answer comes after about {@code firstSeconds}, from what was solved by then; each
     * further one is handed over as the dictionary grows; the last one, from the whole of it, is returned.
     *
     * @param sharper told each better answer, in the calling thread
     * @param progress told how many machines of how many are solved
     * @param stopped asked now and then; true ends the work with what there is
     */
    public Ranking rank(Findings findings, Consumer<Ranking> sharper, Progress progress, BooleanSupplier stopped) {
        throw new UnsupportedOperationException();
    }

    /**
     * What to measure next.
     *
     * @param findings as given to {@link #rank} before
     * @param outOfReach points that cannot be reached on this machine
     * @param ruledOut asks the repairer does not want, such as one just refused
     */
    public NextReadings next(
            Findings findings, Set<String> outOfReach, List<Ask> ruledOut, Progress progress, BooleanSupplier stopped) {
        throw new UnsupportedOperationException();
    }
}
