package fusetale.match;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.Observation;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.MeterFunction;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/**
 * A coil that its shorted driver keeps on draws more than a slow 5 A fuse carries for good and less than what melts it for
 * certain: 1.35 times the rating may take an hour (UL 248-14). The old fuse is gone; whether the new one goes as well, nobody
 * can say, and a fuse that went alone does not go twice. The judge is logic.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class NewFuseTest {
    private static final Circuit FERRY = Objects.requireNonNull(CircuitReader.withShippedParts()
            .read(Path.of("circuits/night-ferry.yaml"))
            .circuit());
    private static final Arrangement ON = Arrangement.powered(FERRY);
    private static final Repair DRIVER = new Repair(List.of("Q206"));
    private static final Repair FUSE = new Repair(List.of("F202"));

    private final Workbench bench = new Workbench(
            FERRY,
            Meter.trueRms4000(),
            2,
            2,
            1,
            Hypotheses.of(FERRY).stream().filter(NewFuseTest::compared).toList());
    private final Case again = Case.of(replaced().with(rail(0.0)).with(fuse(Observation.Sight.WIRE_GONE)));

    private static boolean compared(Hypothesis h) {
        List<Fault> faults = h.usual().faults();
        return h.usual().isNothing()
                || (faults.size() == 1
                        && (is(faults.get(0), "F202", FailureMode.BLOWN)
                                || is(faults.get(0), "Q206", FailureMode.SHORT)));
    }

    private static boolean is(Fault fault, String part, FailureMode mode) {
        return fault.part().equals(part) && fault.mode() == mode;
    }

    private static Evidence fuse(Observation.Sight sight) {
        return new Evidence(new Ask.Noticed(ON, "F202", Observation.Aspect.FUSE), new Shown.Seen(sight));
    }

    private static Evidence rail(double volts) {
        return new Evidence(
                new Ask.Metered(ON, new Check("TP6", "gnd", MeterFunction.DC_VOLTS)), new Shown.Figure(volts));
    }

    private static Findings replaced() {
        return Findings.of(List.of(fuse(Observation.Sight.WIRE_GONE))).replaced(List.of("F202"));
    }

    /** All that both tests ask is worked out once. */
    @BeforeAll
    void work() throws Exception {
        bench.work(bench.boards().list(), bench.prepare(again, () -> false), again, () -> false);
    }

    @Test
    void aNewFuseThatGoesAsWellSpeaksForTheOverload() {
        Map<Repair, Double> shares = bench.weigh(again).posterior().repairs(bench.boards());

        assertThat(shares.getOrDefault(DRIVER, 0.0)).isGreaterThan(0.9);
        assertThat(shares.getOrDefault(FUSE, 0.0)).isLessThan(0.05);
        // and what the overload takes along is told as it was seen
        Ranking told = new Explanation(bench, bench.weigh(again)).ranking(new Ranking.HowFar(1, 1, 1, 1));
        assertThat(told.candidates().get(0).repair()).isEqualTo(DRIVER);
        assertThat(told.candidates().get(0).consequences()).contains("F202");
    }

    @Test
    void aNewFuseMayHoldThoughTheOldOneMelted() {
        Case holds = Case.of(replaced().with(rail(40.0)));
        Boards.Board overload = bench.boards().list().stream()
                .filter(b -> b.supposition().faults().stream()
                        .anyMatch(f ->
                                is(f, "Q206", FailureMode.SHORT) && f.place().equals("ce")))
                .filter(Boards.Board::middle)
                .findFirst()
                .orElseThrow();
        Trial stays = bench.after(overload, holds.now(), Way.OTHERWISE);
        Trial goes = bench.after(overload, holds.now(), Way.OTHERWISE_AGAIN);

        assertThat(bench.ways(overload, holds.renewals()))
                .containsExactly(Way.AS_TAKEN, Way.OTHERWISE, Way.OTHERWISE_AGAIN);
        assertThat(stays.supposition().faults()).noneMatch(f -> f.part().equals("F202"));
        assertThat(goes.supposition().faults()).anyMatch(f -> is(f, "F202", FailureMode.BLOWN));
    }
}
