package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.explore.Progress;
import fusetale.fault.FailureMode;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What is asked next, of a machine that is well or has a fuse that is too big, a hundred to one before anything is seen. */
class PlannerTest {
    private static final Circuit BOARD = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/first-light.yaml"))
            .circuit());

    private static final Evidence TOO_BIG = new Evidence(
            new Ask.Noticed(Arrangement.unpowered(), "F1", Observation.Aspect.RATING),
            new Shown.Seen(Observation.Sight.OVER_RATED));

    private final Workbench bench = new Workbench(
            BOARD,
            Meter.trueRms4000(),
            1,
            2,
            1,
            Hypotheses.of(BOARD).stream()
                    .filter(h -> h.usual().isNothing() || isTooBig(h))
                    .map(h -> h.usual().isNothing() ? weighing(h, 0.96) : weighing(h, 0.0096))
                    .toList());

    private static boolean isTooBig(Hypothesis h) {
        return h.usual().faults().size() == 1
                && h.usual().faults().get(0).mode() == FailureMode.WRONG_RATING
                && h.repair().parts().equals(List.of("F1"));
    }

    private static Hypothesis weighing(Hypothesis h, double weight) {
        return new Hypothesis(h.usual(), h.varied(), h.range(), weight, h.repair());
    }

    private NextReadings next(List<Evidence> found) throws Exception {
        Case all = Case.of(Findings.of(found));
        bench.work(bench.boards().list(), bench.prepare(all, () -> false), all, () -> false);
        Workbench.Weighing weighing = bench.weigh(all);
        return new Planner(BOARD, bench, weighing, true, Progress.SILENT, () -> false).next(a -> true, true);
    }

    /** Once it may be a wrong look, one in two hundred (judgement): a second one is nearly one bit for half a minute (Bayes' rule). */
    @Test
    void whatWasPerhapsSeenWronglyIsLookedAtOnceMore() throws Exception {
        Advice first = next(List.of(TOO_BIG)).advice().get(0);

        assertThat(Case.sameAsk(first.ask(), TOO_BIG.ask())).isTrue();
        assertThat(first.bits()).isBetween(0.6, 1.0);
        assertThat(first.minutes()).isLessThan(1);
        assertThat(first.deeds()).containsExactly("look once more");
    }

    @Test
    void whatWasSeenTwiceIsNotLookedAtAgain() throws Exception {
        assertThat(next(List.of(TOO_BIG, TOO_BIG)).advice()).noneMatch(a -> Case.sameAsk(a.ask(), TOO_BIG.ask()));
    }
}
