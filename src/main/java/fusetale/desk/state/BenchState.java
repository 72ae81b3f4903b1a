package fusetale.desk.state;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.sentence.Measured;
import fusetale.sentence.Sentence;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Everything that a repairer has set: one value, so that going back means taking an earlier one.
 *
 * @param file where the board came from; null for one that came with the program
 * @param board the machine as drawn
 * @param sentence what is supposed and how the bench is set
 * @param found what was read, seen and replaced, in that order; a repeated reading stands behind the first
 * @param outOfReach names of points that cannot be reached on this machine
 */
public record BenchState(
        @Nullable Path file, Circuit board, Sentence sentence, List<Found> found, Set<String> outOfReach) {
    /** Copies what can change. */
    public BenchState {
        found = List.copyOf(found);
        outOfReach = Set.copyOf(outOfReach);
    }

    /** A board nothing is supposed of. */
    public static BenchState atFirst(@Nullable Path file, Circuit board) {
        return new BenchState(file, board, Sentence.atFirst(board), List.of(), Set.of());
    }

    /** The same with another sentence. */
    public BenchState with(Sentence other) {
        return new BenchState(file, board, other, found, outOfReach);
    }

    /** Whether the same is asked of the same board, whatever was found on it. */
    public boolean sameQuestion(BenchState other) {
        return sentence.equals(other.sentence) && board.equals(other.board);
    }

    /** The newest reading of each place and setting on the machine as it is now, in the order they were read. */
    public Map<Check, Measured> measured() {
        Map<Check, Measured> newest = new LinkedHashMap<>();
        for (Found one : Found.now(found)) {
            Measured reading = one.measured();
            if (reading != null) {
                newest.remove(reading.check());
                newest.put(reading.check(), reading);
            }
        }
        return newest;
    }

    /** The same with other things found. */
    public BenchState finding(List<Found> others) {
        return new BenchState(file, board, sentence, others, outOfReach);
    }

    /** The same with one more thing found. */
    public BenchState with(Found more) {
        List<Found> all = new ArrayList<>(found);
        all.add(more);
        return finding(all);
    }

    /** The same bench with the board drawn anew. */
    public BenchState with(Circuit redrawn) {
        return new BenchState(file, redrawn, sentence, found, outOfReach);
    }

    /** The same with a point that can be reached or cannot. */
    public BenchState reaching(String point, boolean canBeReached) {
        Set<String> points = new HashSet<>(outOfReach);
        if (canBeReached) {
            points.remove(point);
        } else {
            points.add(point);
        }
        return new BenchState(file, board, sentence, found, points);
    }
}
