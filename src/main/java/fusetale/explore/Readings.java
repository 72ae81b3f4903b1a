package fusetale.explore;

import fusetale.bench.Check;
import fusetale.bench.Reading;
import fusetale.bench.Seen;
import java.util.ArrayList;
import java.util.List;

/**
 * What the meter shows of one machine.
 *
 * @param readings one a check, in their order, under the names of the healthy machine
 * @param remarks what to know besides, in plain words
 */
public record Readings(List<Reading> readings, List<String> remarks) {
    /** Copies the lists. */
    public Readings {
        readings = List.copyOf(readings);
        remarks = List.copyOf(remarks);
    }

    /**
     * Those of a look, under the names they were asked by.
     *
     * @param checks as asked, in the order of the look's readings
     */
    static Readings of(List<Check> checks, Seen seen) {
        List<Reading> readings = new ArrayList<>();
        for (int k = 0; k < checks.size(); k++) {
            readings.add(seen.readings().get(k).of(checks.get(k)));
        }
        return new Readings(readings, seen.remarks());
    }
}
