package fusetale.model;

import static fusetale.model.PartsBox.VT;
import static fusetale.model.PartsBox.circuit;
import static fusetale.model.PartsBox.exactly;
import static fusetale.model.PartsBox.fed;
import static fusetale.model.PartsBox.net;
import static fusetale.model.PartsBox.quantity;
import static fusetale.model.PartsBox.resistor;
import static fusetale.model.PartsBox.wire;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.About;
import fusetale.circuit.Armature;
import fusetale.circuit.Battery;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
import fusetale.circuit.Controller;
import fusetale.circuit.Diode;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.DualCoil;
import fusetale.circuit.EndOfStroke;
import fusetale.circuit.Lamp;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import fusetale.circuit.Regulator;
import fusetale.circuit.RegulatorModel;
import fusetale.circuit.Relay;
import fusetale.circuit.Transformer;
import fusetale.fault.Catalogue;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.mna.OperatingPoint;
import fusetale.mna.PeriodicSettings;
import fusetale.mna.PeriodicState;
import fusetale.mna.Solver;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What failures do to a circuit, beside Ohm's and Kirchhoff's laws in closed form. */
class SupposedFailuresTest {
    private static final Ratings SMALL = new Ratings(0.2, 0.5, 0.1, 100, 0.5, 350, List.of());

    private static Modelled supposed(Circuit healthy, Conditions conditions, Fault fault) throws UnfitSupposition {
        return NetworkBuilder.build(Catalogue.apply(healthy, new Supposition(List.of(fault))), conditions);
    }

    /** The state at rest with a d.c. supply between {@code plus} and ground. */
    private static OperatingPoint rest(double volts, Modelled modelled) {
        return fed(modelled, "plus", volts);
    }

    private static OperatingPoint rest(double volts, Fault fault, Part... parts) throws UnfitSupposition {
        return rest(volts, supposed(circuit(120, 0.1, parts), Conditions.unplugged(), fault));
    }

    private static PeriodicState periodic(Modelled modelled) {
        return new Solver(modelled.network())
                .periodicState(PeriodicSettings.mains(60).withAccuracy(1e-5), null, () -> false)
                .orElse(reason -> {
                    throw new AssertionError(reason);
                });
    }

    private static Fault fault(String part, String place, FailureMode mode, @Nullable Quantity amount) {
        return new Fault(part, place, mode, amount);
    }

    private static double volts(OperatingPoint point, Modelled modelled, String net) {
        return point.volts(modelled.node(net(net)), 0);
    }

    private static double rms(PeriodicState state, Modelled modelled, String one, String two) {
        return state.volts(modelled.node(net(one)), modelled.node(net(two))).rms();
    }

    private static String element(Modelled modelled, String name) {
        return modelled.element(name).orElseThrow();
    }

    /** A heater of 60 ohm behind a house wiring of 0.5 ohm: a divider; the bench is set to 120 V and overruled. */
    @ParameterizedTest
    @CsvSource({"LOW_LINE, 96", "LOW_LINE, 60", "HIGH_LINE, 138", "HIGH_LINE, 240"})
    void mainsGiveWhatIsSupposedWhateverTheBenchIsSetTo(FailureMode mode, double volts) throws UnfitSupposition {
        Circuit healthy = circuit(120, 0.5, resistor("R1", "line", "neutral", 60), wire("W1", "neutral", "gnd", 1));
        Modelled m = supposed(healthy, Conditions.mains(120), fault("mains", "", mode, new Quantity(volts, Unit.VOLT)));

        assertThat(rms(periodic(m), m, "line", "neutral")).isCloseTo(volts * 60 / 60.5, within(1e-3));
    }

    /** 120 V behind 100 Mohm: what the heater sees is I·R. */
    @Test
    void deadMainsLeaveNothing() throws UnfitSupposition {
        Circuit healthy = circuit(120, 0.5, resistor("R1", "line", "neutral", 60), wire("W1", "neutral", "gnd", 1));
        Modelled m = supposed(healthy, Conditions.mains(120), fault("mains", "", FailureMode.OPEN, null));

        assertThat(rms(periodic(m), m, "line", "neutral")).isCloseTo(120 * 60 / 100e6, within(1e-6));
    }

