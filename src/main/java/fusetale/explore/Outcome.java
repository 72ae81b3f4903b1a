package fusetale.explore;

import java.util.List;

/**
 * What would happen and what would the meter say.
 *
 * @param question what was asked
 * @param readings as built beside as supposed, those that moved most first; ties in the order asked
 * @param fuses every fuse in the order of the circuit file
 * @param traces waveforms of the points that moved most; empty with the power off
 * @param doubts what to know before trusting it, the gravest first
 * @param effort what it took
 */
public record Outcome(
        Question question,
        List<Compared> readings,
        List<FuseFate> fuses,
        List<Trace> traces,
        List<Doubt> doubts,
        Effort effort) {
    /** Copies the lists. */
    public Outcome {
        readings = List.copyOf(readings);
        fuses = List.copyOf(fuses);
        traces = List.copyOf(traces);
        doubts = List.copyOf(doubts);
    }
}
