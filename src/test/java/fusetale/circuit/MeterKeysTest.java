package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Keys of meters, and of capacitors that are charged beforehand: what they become, what is refused. */
class MeterKeysTest {
    private static final String TEXT = """
            format: 1
            meters:
              pier meter:
                display: analogue
                ranging: by hand
                d.c. volts: {per volt: 20 kohm, ranges: [[10 V, 0.1 V, 3 %], [50 V, 0.5 V, 3 %]]}
                a.c. volts: {detector: half-wave, coupled: false, input: 1 Mohm, ranges: [[199.9 V, 0.1 V, 1 %, 10]]}
                ohms: {positive: black, stands: 50 V, ranges: [[2 kohm, 0.5 %, 3 %, 3 V, 150 mA]]}
                leads: 0.2 ohm
                sources: [invented]
            """;

    private static PartFiles read(String text) {
        return PartFiles.read(Map.of("meters.yaml", text));
    }

    private static String problems(String old, String fresh) {
        assertThat(TEXT).contains(old);
        return read(TEXT.replace(old, fresh)).problems().stream()
                .map(Problem::toString)
                .collect(Collectors.joining("\n"));
    }

    @Test
    void rowsAreReadByTheirLength() {
        PartFiles files = read(TEXT);

        assertThat(files.problems()).isEmpty();
        MeterModel meter = Objects.requireNonNull(files.library().meters().get("pier meter"));
        assertThat(meter.directVolts().ranges().get(1)).isEqualTo(new MeterModel.Range(50, 0.5, 0, 0.03, 0));
        assertThat(meter.directVolts().input().ohms(50)).isEqualTo(1e6);
        assertThat(meter.alternatingVolts().ranges().get(0)).isEqualTo(new MeterModel.Range(199.9, 0.1, 0.01, 0, 10));
        assertThat(meter.alternating().detector()).isEqualTo(MeterModel.Detector.HALF_WAVE);
        assertThat(meter.ohms().redPositive()).isFalse();
        assertThat(meter.autoRange()).isFalse();
        assertThat(meter.diodeTest()).isNull();
        assertThat(meter.directAmps()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[10 V, 0.1 V, 3 %]|[10 V, 0.1 V]|full scale, last digit",
                "[10 V, 0.1 V, 3 %]|[10 V, 20 V, 3 %]|larger than full scale",
                "[10 V, 0.1 V, 3 %]|[10 V, 0.1 A, 3 %]|0.1 A",
                "per volt: 20 kohm, |''|input resistance is missing",
                "detector: half-wave|detector: halfwave|half-wave",
                "display: analogue|display: analog|analogue",
                "150 mA]]|150 mA, 4]]|150 mA",
                "leads: 0.2 ohm|lead: 0.2 ohm|leads",
                "sources: [invented]|note: none|sources"
            })
    void whatDoesNotFitIsTold(String old, String fresh, String said) {
        assertThat(problems(old, fresh)).contains(said);
    }

    @Test
    void chargedCapacitorsAreAnArrangement() {
        CircuitFile file =
                Sample.read(Sample.with("power off: {power: off", "power off: {power: off, charged: {C1: 8 V}"));

        assertThat(Objects.requireNonNull(file.circuit(), file.problems()::toString)
                        .settings()
                        .get(1)
                        .charged()
                        .get("C1"))
                .isNotNull()
                .satisfies(q -> assertThat(q.si()).isEqualTo(8));
    }

    @Test
    void onlyCapacitorsTakeACharge() {
        assertThat(String.join(
                        "\n",
                        Sample.problemsWith("power off: {power: off", "power off: {power: off, charged: {R1: 8 V}")))
                .contains("'R1' is not a capacitor")
                .contains("C1");
    }
}
