package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Keys of relay, battery, windings and of the models of MOSFETs and thyristors: what they become, what is refused. */
class DeviceKeysTest {
    private static final String C1 = "{is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}";
    private static final String RELAY = "{is: relay, coil: [out, gnd], contacts: [raw, out], ohms: 160 ohm,"
            + " inductance: 300 mH, pull-in: 56 mA, drop-out: 19 mA";
    private static final String BATTERY = "{is: battery, plus: out, minus: gnd, volts: 12.65 V, ohms: 1 ohm";

    private static Part part(String keys) {
        CircuitFile file = Sample.read(Sample.with(C1, keys));
        return Objects.requireNonNull(file.circuit(), file.problems()::toString)
                .part("C1")
                .orElseThrow();
    }

    private static String problem(String keys) {
        return String.join("\n", Sample.problemsWith(C1, keys));
    }

    @Test
    void relayRestsOpenAndTakesTenMilliseconds() {
        Relay relay = (Relay) part(RELAY + "}");

        assertThat(relay.closedAtRest()).isFalse();
        assertThat(relay.armature()).isEqualTo(Armature.FOLLOWS);
        assertThat(relay.winding().operateSeconds().si()).isEqualTo(0.010);
    }

    @Test
    void relayMayRestClosed() {
        assertThat(((Relay) part(RELAY + ", rests: closed}")).closedAtRest()).isTrue();
    }

    @Test
    void relayThatLetsGoAboveWhatPullsItInIsTold() {
        assertThat(problem((RELAY + "}").replace("19 mA", "60 mA"))).contains("let go of what it has just pulled in");
    }

    /** (234.5 + 100)/(234.5 + 25) = 1.2890 (IEC 60034-1): 8 ohm at 25 °C have 10.31 ohm at 100 °C. */
    @Test
    void warmCoilHasTheResistanceOfItsCopper() {
        Coil coil = (Coil) part("{is: coil, between: [out, gnd], ohms: 8 ohm, inductance: 25 mH, temperature: 100 °C}");

        assertThat(coil.ohms().si()).isCloseTo(10.312, within(1e-3));
    }

    @Test
    void bothWindingsOfADualCoilAreWarm() {
        DualCoil coil = (DualCoil) part("{is: dual coil, between: [out, gnd], power: {ohms: 2 ohm, inductance: 5 mH},"
                + " hold: {ohms: 100 ohm, inductance: 1 H}, temperature: 100 °C}");

        assertThat(coil.powerOhms().si()).isCloseTo(2.578, within(1e-3));
        assertThat(coil.holdOhms().si()).isCloseTo(128.90, within(0.01));
    }

    @Test
    void windingHotterThanSolderIsTold() {
        assertThat(problem("{is: coil, between: [out, gnd], ohms: 8 ohm, inductance: 25 mH, temperature: 300 °C}"))
                .contains("no winding is as cold or as hot as this");
    }

    /** Half a charge of a 12 V lead-acid battery of 12.65 V: 12.24 V (trade's table). */
    @Test
    void batteryVoltageFollowsItsCharge() {
        Battery battery = (Battery) part(BATTERY + ", cells: lead acid, charge: 50 %}");

        assertThat(battery.volts().si()).isCloseTo(12.24, within(1e-9));
    }

    @Test
    void batteryIsFullUnlessSaidOtherwise() {
        assertThat(((Battery) part(BATTERY + "}")).volts().si()).isCloseTo(12.65, within(1e-12));
    }

    @Test
    void batteryMoreThanFullIsTold() {
        assertThat(problem(BATTERY + ", charge: 120 %}")).contains("never more than full");
    }

    private static final String RATED = " ratings: {power: 1 W}, sources: [from memory]}\n";

    private static String problemOfModel(String yaml) {
        return PartFiles.read(Map.of("models.yaml", "format: 1\n" + yaml))
                .problems()
                .toString();
    }

    @Test
    void thyristorThatLatchesBelowWhatHoldsItIsTold() {
        assertThat(problemOfModel(
                        "thyristors:\n  scr: {gate current: 1 mA, gate voltage: 0.7 V, gate resistance: 10 kohm,"
                                + " latching current: 3 mA, holding current: 5 mA, threshold voltage: 1 V,"
                                + " slope resistance: 0.1 ohm, leakage resistance: 10 Mohm, junction capacitance: 50 pF,"
                                + " breakdown voltage: 100 V, turn-off time: 30 us," + RATED))
                .contains("it would let go where it still holds");
    }

    @Test
    void mosfetWithADrainCurrentBelowItsThresholdIsTold() {
        assertThat(problemOfModel("mosfets:\n  fet: {channel: N, threshold voltage: 3 V, gate voltage: 3 V,"
                        + " drain current: 1 A, early voltage: 50 V, drain resistance: 1 ohm,"
                        + " saturation current: 1 pA, gate leakage: 1 Gohm, gate capacitance: 50 pF,"
                        + " drain capacitance: 20 pF, breakdown voltage: 60 V," + RATED))
                .contains("no drain current flows at this gate voltage");
    }

    /** 0.7 V over 500 ohm are 1.4 mA, more than the 1 mA that should trigger it. */
    @Test
    void thyristorWhoseGateResistanceTakesTheGateCurrentIsTold() {
        assertThat(problemOfModel(
                        "thyristors:\n  scr: {gate current: 1 mA, gate voltage: 0.7 V, gate resistance: 500 ohm,"
                                + " latching current: 5 mA, holding current: 3 mA, threshold voltage: 1 V,"
                                + " slope resistance: 0.1 ohm, leakage resistance: 10 Mohm, junction capacitance: 50 pF,"
                                + " breakdown voltage: 100 V, turn-off time: 30 us," + RATED))
                .contains("it would take the whole gate current")
                .contains("700 Ω");
    }
}
