package fusetale.explore;

import fusetale.aftermath.Stress;
import fusetale.circuit.TestPoint;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What would happen and what would the meter say.
 *
 * @param question what was asked
 * @param readings as built beside as supposed, those that moved most first; those alike in two figures in the
 *     order asked
 * @param fuses every fuse in the order of the circuit file
 * @param stresses figures past their rating as supposed, the furthest past first; fuses are not among them
 * @param traces waveforms of the points that moved most; empty with the power off
 * @param doubts what to know before trusting it, the gravest first
 * @param effort what it took
 * @param observations what one sees, hears and feels without a meter, as built beside as supposed
 * @param comingAndGoing readings that come and go with a contact that sometimes touches; in the order asked
 * @param bench what the arrangement itself shows: series lamp, pulses
 * @param swaps what swaps change besides the readings; empty with the power off
 */
public record Outcome(
        Question question,
        List<Compared> readings,
        List<FuseFate> fuses,
        List<Stress> stresses,
        List<Trace> traces,
        List<Doubt> doubts,
        Effort effort,
        List<Noticed> observations,
        List<ComesAndGoes> comingAndGoing,
        AtTheBench bench,
        SwapChanges swaps) {
    /** Copies the lists. */
    public Outcome {
        readings = List.copyOf(readings);
        fuses = List.copyOf(fuses);
        stresses = List.copyOf(stresses);
        traces = List.copyOf(traces);
        doubts = List.copyOf(doubts);
        observations = List.copyOf(observations);
        comingAndGoing = List.copyOf(comingAndGoing);
    }

    /** The same with what the arrangement itself shows, and what there is to know about that. */
    Outcome with(AtTheBench shown, List<Doubt> more) {
        List<Doubt> all = Stream.concat(doubts.stream(), more.stream())
                .sorted(Comparator.comparing(Doubt::severity))
                .toList();
        return new Outcome(
                question,
                readings,
                fuses,
                stresses,
                traces,
                all,
                effort,
                observations,
                comingAndGoing,
                shown);
    }

    /** Of a supposition without swaps. */
    public Outcome(
            Question question,
            List<Compared> readings,
            List<FuseFate> fuses,
            List<Stress> stresses,
            List<Trace> traces,
            List<Doubt> doubts,
            Effort effort) {
        this(question, readings, fuses, stresses, traces, doubts, effort, SwapChanges.NONE);
    }

    /** The same with what swaps change. */
    Outcome withSwaps(SwapChanges changes) {
        return new Outcome(question, readings, fuses, stresses, traces, doubts, effort, changes);
    }

    /** Whether powering up would destroy parts, or worse: it is among the doubts. */
    public boolean doNotPowerUp() {
        return doubts.stream().anyMatch(d -> d.severity() == Doubt.Severity.DANGER);
    }

    /** What the circuit file calls the point under a reading's red lead; empty where it is no test point. */
    public String label(Compared reading) {
        return question.healthy()
                .point(reading.check().from())
                .map(TestPoint::label)
                .orElse("");
    }

    /** The readings that moved further than healthy machines and the meter stray. */
    public List<Compared> moved() {
        return readings.stream().filter(r -> !r.tooCloseToTell()).toList();
    }
}
