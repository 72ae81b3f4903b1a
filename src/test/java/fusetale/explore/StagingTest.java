package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.StartStage;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class StagingTest {
    private static final Circuit LIGHT = read("circuits/first-light.yaml");
    private static final Circuit FERRY = read("circuits/night-ferry.yaml");

    private static Circuit read(String file) {
        return Objects.requireNonNull(
                CircuitReader.withShippedParts().read(Path.of(file)).circuit());
    }

    private static StagedStart staged(Supposition supposition, Arrangement arrangement) {
        Question question = new Question(
                LIGHT,
                supposition,
                arrangement,
                Meter.trueRms4000(),
                Check.all(LIGHT, true),
                new Question.Options(4, 1, 0));
        Staging.Result result = Staging.of(new Explorer(1), question, (done, of) -> {}, () -> false);
        assertThat(result).isInstanceOf(Staging.Result.Done.class);
        return ((Staging.Result.Done) result).start();
    }

    private static Supposition shortedLeg() {
        return new Supposition(List.of(new Fault("BR1", "leg1", FailureMode.SHORT, null)));
    }

    @Test
    void theFilesStagesAreTaken() {
        assertThat(StartPlan.of(FERRY).stages())
                .extracting(StartStage::name)
                .startsWith("transformer alone", "logic")
                .endsWith("solenoid rail", "coils");
    }

    /** Windings of Night Ferry: logic 9 V, lighting 25.2 V, solenoids 48 V, display 90 V; F101 is the mains fuse. */
    @Test
    void withoutStagesFusesGoInByTheVoltageOfTheirWinding() {
        Circuit plain = new Circuit(
                FERRY.name(),
                FERRY.story(),
                FERRY.mains(),
                FERRY.ground(),
                FERRY.parts(),
                FERRY.points(),
                FERRY.connectors(),
                FERRY.settings(),
                FERRY.drawing(),
                List.of());

        assertThat(StartPlan.of(plain).stages().stream().flatMap(s -> s.fusesIn().stream()))
                .containsExactly("F102", "F301", "F302", "F303", "F304", "F201", "F202", "F401");
    }

    @Test
    void beforeItsStageAFuseIsOut() {
        StartPlan plan = StartPlan.of(FERRY);
        Arrangement base = Arrangement.powered(FERRY).withPulledFuse("F202");

        assertThat(plan.at(0, base).pulledFuses())
                .containsExactlyInAnyOrder("F102", "F201", "F202", "F301", "F302", "F303", "F304", "F401");
        assertThat(plan.at(0, base).unplugged()).containsExactlyInAnyOrder("J4", "J6");
        assertThat(plan.at(plan.stages().size() - 1, base).pulledFuses()).containsExactly("F202");
        assertThat(plan.at(plan.stages().size() - 1, base).unplugged()).isEmpty();
    }

    @Test
    void aShortedLegShowsWhenItsFuseGoesIn() {
        StagedStart start = staged(shortedLeg(), Arrangement.powered(LIGHT));

        assertThat(start.firstShown()).contains(2);
        assertThat(start.stages().get(0).goOn()).isTrue();
        assertThat(start.stages().get(1).in()).containsExactly("F1");
        assertThat(start.stages().get(1).reasons()).anyMatch(r -> r.startsWith("F1 melts in "));
    }

    @Test
    void aHealthyMachineGoesOn() {
        StagedStart start = staged(Supposition.NOTHING, Arrangement.powered(LIGHT));

        assertThat(start.firstShown()).isEmpty();
        assertThat(start.stages().get(0).telling())
                .extracting(c -> c.check().from())
                .containsOnly("TP4");
        assertThat(start.stages().get(1).telling())
                .extracting(c -> c.check().from())
                .contains("TP1", "TP2", "TP3")
                .doesNotContain("TP4");
    }

    /** The bridge shorted behind a lamp of 40 W: nothing melts, the lamp tells. */
    @Test
    void theSeriesLampTells() {
        StagedStart start = staged(shortedLeg(), Arrangement.powered(LIGHT).withSeriesLamp(40.0));
        SeriesLamp lamp = Objects.requireNonNull(start.last().outcome().bench().seriesLamp());

        assertThat(lamp.asSupposed().watts()).isGreaterThan(lamp.asBuilt().watts());
        assertThat(start.firstShown()).contains(2);
    }
}
