package fusetale.model;

import static fusetale.model.PartsBox.exactly;
import static fusetale.model.PartsBox.fed;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static fusetale.model.PartsBox.unplugged;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import fusetale.circuit.About;
import fusetale.circuit.Armature;
import fusetale.circuit.Copper;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.LampModel;
import fusetale.circuit.Mosfet;
import fusetale.circuit.MosfetModel;
import fusetale.circuit.PartLibrary;
import fusetale.circuit.Relay;
import fusetale.circuit.Thyristor;
import fusetale.circuit.ThyristorModel;
import fusetale.mna.OperatingPoint;
import fusetale.quantity.Unit;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shipped part models, each alone behind a resistor, at points of their data sheets (from memory where nothing else is said). */
class ShippedDevicesTest {
    private static final double SENSE_OHMS = 1e-3;

    private static MosfetModel mosfet(String name) {
        return Objects.requireNonNull(PartLibrary.shipped().mosfets().get(name));
    }

    private static ThyristorModel thyristor(String name) {
        return Objects.requireNonNull(PartLibrary.shipped().thyristors().get(name));
    }

    private static DiodeModel diode(String name) {
        return Objects.requireNonNull(PartLibrary.shipped().diodes().get(name));
    }

    /** Drain current with the gate on its own divider: 1 Mohm each, fed twice the gate voltage. */
    private static double drainAmps(String model, double gateVolts, double drainVolts) {
        double sign = mosfet(model).channel() == MosfetModel.Channel.N ? 1 : -1;
        Modelled m = unplugged(
                new Mosfet("Q1", net("d"), net("g"), net("gnd"), mosfet(model), About.NOTHING),
                resistor("R1", "supply", "d", SENSE_OHMS),
                resistor("R2", "supply", "g", 1000 * Math.max(drainVolts / gateVolts - 1, 1e-9)),
                resistor("R3", "g", "gnd", 1000));
        return sign * fed(m, "supply", sign * drainVolts).amps(m.element("Q1").orElseThrow());
    }

    /** On-resistance in triode, fed so that {@code amps} flow at about {@code gateVolts}: the gate sits at the supply. */
    private static double onOhms(String model, double gateVolts, double amps) {
        double sign = mosfet(model).channel() == MosfetModel.Channel.N ? 1 : -1;
        Modelled m = unplugged(
                new Mosfet("Q1", net("d"), net("supply"), net("gnd"), mosfet(model), About.NOTHING),
                resistor("R1", "supply", "d", gateVolts / amps));
        OperatingPoint p = fed(m, "supply", sign * gateVolts);
        return p.volts(m.node(net("d")), 0) / p.amps(m.element("Q1").orElseThrow());
    }

    /** On-resistance at a gate of 10 V: typical to limit. */
    @ParameterizedTest
    @CsvSource({
        "2N7000, 0.5, 1.2, 5",
        "2N6756, 9, 0.08, 0.18",
        "2N6804, 6, 0.15, 0.30",
        "mosfet-100V-36A-logic, 18, 0.030, 0.044",
        "mosfet-100V-33A, 16, 0.030, 0.044"
    })
    void mosfetHasTheOnResistanceOfItsSheet(String model, double amps, double least, double most) {
        assertThat(onOhms(model, 10, amps)).isBetween(least, most);
    }

    /** Logic-level class: on-resistance at most 53 mohm at a gate of 5 V, 63 mohm at 4 V (from memory). */
    @ParameterizedTest
    @CsvSource({"5, 0.053", "4, 0.063"})
    void logicMosfetIsOnAtTheVoltageOfLogic(double gateVolts, double most) {
        assertThat(onOhms("mosfet-100V-36A-logic", gateVolts, 15)).isBetween(0.030, most);
    }