    private static Transformer transformer() {
        return new Transformer(
                "T1",
                new Transformer.Winding(
                        "primary",
                        List.of(net("line"), net("neutral")),
                        quantity(120, Unit.VOLT),
                        exactly(2, Unit.OHM),
                        quantity(200.0 / 120, Unit.AMPERE)),
                List.of(new Transformer.Winding(
                        "sec",
                        List.of(net("gnd"), net("s2")),
                        quantity(28, Unit.VOLT),
                        exactly(0.1, Unit.OHM),
                        quantity(200.0 / 28, Unit.AMPERE))),
                new Transformer.Magnetics(
                        quantity(0.05, Unit.RATIO),
                        quantity(0.1, Unit.AMPERE),
                        quantity(6, Unit.WATT),
                        quantity(0.02, Unit.RATIO)),
                About.NOTHING);
    }

    /** The whole mains voltage stands across the open cut-out: 120 V over 100 Mohm. */
    @Test
    void openCutOutTakesTheMainsVoltageAndLeavesTheRailsNone() throws UnfitSupposition {
        Circuit healthy = circuit(120, 0.3, transformer(), resistor("R1", "s2", "gnd", 20));
        Modelled m = supposed(healthy, Conditions.mains(120), fault("T1", "cutout", FailureMode.OPEN, null));
        PeriodicState state = periodic(m);

        assertThat(state.amps(element(m, "T1.cutout~open")).rms()).isCloseTo(1.2e-6, within(1e-9));
        assertThat(rms(state, m, "s2", "gnd")).isLessThan(1e-3);
    }

    /** Its secondary on ground, the primary's live end leaks 120 V over 100 kohm into it: 1.2 mA (Ohm). */
    @Test
    void leakBetweenPrimaryAndSecondaryCarriesTheMainsOverItsResistance() throws UnfitSupposition {
        Circuit healthy = circuit(120, 0.3, transformer(), resistor("R1", "s2", "gnd", 1000));
        Modelled m = supposed(
                healthy, Conditions.mains(120), fault("T1", "sec", FailureMode.LEAKY, new Quantity(100e3, Unit.OHM)));

        assertThat(periodic(m).amps(element(m, "T1.sec~leaky")).rms()).isCloseTo(1.2e-3, within(3e-6));
    }

    @Test
    void partlyOpenCoilCarriesTheRailOverWhatItMeasures() throws UnfitSupposition {
        Coil coil = new Coil(
                "L1",
                net("plus"),
                net("gnd"),
                exactly(4, Unit.OHM),
                exactly(0.02, Unit.HENRY),
                null,
                null,
                About.NOTHING);
        Modelled m = supposed(
                circuit(120, 0.1, coil),
                Conditions.unplugged(),
                fault("L1", "", FailureMode.PARTLY_OPEN, new Quantity(40, Unit.OHM)));

        assertThat(rest(48, m).amps(element(m, "L1"))).isCloseTo(48.0 / 40, within(1e-9));
    }

    private static DualCoil dualCoil(boolean pulledIn) {
        return new DualCoil(
                "L1",
                net("plus"),
                net("gnd"),
                exactly(3, Unit.OHM),
                exactly(0.01, Unit.HENRY),
                exactly(150, Unit.OHM),
                exactly(0.4, Unit.HENRY),
                EndOfStroke.FOLLOWS,
                pulledIn,
                About.NOTHING);
    }

    /** Held, both windings are in series: 48 V over 3 + 600 ohm. */
    @Test
    void partlyOpenHoldWindingStarvesTheHold() throws UnfitSupposition {
        Modelled m = supposed(
                circuit(120, 0.1, dualCoil(true)),
                Conditions.unplugged(),
                fault("L1", "hold", FailureMode.PARTLY_OPEN, new Quantity(600, Unit.OHM)));

        assertThat(rest(48, m).amps(element(m, "L1"))).isCloseTo(48.0 / 603, within(1e-5));
    }

    /** At rest the switch bridges the hold winding: 48 V over 30 ohm and a contact of 20 mohm. */
    @Test
    void partlyOpenPowerWindingStarvesTheStroke() throws UnfitSupposition {
        Modelled m = supposed(
                circuit(120, 0.1, dualCoil(false)),
                Conditions.unplugged(),
                fault("L1", "power", FailureMode.PARTLY_OPEN, new Quantity(30, Unit.OHM)));

        assertThat(rest(48, m).amps(element(m, "L1"))).isCloseTo(48 / 30.02, within(1e-3));
    }

