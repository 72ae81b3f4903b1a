package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/**
 * What is remembered from one weighing to the next changes no bit of the answer: the judge is the same weighing by scales that
 * have not weighed before.
 */
class ScalesTest {
    private static final Circuit BOARD = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/first-light.yaml"))
            .circuit());

    private static final List<Evidence> FOUND = List.of(
            seen("E1", Observation.Sight.DARK),
            volts("TP1", MeterFunction.DC_VOLTS, 18.1),
            volts("TP2", MeterFunction.DC_VOLTS, 0.02),
            volts("TP1", MeterFunction.AC_VOLTS, 0.9));

    private Workbench bench;

    @BeforeEach
    void layOut() {
        List<Hypothesis> some = Hypotheses.of(BOARD).subList(0, 14);
        bench = new Workbench(BOARD, Meter.trueRms4000(), 2, 4, 1, some);
    }

    private static Evidence volts(String point, MeterFunction function, double si) {
        return new Evidence(
                new Ask.Metered(Arrangement.powered(BOARD), new Check(point, "gnd", function)), new Shown.Figure(si));
    }

    private static Evidence seen(String part, Observation.Sight sight) {
        return new Evidence(new Ask.Noticed(Arrangement.powered(BOARD), part, sight.aspect()), new Shown.Seen(sight));
    }

    private static Case found(List<Evidence> evidence) {
        return Case.of(Findings.of(evidence));
    }

    @Test
    void oneReadingAfterTheOtherIsWeighedAsAllAtOnce() throws Exception {
        Case all = found(FOUND);
        bench.work(bench.boards().list(), bench.prepare(all, () -> false), all, () -> false);
        for (int n = 1; n <= FOUND.size(); n++) {
            Case some = found(FOUND.subList(0, n));

            assertThat(shares(bench.weigh(some))).isEqualTo(shares(afresh(some)));
        }
    }

    /** What differs from the healthy machine, remembered while ever more is worked out, is what comparing all afresh gives. */
    @Test
    void whatDiffersFromTheHealthyMachineIsComparedAgainWhereMoreIsKnown() throws Exception {
        Case all = found(FOUND);
        List<Arrangement> arrangements = bench.prepare(all, () -> false);
        String powered = Dictionary.key(Arrangement.powered(BOARD));
        List<Integer> hypotheses = IntStream.range(0, 14).boxed().toList();
        List<Boards.Board> boards = bench.boards().list();
        int half = boards.size() / 2;
        int differed = 0;
        for (List<Boards.Board> more : List.of(boards.subList(0, half), boards.subList(half, boards.size()))) {
            bench.work(more, arrangements, all, () -> false);
            Contrast remembered = bench.contrast(powered, hypotheses, Renewed.NOTHING);
            Contrast afresh = Contrast.of(powered).upToDate(bench, hypotheses, Renewed.NOTHING);
            int differs = 0;
            for (Evidence e : FOUND) {
                BitSet apart = remembered.apart(Wanted.of(e.ask()));
                assertThat(apart).isEqualTo(afresh.apart(Wanted.of(e.ask())));
                differs += apart.cardinality();
            }
            assertThat(differs).isGreaterThan(differed);
            differed = differs;
        }
        assertThat(bench.contrast(powered, hypotheses, Renewed.NOTHING))
                .isSameAs(bench.contrast(powered, hypotheses, Renewed.NOTHING));
    }

    @Test
    void aReadingTakenBackOrMovedIsNotTakenForAnother() throws Exception {
        Case all = found(FOUND);
        bench.work(bench.boards().list(), bench.prepare(all, () -> false), all, () -> false);
        List<Evidence> turned = new ArrayList<>(FOUND.subList(1, FOUND.size()));
        turned.add(FOUND.get(0));

        bench.weigh(all);

        assertThat(shares(bench.weigh(found(turned)))).isEqualTo(shares(afresh(found(turned))));
        assertThat(shares(bench.weigh(found(FOUND.subList(1, 3)))))
                .isEqualTo(shares(afresh(found(FOUND.subList(1, 3)))));
    }

    @Test
    void whatWasWorkedOutSinceCounts() throws Exception {
        Case all = found(FOUND);
        List<Boards.Board> boards = bench.boards().list();
        List<Arrangement> arrangements = bench.prepare(all, () -> false);
        bench.work(boards.stream().filter(Boards.Board::middle).toList(), arrangements, all, () -> false);
        List<Double> before = shares(bench.weigh(all));
        // the amounts beside a middle one give it its slope
        bench.work(boards, arrangements, all, () -> false);

        List<Double> after = shares(bench.weigh(all));

        assertThat(after).isNotEqualTo(before).isEqualTo(shares(afresh(all)));
    }

    @Test
    void anOutlookFollowsWhatIsWorkedOut() throws Exception {
        Case all = found(FOUND);
        Wanted wanted = all.wanted().get(1);
        List<Arrangement> arrangements = bench.prepare(all, () -> false);
        Boards.Board board = bench.boards().list().stream()
                .filter(b -> b.middle() && bench.boards().of(b).varies())
                .findFirst()
                .orElseThrow();

        assertThat(bench.outlook(wanted).of(board, Way.AS_TAKEN).kind()).isEqualTo(Expectation.Kind.UNKNOWN);
        bench.work(List.of(board), arrangements, all, () -> false);
        assertThat(bench.outlook(wanted).of(board, Way.AS_TAKEN))
                .isEqualTo(bench.expect(board, wanted, Renewed.NOTHING));
        bench.work(bench.boards().of(board.hypothesis()), arrangements, all, () -> false);
        assertThat(bench.outlook(wanted).of(board, Way.AS_TAKEN))
                .isEqualTo(bench.expect(board, wanted, Renewed.NOTHING));
    }

    private Workbench.Weighing afresh(Case findings) {
        return new Scales(bench, false).weigh(findings, b -> true);
    }

    private static List<Double> shares(Workbench.Weighing weighing) {
        List<Double> all = new ArrayList<>();
        for (double share : weighing.posterior().shares()) {
            all.add(share);
        }
        all.add(weighing.posterior().somethingElse());
        return all;
    }
}
