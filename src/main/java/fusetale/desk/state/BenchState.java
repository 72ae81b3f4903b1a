package fusetale.desk.state;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.sentence.Measured;
import fusetale.sentence.Sentence;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Everything that a repairer has set: one value, so that going back means taking an earlier one.
 *
 * @param file where the board came from; null for one that came with the program
 * @param board the machine as drawn
 * @param sentence what is supposed and how the bench is set
 * @param measured what was read, by what was measured, in the order it was read
 * @param outOfReach names of points that cannot be reached on this machine
 */
public record BenchState(
        @Nullable Path file, Circuit board, Sentence sentence, Map<Check, Measured> measured, Set<String> outOfReach) {
    /** Copies what can change, keeping the order of what was read. */
    public BenchState {
        measured = Collections.unmodifiableMap(new LinkedHashMap<>(measured));
        outOfReach = Set.copyOf(outOfReach);
    }

    /** A board nothing is supposed of. */
    public static BenchState atFirst(@Nullable Path file, Circuit board) {
        return new BenchState(file, board, Sentence.atFirst(board), Map.of(), Set.of());
    }

    /** The same with another sentence. */
    public BenchState with(Sentence other) {
        return new BenchState(file, board, other, measured, outOfReach);
    }

    /** The same with one more reading; one of the same place and setting replaces the older. */
    public BenchState with(Measured reading) {
        Map<Check, Measured> more = new LinkedHashMap<>(measured);
        more.remove(reading.check());
        more.put(reading.check(), reading);
        return new BenchState(file, board, sentence, more, outOfReach);
    }

    /** The same bench with the board drawn anew. */
    public BenchState with(Circuit redrawn) {
        return new BenchState(file, redrawn, sentence, measured, outOfReach);
    }

    /** The same with a point that can be reached or cannot. */
    public BenchState reaching(String point, boolean canBeReached) {
        Set<String> points = new HashSet<>(outOfReach);
        if (canBeReached) {
            points.remove(point);
        } else {
            points.add(point);
        }
        return new BenchState(file, board, sentence, measured, points);
    }
}
