package fusetale.match;

import fusetale.bench.Meter;
import fusetale.circuit.Problem;
import java.util.List;

/**
 * What a file of readings holds.
 *
 * @param findings what was read, in order; without the rows that cannot be used
 * @param lines of each piece of evidence the line of the file on which it stands, from 1
 * @param meters meters named in it, each once, in order; empty where none is named
 * @param unmeasured rows that say nothing was measured, or nobody knows
 * @param problems everything wrong with the file, from top to bottom; empty where it can be used
 */
public record ReadingsFile(
        Findings findings, List<Integer> lines, List<Meter> meters, int unmeasured, List<Problem> problems) {
    /** Copies the lists. */
    public ReadingsFile {
        lines = List.copyOf(lines);
        meters = List.copyOf(meters);
        problems = List.copyOf(problems);
    }

    /** Whether all of it was understood. */
    public boolean usable() {
        return problems.isEmpty();
    }
}