    /** Trade-number lamps as a meter shows them out of their socket: bands from memory, mains bulbs too. */
    @ParameterizedTest
    @CsvSource({
        "lamp-44, 1.8, 2.5",
        "lamp-47, 3.0, 4.2",
        "lamp-555, 1.8, 2.5",
        "bulb-40W, 24, 36",
        "bulb-60W, 16, 24",
        "bulb-100W, 9.6, 14.4"
    })
    void coldLampShowsWhatItsModelAndTheTradeSay(String model, double least, double most) {
        LampModel lamp =
                Objects.requireNonNull(PartLibrary.shipped().passives().lamps().get(model));
        Modelled m = unplugged(PartsBox.lamp(
                "E1", "supply", "gnd", lamp.volts().si(), lamp.amps().si()));
        double coldOhms =
                1e-3 / Math.abs(fed(m, "supply", 1e-3).amps(m.element("E1").orElseThrow()));

        assertThat(coldOhms).isBetween(least, most).isCloseTo(lamp.coldOhms(), withinPercentage(3));
    }

    /** 2N7000: at least 75 mA at a gate of 4.5 V and a drain of 10 V. */
    @Test
    void smallMosfetCarriesItsOnStateDrainCurrent() {
        assertThat(drainAmps("2N7000", 4.5, 10)).isBetween(0.075, 1.0);
    }

    /** 2N7000: threshold at 1 mA between 0.8 and 3 V. */
    @Test
    void smallMosfetPassesAMilliampereWithinItsThresholds() {
        assertThat(drainAmps("2N7000", 0.8, 3)).isLessThan(1e-3);
        assertThat(drainAmps("2N7000", 3, 3)).isGreaterThan(1e-3);
    }

    /** Transconductance at the sheet's current, ΔI/ΔV over ±50 mV around the gate voltage that gives about that current. */
    @ParameterizedTest
    @CsvSource({"2N7000, 3.9, 10, 0.1, 0.4", "2N6756, 6, 10, 4, 12", "2N6804, 6.2, 10, 3, 9"})
    void mosfetHasTheTransconductanceOfItsSheet(String model, double gate, double drain, double least, double most) {
        double slope = (drainAmps(model, gate + 0.05, drain) - drainAmps(model, gate - 0.05, drain)) / 0.1;

        assertThat(slope).isBetween(least, most);
    }

    private static OperatingPoint fired(Modelled m, double volts) {
        return fed(m, "supply", volts);
    }

    private static Modelled switched(String model, double loadOhms, double gateOhms) {
        return unplugged(
                new Thyristor("Q1", net("a"), net("g"), net("gnd"), thyristor(model), About.NOTHING),
                resistor("R1", "supply", "a", loadOhms),
                resistor("R2", "supply", "g", gateOhms));
    }

    /** On-state voltage: 2N5061 at most 1.7 V at 1.2 A; 2N6395 at most 2.2 V, typically 1.7 V, at 24 A. */
    @ParameterizedTest
    @CsvSource({"2N5061, 1.2, 1.2, 1.7", "2N6395, 24, 1.3, 2.2"})
    void thyristorHasTheOnStateVoltageOfItsSheet(String model, double amps, double least, double most) {
        Modelled m = switched(model, 24 / amps, 200);
        OperatingPoint p = fired(m, 25.7);

        assertThat(p.volts(m.node(net("a")), 0)).isBetween(least, most);
    }

    /** No thyristor may need more than its sheet's gate trigger current: 200 μA with 1 kohm outside, and 30 mA. */
    @ParameterizedTest
    @CsvSource({"2N5061, 11300", "2N6395, 380"})
    void thyristorFiresAtTheMostItsSheetAllows(String model, double gateOhms) {
        Modelled m = switched(model, 100, gateOhms);

        assertThat(fired(m, 12).volts(m.node(net("a")), 0)).isLessThan(2);
    }

    @ParameterizedTest
    @CsvSource({"2N5061, 10e6", "2N6395, 100e3"})
    void thyristorBlocksAtAHundredthOfIt(String model, double gateOhms) {
        Modelled m = switched(model, 100, gateOhms);

        assertThat(fired(m, 12).volts(m.node(net("a")), 0)).isGreaterThan(11.9);
    }

