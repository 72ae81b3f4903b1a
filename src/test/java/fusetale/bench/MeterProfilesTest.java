package fusetale.bench;

import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.diode;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.About;
import fusetale.circuit.Battery;
import fusetale.circuit.Circuit;
import fusetale.circuit.Darlington;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.MeterFunction;
import fusetale.circuit.PartLibrary;
import fusetale.quantity.Unit;
import fusetale.signal.Waveform;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeterProfilesTest {
    private static Meter meter(String start) {
        return Meter.builtIn().stream()
                .filter(m -> m.name().startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    private static Meter ranged(String start, double full, Unit unit) {
        return meter(start).withRange(quantity(full, unit)).orElseThrow();
    }

    private static Battery battery(double volts) {
        return new Battery(
                "BT1", net("top"), net("gnd"), quantity(volts, Unit.VOLT), quantity(1e-3, Unit.OHM), About.NOTHING);
    }

    private static Reading on(Meter meter, Circuit circuit, String from, String to, MeterFunction function) {
        return read(meter, circuit, Arrangement.powered(circuit), new Check(from, to, function));
    }

    private static Reading off(Meter meter, Circuit circuit, String from, String to, MeterFunction function) {
        return read(meter, circuit, Arrangement.unpowered(), new Check(from, to, function));
    }

    private static Reading read(Meter meter, Circuit circuit, Arrangement arrangement, Check check) {
        return BridgeSupplyTest.look(circuit, arrangement, meter, List.of(check))
                .readings()
                .get(0);
    }

    private static Circuit divider(double volts, double ohms) {
        return circuit(120, 1, battery(volts), resistor("R1", "top", "mid", ohms), resistor("R2", "mid", "gnd", ohms));
    }

    @Test
    void theMetersAreTheFiveAndTheUsualOneComesFirst() {
        assertThat(Meter.builtIn().stream().map(Meter::name))
                .containsExactly(
                        "true rms 4000-count",
                        "average-responding 3½ digit",
                        "basic 3½ digit",
                        "true rms 4½ digit",
                        "analogue 20 kΩ per V");
        assertThat(Meter.builtIn())
                .allSatisfy(m -> assertThat(m.model().sources()).isNotEmpty());
    }

    /**
     * 20 kohm per volt: 200 kohm on 10 V, so a divider of 100 kohm and 100 kohm across 10 V, 50 kohm seen from its middle, reads
     * 5 V·200/250 = 4.0 V. 10 Mohm takes half a per cent.
     */
    @Test
    void needleLoadsADividerByItsRange() {
        Circuit circuit = divider(10, 100e3);

        assertThat(on(meter("analogue"), circuit, "mid", "gnd", MeterFunction.DC_VOLTS))
                .satisfies(r -> assertThat(r.value()).isCloseTo(4.0, within(0.005)))
                .satisfies(r -> assertThat(r.shows()).isEqualTo("4.0 V"));
        assertThat(on(Meter.trueRms4000(), circuit, "mid", "gnd", MeterFunction.DC_VOLTS)
                        .value())
                .isCloseTo(5 * 10e6 / 10.05e6, within(0.001));
    }

    /**
     * 3 V behind 500 kohm: 200 kohm on 10 V leaves 3·200/700 V, which the next range, 2.5 V and 50 kohm, holds and pulls down to
     * 3·50/550 V, and 0.5 V with 10 kohm to 3·10/510 V. The same by Ohm's law with the range held by hand.
     */
    @ParameterizedTest
    @CsvSource({"10, 0.857143", "2.5, 0.272727", "0.5, 0.058824", "0, 0.058824"})
    void turningDownARangeLoadsMore(double byHand, double volts) {
        Meter meter = byHand > 0 ? ranged("analogue", byHand, Unit.VOLT) : meter("analogue");

        assertThat(on(meter, divider(6, 1e6), "mid", "gnd", MeterFunction.DC_VOLTS)
                        .value())
                .isCloseTo(volts, within(1e-4 * volts + 1e-5));
        assertThat(off(meter, divider(6, 1e6), "mid", "gnd", MeterFunction.DC_VOLTS)
                        .value())
                .isCloseTo(volts, within(1e-4 * volts + 1e-5));
    }

    /** ±3 % of full scale: ±1.5 V on 50 V wherever the needle stands. */
    @Test
    void needleIsAsGoodAsAShareOfFullScale() {
        Meter meter = meter("analogue");
        Check check = new Check("a", "b", MeterFunction.DC_VOLTS);

        assertThat(meter.voltsReading(check, 12).halfWidth()).isCloseTo(1.5, within(1e-9));
        assertThat(meter.voltsReading(check, 45.9).halfWidth()).isCloseTo(1.5, within(1e-9));
        assertThat(meter.voltsReading(check, 45.9).shows()).isEqualTo("46.0 V");
        assertThat(meter.voltsReading(check, 1200).shows()).isEqualTo("off the scale");
    }

    /**
     * A meter with one diode and no blocking capacitor: of a sine its r.m.s. value, of a steady voltage 2.22 times it, and 0 with
     * the leads exchanged; of full-wave pulses of 1 V 2.2214·2/π = 1.4142 V.
     */
    @Test
    void halfWaveDetectorReadsSteadyVoltageByItsPolarity() {
        Meter meter = meter("basic");

        assertThat(meter.volts(MeterFunction.AC_VOLTS, Waveform.steady(10))).isCloseTo(22.2144, within(1e-3));
        assertThat(meter.volts(MeterFunction.AC_VOLTS, Waveform.steady(-10))).isZero();
        assertThat(meter.volts(MeterFunction.AC_VOLTS, sine(false))).isCloseTo(0.70711, within(1e-4));
        assertThat(meter.volts(MeterFunction.AC_VOLTS, sine(true))).isCloseTo(1.41421, within(1e-4));
    }

    /** One with two halves and no blocking capacitor reads a steady voltage as 1.11 times it, whichever way round. */
    @ParameterizedTest
    @ValueSource(doubles = {10, -10})
    void needleOnAlternatingVoltsReadsSteadyVoltageToo(double volts) {
        assertThat(meter("analogue").volts(MeterFunction.AC_VOLTS, Waveform.steady(volts)))
                .isCloseTo(11.1072, within(1e-3));
    }

    private static Waveform sine(boolean rectified) {
        int n = 20_000;
        double[] seconds = new double[n];
        double[] values = new double[n];
        double[] weights = new double[n];
        for (int k = 0; k < n; k++) {
            seconds[k] = (k + 0.5) / n;
            double v = Math.sin(2 * Math.PI * seconds[k]);
            values[k] = rectified ? Math.abs(v) : v;
            weights[k] = 1.0 / n;
        }
        return new Waveform(seconds, values, weights);
    }

    /** 3 V and 20 ohm in the middle of the lowest scale: the range whose middle is nearest, and its marks. */
    @ParameterizedTest
    @CsvSource({"20, 20 Ω", "200, 200 Ω", "470, 470 Ω", "20000, 20 kΩ", "5, 5 Ω", "5e6, ∞"})
    void needleShowsOhmsInTheRangeWhoseMiddleIsNearest(double ohms, String shows) {
        Circuit circuit = circuit(120, 1, resistor("R1", "a", "gnd", ohms));

        assertThat(off(meter("analogue"), circuit, "a", "gnd", MeterFunction.OHMS)
                        .shows())
                .isEqualTo(shows);
    }

    /** 3 % of the arc are 12 % of the reading in the middle: R = (1/d − 1)·Rm, dR/dd = −4·Rm at d = ½. */
    @Test
    void needlesOhmsAreLeastSureOfAllInPerCent() {
        Circuit circuit = circuit(120, 1, resistor("R1", "a", "gnd", 200));
        Reading reading = off(meter("analogue"), circuit, "a", "gnd", MeterFunction.OHMS);

        assertThat(reading.halfWidth() / reading.value()).isCloseTo(0.12, within(0.001));
    }

    /** The black lead of a meter with a needle is the positive one: a diode conducts with black on its anode. */
    @Test
    void needleMeasuresJunctionsTheOtherWayRound() {
        Circuit circuit = circuit(120, 1, diode("D1", "a", "gnd", model("1N4148")));

        assertThat(off(meter("analogue"), circuit, "gnd", "a", MeterFunction.OHMS)
                        .overRange())
                .isFalse();
        assertThat(off(meter("analogue"), circuit, "a", "gnd", MeterFunction.OHMS)
                        .shows())
                .isEqualTo("∞");
        assertThat(off(Meter.trueRms4000(), circuit, "a", "gnd", MeterFunction.DIODE_TEST)
                        .overRange())
                .isFalse();
        assertThat(off(Meter.trueRms4000(), circuit, "gnd", "a", MeterFunction.DIODE_TEST)
                        .shows())
                .isEqualTo("OL");
    }

    /** Full scale below 0.25 to 0.4 V does not turn junctions on: 1 kohm beside a diode reads 1 kohm both ways round. */
    @ParameterizedTest
    @ValueSource(strings = {"average", "basic"})
    void lowPowerOhmsDoNotTurnJunctionsOn(String start) {
        Circuit circuit = circuit(120, 1, diode("D1", "a", "gnd", model("1N4148")), resistor("R1", "a", "gnd", 1000));

        assertThat(off(meter(start), circuit, "a", "gnd", MeterFunction.OHMS).shows())
                .isEqualTo("1.000 kΩ");
        assertThat(off(meter(start), circuit, "gnd", "a", MeterFunction.OHMS).shows())
                .isEqualTo("1.000 kΩ");
        // 3 V turn it on: less than 1 kohm with black on the anode
        assertThat(off(meter("analogue"), circuit, "gnd", "a", MeterFunction.OHMS)
                        .value())
                .isLessThan(200);
    }

    private static DiodeModel model(String name) {
        return Objects.requireNonNull(PartLibrary.shipped().diodes().get(name));
    }

    /** Buzzers sound below 30 to 100 ohm: a coil of 4 ohm and a dead short both beep. */
    @ParameterizedTest
    @CsvSource({
        "true rms 4000, 39, beeps",
        "true rms 4000, 41, silent",
        "basic, 29, beeps",
        "average, 4, beeps",
        "average, 0.02, beeps",
        "average, 71, silent",
        "true rms 4½, 1e6, silent"
    })
    void buzzerSoundsBelowItsThreshold(String start, double ohms, String shows) {
        Circuit circuit = circuit(120, 1, resistor("R1", "a", "gnd", ohms));

        assertThat(off(meter(start), circuit, "a", "gnd", MeterFunction.CONTINUITY)
                        .shows())
                .isEqualTo(shows);
    }

    @Test
    void buzzerOnALiveMachineIsRefusedWithTheReason() throws UnfitArrangement {
        Circuit circuit = circuit(120, 1, resistor("R1", "line", "neutral", 100));
        Bench bench = Bench.of(circuit, Arrangement.powered(circuit), Meter.trueRms4000());

        assertThat(bench.refusal(new Check("line", "neutral", MeterFunction.CONTINUITY)))
                .hasValueSatisfying(r -> assertThat(r).startsWith("continuity: not with the power on"));
    }

    @Test
    void functionThatAMeterDoesNotHaveIsRefused() throws UnfitArrangement {
        Circuit circuit = circuit(120, 1, resistor("R1", "line", "neutral", 100));
        Bench bench = Bench.of(circuit, Arrangement.unpowered(), meter("analogue"));

        assertThat(bench.refusal(new Check("line", "neutral", MeterFunction.DIODE_TEST)))
                .hasValueSatisfying(
                        r -> assertThat(r).contains("has no diode test").contains("ohms"));
    }

    /** I = V/(R + burden + leads): 10 V, 100 ohm; 2 ohm on the lowest range that holds it, 399.9 mA. */
    @Test
    void ammeterTakesItsBurdenFromTheCircuit() {
        Circuit circuit =
                circuit(120, 1, battery(10), resistor("R1", "top", "gap", 100), resistor("R2", "gnd", "far", 1e-3));

        Reading reading = on(Meter.trueRms4000(), circuit, "gap", "far", MeterFunction.DC_AMPS);

        assertThat(reading.value()).isCloseTo(10 / 102.202, within(1e-6));
        assertThat(reading.shows()).isEqualTo("97.8 mA");
        assertThat(on(Meter.trueRms4000(), circuit, "far", "gap", MeterFunction.DC_AMPS)
                        .shows())
                .isEqualTo("-97.8 mA");
    }

    /** The highest range of the meter with a needle is 250 mA: 10 V on 10 ohm is more. */
    @Test
    void tooMuchForAnAmmeterIsSaid() {
        Circuit circuit = circuit(120, 1, battery(10), resistor("R1", "top", "gap", 10));
        Seen seen = BridgeSupplyTest.look(
                circuit,
                Arrangement.powered(circuit),
                meter("analogue"),
                List.of(new Check("gap", "gnd", MeterFunction.DC_AMPS)));

        assertThat(seen.readings().get(0).shows()).isEqualTo("off the scale");
        assertThat(seen.remarks()).anySatisfy(r -> assertThat(r).contains("fuse blows"));
    }

    /** 45.9 V on the 20 V range is OL, on 200 V it is 45.9 V; no meter has a range of 30 V. */
    @Test
    void rangeSetByHandHoldsWhatItHolds() {
        Check check = new Check("a", "b", MeterFunction.DC_VOLTS);

        assertThat(ranged("basic", 20, Unit.VOLT).voltsReading(check, 45.9).shows())
                .isEqualTo("OL");
        assertThat(ranged("basic", 1000, Unit.VOLT).voltsReading(check, 45.9).shows())
                .isEqualTo("46 V");
        assertThat(ranged("basic", 200, Unit.VOLT).words()).isEqualTo("basic 3½ digit, set to 200 V");
        assertThat(meter("basic").withRange(quantity(30, Unit.VOLT))).isEmpty();
    }

    /** 5.00 V on a range of 20.00 V at ±(0.5 % + 2) is ±0.045 V; ±(0.05 % + 3) of a 4½-digit meter ±0.0055 V. */
    @ParameterizedTest
    @CsvSource({"basic, 0.045", "average, 0.045", "true rms 4½, 0.0055"})
    void accuracyFollowsTheSheet(String start, double halfWidth) {
        Check check = new Check("a", "b", MeterFunction.DC_VOLTS);

        assertThat(meter(start).voltsReading(check, 5).halfWidth()).isCloseTo(halfWidth, within(1e-9));
    }

    /**
     * A Darlington with 5 kohm and 150 ohm inside: base to emitter 0.59 V behind the first junction's share on 150 ohm, some 0.74
     * V; base to collector 0.5 to 0.6 V, emitter to collector the diode across; collector to emitter OL, emitter to base OL.
     */
    @ParameterizedTest
    @CsvSource({"b, e, 0.65, 0.85", "b, c, 0.45, 0.65", "e, c, 0.4, 0.6"})
    void darlingtonConductsWhereItShould(String red, String black, double low, double high) {
        assertThat(off(Meter.trueRms4000(), darlington(), red, black, MeterFunction.DIODE_TEST)
                        .value())
                .isBetween(low, high);
    }

    @Test
    void darlingtonBlocksWhereItShouldAndShowsItsResistors() {
        assertThat(off(Meter.trueRms4000(), darlington(), "c", "e", MeterFunction.DIODE_TEST)
                        .shows())
                .isEqualTo("OL");
        assertThat(off(Meter.trueRms4000(), darlington(), "e", "b", MeterFunction.DIODE_TEST)
                        .overRange())
                .isTrue();
        // ohms of the two base-emitter resistors in series, of this model's values
        var model = Objects.requireNonNull(PartLibrary.shipped().darlingtons().get("TIP102"));
        assertThat(off(Meter.averageResponding(), darlington(), "e", "b", MeterFunction.OHMS)
                        .value())
                .isCloseTo(model.firstShuntOhms() + model.secondShuntOhms(), within(60.0));
    }

    private static Circuit darlington() {
        var model = Objects.requireNonNull(PartLibrary.shipped().darlingtons().get("TIP102"));
        return circuit(120, 1, new Darlington("Q1", net("c"), net("b"), net("e"), model, About.NOTHING));
    }
}
