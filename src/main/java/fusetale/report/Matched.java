package fusetale.report;

import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.match.Evidence;
import fusetale.match.Findings;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was read on a machine and what it tells.
 *
 * @param circuit the machine as built
 * @param meter the meter it was read with
 * @param findings what was read
 * @param lines of each piece of evidence the line of its file; empty where it is from none
 * @param ranking what explains it
 * @param next what to measure next; null where nobody asked
 */
public record Matched(
        Circuit circuit,
        Meter meter,
        Findings findings,
        List<Integer> lines,
        Ranking ranking,
        @Nullable NextReadings next) {
    /** Copies the list. */
    public Matched {
        lines = List.copyOf(lines);
    }

    /** Whether something that is not in the list explains the findings better than anything that is. */
    public boolean noneFits() {
        return ranking.candidates().stream().noneMatch(c -> c.share() >= ranking.somethingElse());
    }

    /** The evidence with this place among all; a ranking speaks of it so. */
    public Evidence evidence(int index) {
        return findings.evidence().get(index);
    }
}
