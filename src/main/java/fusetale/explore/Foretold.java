package fusetale.explore;

import fusetale.bench.Observation;
import fusetale.bench.Reading;
import java.util.List;
import java.util.Set;

/**
 * What one machine shows under one supposition.
 *
 * @param readings one a check, in their order, under the names of the healthy machine; a check whose points the supposition
 *     took away is read as OL
 * @param observations what there is to notice; empty with the power off but for fuses
 * @param melted fuses that melt for certain, in other machines and at the lowest mains as well, in that order: readings are those
 *     after it
 * @param instead fuses that may have melted before one of those, and were saved by it: their band begins before its band ends
 * @param mayMelt fuses that may melt and may hold: readings are those while they hold
 * @param lost parts that it takes far past their rating, further than as built: they are lost, at a first look
 * @param untouched whether the supposition changes nothing here that carries a current or could: nothing was solved
 * @param moved nets of the healthy machine whose voltage to ground is another one than there; empty with the power off
 */
public record Foretold(
        List<Reading> readings,
        List<Observation> observations,
        List<String> melted,
        List<String> instead,
        List<String> mayMelt,
        List<String> lost,
        boolean untouched,
        Set<String> moved) {
    /** Copies the lists. */
    public Foretold {
        readings = List.copyOf(readings);
        observations = List.copyOf(observations);
        melted = List.copyOf(melted);
        instead = List.copyOf(instead);
        mayMelt = List.copyOf(mayMelt);
        lost = List.copyOf(lost);
        moved = Set.copyOf(moved);
    }
}