    /** 24 V over 160 ohm are 150 mA, well above pull-in; over 600 ohm they are 40 mA, below it. */
    @ParameterizedTest
    @CsvSource({"160, 24", "600, 0"})
    void relayWithAPartlyOpenCoilDoesNotPull(double ohms, double loadVolts) throws UnfitSupposition {
        Relay relay = new Relay(
                "K1",
                new Relay.Ends(net("plus"), net("gnd")),
                new Relay.Ends(net("plus"), net("load")),
                new Relay.Winding(
                        exactly(160, Unit.OHM),
                        exactly(0.3, Unit.HENRY),
                        quantity(0.056, Unit.AMPERE),
                        quantity(0.02, Unit.AMPERE),
                        quantity(0.01, Unit.SECOND)),
                quantity(0.05, Unit.OHM),
                false,
                Armature.FOLLOWS,
                About.NOTHING);
        Modelled m = supposed(
                circuit(120, 0.1, relay, resistor("R1", "load", "gnd", 1000)),
                Conditions.unplugged(),
                fault("K1", "coil", FailureMode.PARTLY_OPEN, new Quantity(ohms, Unit.OHM)));

        assertThat(volts(rest(24, m), m, "load")).isCloseTo(loadVolts, within(0.01));
    }

    /** v = k·(n·VT·ln(i/IS + 1) + i·R) with the current that the resistor lets through (Shockley). */
    @ParameterizedTest
    @CsvSource({"1", "1.3", "0.7"})
    void driftedDiodeDropsSoManyTimesItsForwardVoltage(double times) throws UnfitSupposition {
        DiodeModel model = new DiodeModel("signal", 2.5e-9, 1.75, 0.6, 4e-12, 1e12, 100, 1e-4, 10, SMALL);
        Modelled m = supposed(
                circuit(
                        120,
                        0.1,
                        resistor("R1", "plus", "a", 1000),
                        new Diode("D1", net("a"), net("gnd"), model, About.NOTHING)),
                Conditions.unplugged(),
                fault("D1", "", FailureMode.DRIFTED, new Quantity(times, Unit.RATIO)));
        double drop = volts(rest(12, m), m, "a");
        double amps = (12 - drop) / 1000;

        assertThat(drop).isCloseTo(times * (1.75 * VT * Math.log(amps / 2.5e-9 + 1) + 0.6 * amps), within(2e-4));
    }

    /** Pin 1 brings 10 V to 1 kohm, pin 2 half of it to 2 kohm; crossed, each load sees the other's. */
    @Test
    void swappedPinsGiveEachLoadTheOthersVoltage() throws UnfitSupposition {
        Circuit plain = circuit(
                120,
                0.1,
                wire("W1", "plus", "b1", 1e-6),
                resistor("R1", "plus", "b2", 1),
                resistor("R2", "b2", "gnd", 1),
                resistor("R3", "h1", "gnd", 1e6),
                resistor("R4", "h2", "gnd", 2e6));
        Circuit healthy = plain.withConnectors(List.of(new Connector(
                "J1",
                List.of(
                        new Connector.Contact("1", net("b1"), net("h1"), exactly(0.005, Unit.OHM)),
                        new Connector.Contact("2", net("b2"), net("h2"), exactly(0.005, Unit.OHM))),
                null)));
        Modelled m = supposed(healthy, Conditions.unplugged(), fault("J1", "1", FailureMode.SWAPPED, null));
        OperatingPoint point = rest(10, m);

        assertThat(volts(point, m, "h1")).isCloseTo(5, within(1e-4));
        assertThat(volts(point, m, "h2")).isCloseTo(10, within(1e-4));
    }

    /** The parted input sees the divider of what parted it, 100 Mohm, and its own leak, 1 Mohm: a 101st. */
    @Test
    void openCheckInputSeesNextToNothingOfAGoodRail() throws UnfitSupposition {
        Controller controller = new Controller(
                "U1",
                net("plus"),
                net("gnd"),
                quantity(5, Unit.VOLT),
                quantity(0.8, Unit.AMPERE),
                quantity(4.5, Unit.VOLT),
                List.of(new Controller.StartUpCheck(
                        "rail", net("plus"), quantity(4.5, Unit.VOLT), quantity(5.5, Unit.VOLT))),
                About.NOTHING);
        Circuit blind = Catalogue.apply(
                circuit(120, 0.1, controller), new Supposition(List.of(fault("U1", "check1", FailureMode.OPEN, null))));
        Modelled m = NetworkBuilder.build(blind, Conditions.unplugged());
        OperatingPoint point = rest(5, m);
        Controller.StartUpCheck check =
                ((Controller) blind.part("U1").orElseThrow()).checks().get(0);

        assertThat(volts(point, m, check.net().name())).isCloseTo(5.0 / 101, within(1e-4));
        assertThat(volts(point, m, "plus")).isCloseTo(5, within(1e-9));
    }

