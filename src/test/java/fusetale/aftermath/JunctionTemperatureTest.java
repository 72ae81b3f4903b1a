package fusetale.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.CaseStyle;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.Mounting;
import fusetale.circuit.PartLibrary;
import fusetale.circuit.Thermal;
import fusetale.signal.Waveform;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JunctionTemperatureTest {
    private static final PartLibrary PARTS = PartLibrary.shipped();

    private static Thermal thermal(double highest, double junctionToCase, double caseToAir) {
        return new Thermal(CaseStyle.TO_220, highest, junctionToCase, caseToAir, 0.01, 1);
    }

    /** Data sheets of the 2N6045 class: 1.67 and 57 K/W, so that 3 A at 2 V are 10 K to the case and 342 K to the air. */
    @Test
    void drivingTransistorCannotDoWithoutAHeatSink() {
        Thermal sheet = Objects.requireNonNull(PARTS.darlingtons().get("2N6045"))
                .ratings()
                .thermal();
        double watts = 3 * 2.0;

        assertThat(JunctionTemperature.rise(watts, 0, sheet, Mounting.FREE_AIR)).isCloseTo(10, within(0.1));
        assertThat(JunctionTemperature.rise(watts, watts, sheet, Mounting.FREE_AIR))
                .isCloseTo(342, within(1.0));
    }

    /** Data sheet of the LM323 class: 2 K/W, so that 12 V in at 3 A, 21 W, are 42 K from junction to case. */
    @Test
    void regulatorOfThreeAmperesGets42KelvinAboveItsCase() {
        Thermal sheet = Objects.requireNonNull(PARTS.regulators().get("5V-3A"))
                .ratings()
                .thermal();

        assertThat(JunctionTemperature.rise((12 - 5) * 3.0, 0, sheet, Mounting.ON_CHASSIS))
                .isCloseTo(42, within(0.1));
    }

    @Test
    void rangeGoesFromAGoodDayToABadOne() {
        JunctionTemperature.Range range = JunctionTemperature.of(10, 10, thermal(150, 2, 8), Mounting.STANDING_CLEAR);

        assertThat(range.lowCelsius()).isCloseTo(25 + 75, within(1e-9));
        assertThat(range.highCelsius()).isCloseTo(40 + 125, within(1e-9));
    }

    @Test
    void plateTakesHeatAway() {
        Thermal square = thermal(150, 1.4, 18.6);

        assertThat(JunctionTemperature.rise(10, 20, square, Mounting.ON_CHASSIS))
                .isLessThan(JunctionTemperature.rise(10, 20, square, Mounting.STANDING_CLEAR) / 3);
    }

    /**
     * Data sheets: square bridges of 15, 25 and 35 A give their rated current, resistive load, at a case of 55 to 60 °C, the
     * in-line one of 6 A at 100 °C. Their hottest junction must then be below what it stands.
     */
    @ParameterizedTest
    @CsvSource({"bridge-15A, 15, 55", "bridge-25A, 25, 55", "bridge-35A, 35, 60", "bridge-6A, 6, 100"})
    void ratedCurrentAtTheRatedCaseKeepsTheJunctionBelowItsLimit(String model, double amps, double caseCelsius) {
        DiodeModel leg = Objects.requireNonNull(PARTS.bridges().get(model));
        SafeCurrent.Heat heat = SafeCurrent.rectifier(halfSines(), amps * Math.PI / 2, leg);
        Thermal thermal = leg.ratings().thermal();

        double junction = caseCelsius + heat.junctionWatts() * thermal.junctionToCaseKelvinPerWatt();

        assertThat(junction).isBetween(caseCelsius + 5, thermal.highestCelsius());
    }

    private static List<Waveform> halfSines() {
        Waveform first = SafeCurrent.halfSine(false);
        Waveform second = SafeCurrent.halfSine(true);
        return List.of(first, second, second, first);
    }

    /**
     * The model's own table of forward voltages (0.842 V at 1 A, 1.021 V at 10 A): a leg with steady d.c. reaches the limit
     * where (limit − air) = volts · amps · resistance.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.842", "10, 1.021"})
    void safeCurrentIsWhereTheLimitIsReached(double amps, double volts) {
        DiodeModel leg = Objects.requireNonNull(PARTS.bridges().get("bridge-35A"));
        List<Waveform> steady = List.of(Waveform.steady(1));
        double toAir =
                (150 - JunctionTemperature.WARM_CELSIUS) / (1 + JunctionTemperature.STRAY_RATIO) / (amps * volts);

        SafeCurrent safe = SafeCurrent.of(
                load -> SafeCurrent.rectifier(steady, load, leg),
                thermal(150, 0.1 * toAir, 0.9 * toAir),
                Mounting.FREE_AIR,
                Double.POSITIVE_INFINITY);

        assertThat(safe.lowAmps()).isCloseTo(amps, within(0.001 * amps));
        assertThat(safe.highAmps()).isGreaterThan(safe.lowAmps());
    }

    @Test
    void safeCurrentIsNeverMoreThanTheDataSheetAllows() {
        DiodeModel leg = Objects.requireNonNull(PARTS.bridges().get("bridge-35A"));

        SafeCurrent safe = SafeCurrent.of(
                load -> SafeCurrent.rectifier(halfSines(), load * Math.PI / 2, leg),
                thermal(150, 0.01, 0.01),
                Mounting.FREE_AIR,
                35);

        assertThat(safe).isEqualTo(new SafeCurrent(35, 35));
    }
}
