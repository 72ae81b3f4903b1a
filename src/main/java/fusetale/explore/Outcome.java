package fusetale.explore;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Strain;
import fusetale.aftermath.Stress;
import fusetale.circuit.TestPoint;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What would happen and what would the meter say.
 *
 * @param question what was asked
 * @param readings as built beside as supposed, those that moved most first; those alike in two figures in the
 *     order asked
 * @param fuses every fuse in the order of the circuit file
 * @param strains every figure that has a rating, as supposed, the one furthest past it or nearest to it first; empty with the
 *     power off
 * @param traces waveforms of the points that moved most; empty with the power off
 * @param doubts what to know before trusting it, the gravest first
 * @param effort what it took
 * @param observations what one sees, hears and feels without a meter, as built beside as supposed
 * @param comingAndGoing readings that come and go with a contact that sometimes touches; in the order asked
 * @param bench what the arrangement itself shows: series lamp, pulses
 * @param swaps what swaps change besides the readings; empty with the power off
 * @param aftermath what follows if nobody switches off; null where it was not asked for, or the power is off
 * @param flows every current, before any fuse has melted; empty with the power off
 */
public record Outcome(
        Question question,
        List<Compared> readings,
        List<FuseFate> fuses,
        List<Stress> strains,
        List<Trace> traces,
        List<Doubt> doubts,
        Effort effort,
        List<Noticed> observations,
        List<ComesAndGoes> comingAndGoing,
        AtTheBench bench,
        SwapChanges swaps,
        @Nullable Aftermath aftermath,
        List<Flow> flows) {
    /** Copies the lists. */
    public Outcome {
        readings = List.copyOf(readings);
        fuses = List.copyOf(fuses);
        strains = List.copyOf(strains);
        traces = List.copyOf(traces);
        doubts = List.copyOf(doubts);
        observations = List.copyOf(observations);
        comingAndGoing = List.copyOf(comingAndGoing);
        flows = List.copyOf(flows);
    }

    /** Of readings alone, with nothing seen, pulsed, swapped or played forward. */
    public Outcome(
            Question question,
            List<Compared> readings,
            List<FuseFate> fuses,
            List<Stress> strains,
            List<Trace> traces,
            List<Doubt> doubts,
            Effort effort) {
        this(
                question,
                readings,
                fuses,
                strains,
                traces,
                doubts,
                effort,
                List.of(),
                List.of(),
                AtTheBench.NOTHING,
                SwapChanges.NONE,
                null,
                List.of());
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
                strains,
                traces,
                all,
                effort,
                observations,
                comingAndGoing,
                shown,
                swaps,
                aftermath,
                flows);
    }

    /** The same with what swaps change. */
    Outcome withSwaps(SwapChanges changes) {
        return new Outcome(
                question,
                readings,
                fuses,
                strains,
                traces,
                doubts,
                effort,
                observations,
                comingAndGoing,
                bench,
                changes,
                aftermath,
                flows);
    }

    /** Figures past their rating, the furthest past first; fuses, which have a table of their own, are not among them. */
    public List<Stress> stresses() {
        return past(strains);
    }

    /** Those of some rows that are past their rating, fuses left out. */
    static List<Stress> past(List<Stress> rows) {
        return rows.stream()
                .filter(Stress::over)
                .filter(s -> s.strain() != Strain.LINK_CURRENT && s.strain() != Strain.MARKED_CURRENT)
                .toList();
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