    @Test
    void regulatorWithLowOutputStillRegulates() throws UnfitSupposition {
        Regulator regulator = new Regulator(
                "U1",
                net("plus"),
                net("out"),
                net("gnd"),
                new RegulatorModel("5V-1A", 5, 0.04, 0.02, 2, 4e-3, 2.2, 1200, SMALL),
                About.NOTHING);
        Fault low = fault("U1", "", FailureMode.WEAK, new Quantity(0.8, Unit.RATIO));
        Modelled m =
                supposed(circuit(120, 0.1, regulator, resistor("R1", "out", "gnd", 10)), Conditions.unplugged(), low);

        // 0.8 × 5 V less 0.4 A in 20 mohm, and 5 V more at the input through 62 dB of rejection move it by millivolts
        assertThat(volts(rest(9, m), m, "out")).isCloseTo(4, within(0.02));
        assertThat(volts(rest(14, m), m, "out")).isCloseTo(4, within(0.02));
    }

    /** What is stamped on a lamp is its current at its rated voltage. */
    @Test
    void wrongBulbTakesTheCurrentThatItIsStampedWith() throws UnfitSupposition {
        Lamp lamp = new Lamp(
                "E1", net("plus"), net("gnd"), quantity(14, Unit.VOLT), exactly(0.2, Unit.AMPERE), 1, About.NOTHING);
        Modelled m = supposed(
                circuit(120, 0.1, lamp),
                Conditions.unplugged(),
                fault("E1", "", FailureMode.WRONG_RATING, new Quantity(0.5, Unit.AMPERE)));

        assertThat(rest(14, m).amps(element(m, "E1"))).isCloseTo(0.5, within(0.005));
    }

    /** The upper half of a divider bridged by 20 mohm: 12 V · 100/(100 + 0.02). */
    @Test
    void solderBridgeTakesAResistorOutOfItsDivider() throws UnfitSupposition {
        OperatingPoint point = rest(
                12,
                fault("R1", "", FailureMode.SHORT, null),
                resistor("R1", "plus", "mid", 100),
                resistor("R2", "mid", "gnd", 100));

        assertThat(point.amps("R2")).isCloseTo(12 / 100.02, within(1e-5));
    }

    /**
     * A dry block of 9 V: 1.2 ohm fresh, 4.2 ohm when 8.8 V are left at rest (f-alpha.net, Physics, Battery, experiments 12 and
     * 13). At a third of its voltage a few milliamperes are too much for it: that is how one is told from a good one.
     */
    @ParameterizedTest
    @CsvSource({"0.978, 1000, 8.74, 8.79", "0.333, 1000, 2.4, 2.8", "0.333, 100, 1.0, 2.0"})
    void aSpentBatteryFallsAwayUnderLoad(double left, double load, double least, double most) throws UnfitSupposition {
        Battery block = new Battery(
                "B1", net("bat"), net("gnd"), quantity(9, Unit.VOLT), quantity(1.2, Unit.OHM), About.NOTHING);
        OperatingPoint point = rest(
                5,
                fault("B1", "", FailureMode.WEAK, new Quantity(left, Unit.RATIO)),
                block,
                resistor("R1", "bat", "gnd", load),
                resistor("R2", "plus", "gnd", 1000));

        assertThat(point.amps("R1") * load).isBetween(least, most);
    }

    /** 3.6 V behind 1 ohm, drained by a crust of 1 kohm (Ohm). */
    @Test
    void leakingBatteryDrainsItselfThroughItsCrust() throws UnfitSupposition {
        Battery battery = new Battery(
                "B1", net("bat"), net("gnd"), quantity(3.6, Unit.VOLT), quantity(1, Unit.OHM), About.NOTHING);
        OperatingPoint point = rest(
                5,
                fault("B1", "", FailureMode.LEAKY, new Quantity(1000, Unit.OHM)),
                battery,
                resistor("R1", "plus", "gnd", 1000));

        assertThat(point.amps("B1~leaky")).isCloseTo(3.6 / 1001, within(1e-6));
    }
}