    /**
     * Forward voltage at a current: LEDs by the sheets of their class, 1N4148 at most 1 V at 10 mA and 0.62 to 0.72 V at 5
     * mA (JEDEC registration of the 1N4148 family).
     */
    @ParameterizedTest
    @CsvSource({
        "led-red, 10e-3, 1.55, 1.75",
        "led-red, 20e-3, 1.6, 2.0",
        "led-green, 10e-3, 2.0, 2.2",
        "led-green, 20e-3, 2.1, 2.6",
        "1N4148, 5e-3, 0.62, 0.72",
        "1N4148, 10e-3, 0.65, 1.0"
    })
    void diodeHasTheForwardVoltageOfItsSheet(String model, double amps, double least, double most) {
        Modelled m =
                unplugged(resistor("R1", "supply", "a", 100 / amps), PartsBox.diode("D1", "a", "gnd", diode(model)));

        assertThat(fed(m, "supply", 100).volts(m.node(net("a")), 0)).isBetween(least, most);
    }

    /** Reverse limit 5 V: an LED blocks that, and no more than some volts beyond. */
    @ParameterizedTest
    @CsvSource({"led-red", "led-green"})
    void ledBlocksItsReverseLimitAndBreaksDownSoonAfter(String model) {
        Modelled m = unplugged(resistor("R1", "supply", "k", 10e3), PartsBox.diode("D1", "gnd", "k", diode(model)));

        assertThat(fed(m, "supply", 5).volts(m.node(net("k")), 0)).isCloseTo(5, within(0.01));
        assertThat(fed(m, "supply", 24).volts(m.node(net("k")), 0)).isBetween(5.0, 10.0);
    }

    private static Relay relay(Armature armature, boolean closedAtRest, double ohms) {
        return new Relay(
                "K1",
                new Relay.Ends(net("supply"), net("gnd")),
                new Relay.Ends(net("supply"), net("out")),
                new Relay.Winding(
                        exactly(ohms, Unit.OHM),
                        exactly(0.3, Unit.HENRY),
                        quantity(0.056, Unit.AMPERE),
                        quantity(0.019, Unit.AMPERE),
                        quantity(0.01, Unit.SECOND)),
                quantity(0.05, Unit.OHM),
                closedAtRest,
                armature,
                About.NOTHING);
    }

    private static double out(Relay relay, double volts) {
        Modelled m = unplugged(relay, resistor("R1", "out", "gnd", 1000));
        return fed(m, "supply", volts).volts(m.node(net("out")), 0);
    }

    /** Ohm's law: 160 ohm and 56 mA make 8.96 V; 1 kohm behind 50 mohm loses 0.6 mV of 12 V. */
    @ParameterizedTest
    @CsvSource({"12, 11.9994", "9.5, 9.4995", "8.4, 0", "3, 0"})
    void relayClosesAboveItsPullInVoltage(double volts, double out) {
        assertThat(out(relay(Armature.FOLLOWS, false, 160), volts)).isCloseTo(out, within(1e-4));
    }

    @Test
    void relayWithARestingContactOpensIt() {
        assertThat(out(relay(Armature.FOLLOWS, true, 160), 8.4)).isCloseTo(8.4, within(1e-3));
        assertThat(out(relay(Armature.FOLLOWS, true, 160), 12)).isCloseTo(0, within(1e-3));
    }

    /** Copper at 105 °C has 1.308 times its resistance at 25 °C: pull-in rises from 8.96 V to 11.7 V. */
    @Test
    void hotCoilDoesNotPullInWhereTheColdOneDoes() {
        double hot = 160 * Copper.ratio(25, 105);

        assertThat(out(relay(Armature.FOLLOWS, false, 160), 10)).isGreaterThan(9.9);
        assertThat(out(relay(Armature.FOLLOWS, false, hot), 10)).isLessThan(0.1);
        assertThat(out(relay(Armature.FOLLOWS, false, hot), 12.5)).isGreaterThan(12.4);
    }

    @Test
    void weldedContactStaysClosedAndAStuckOneOpen() {
        assertThat(out(relay(Armature.WELDED, false, 160), 3)).isCloseTo(3, within(1e-3));
        assertThat(out(relay(Armature.STUCK_OPEN, false, 160), 12)).isCloseTo(0, within(1e-3));
    }
}
