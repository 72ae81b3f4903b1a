package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Parts without junctions that name a part model; keys of the circuit go before the model's. */
class ModelByNameTest {
    private static final String OLD = "R1: {is: resistor, between: [out, gnd], value: 47 ohm, tolerance: ±10 %}";

    private static final String OLD_CAPACITOR = "C1: {is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}";

    private static Part part(String text) {
        return standing(OLD, "R1", text);
    }

    private static Electrolytic electrolytic(String text) {
        return (Electrolytic) standing(OLD_CAPACITOR, "C1", "{is: electrolytic, plus: out, minus: gnd, " + text + "}");
    }

    private static Part standing(String old, String name, String text) {
        CircuitFile read = Sample.read(Sample.with(old, name + ": " + text));
        assertThat(read.problems()).isEmpty();
        return Objects.requireNonNull(read.circuit()).part(name).orElseThrow();
    }

    private static String problem(String text) {
        List<String> problems = Sample.problemsWith(OLD, "R1: " + text);
        assertThat(problems).hasSize(1);
        return problems.get(0);
    }

    @Test
    void lampTakesVoltsAndCurrentFromItsModel() {
        Lamp lamp = (Lamp) part("{is: lamp, between: [out, gnd], model: lamp-47}");

        assertThat(lamp.volts().si()).isEqualTo(6.3);
        assertThat(lamp.amps().si()).isEqualTo(0.15);
    }

    @Test
    void whatStandsInTheCircuitGoesBeforeTheModel() {
        Lamp lamp = (Lamp) part("{is: lamp, between: [out, gnd], model: lamp-47, volts: 5 V, tolerance: ±3 %}");

        assertThat(lamp.volts().si()).isEqualTo(5);
        assertThat(lamp.amps().tolerance().highRatio()).isEqualTo(0.03);
    }

    @Test
    void misspeltModelIsToldWithTheNearest() {
        assertThat(problem("{is: lamp, between: [out, gnd], model: lamp-74}"))
                .contains("R1 model: 'lamp-74' is not among the lamps of the part models; nearest: 'lamp-44'");
    }

    @Test
    void lampWithNeitherModelNorCurrentIsTold() {
        assertThat(problem("{is: lamp, between: [out, gnd], volts: 6 V}"))
                .contains("key 'current' is missing")
                .contains("or the key 'model' in its place");
    }

    @Test
    void coilTakesItsFiguresFromItsModel() {
        Coil coil = (Coil) part("{is: coil, between: [out, gnd], model: coil-light, ohms: 28 ohm}");

        assertThat(coil.ohms().si()).isEqualTo(28);
        assertThat(coil.henries().si()).isEqualTo(0.1);
        assertThat(coil.wound().copperGrams()).isEqualTo(40);
        assertThat(Objects.requireNonNull(coil.holdAmps()).si()).isEqualTo(0.15);
    }

    /** 3·√(12000·63) μA and 0.25/(2π·120·12 mF): 2.61 mA and 27.6 mΩ (makers' rule and loss factor, computed). */
    @Test
    void electrolyticFollowsTheRulesOfItsClass() {
        Electrolytic can = electrolytic("value: 12000 uF, volts: 63 V, model: can-1970s");

        assertThat(can.seriesOhms().si()).isCloseTo(27.6e-3, within(0.05e-3));
        assertThat(63 / can.leakageOhms().si()).isCloseTo(2.61e-3, within(0.01e-3));
        assertThat(can.farads().tolerance().highRatio()).isEqualTo(0.75);
    }

    /** 0.01·47·40 = 18.8 μA (makers' rule for small parts). */
    @Test
    void smallElectrolyticLeaksByCapacitanceTimesVoltage() {
        Electrolytic small = electrolytic("value: 47 uF, volts: 40 V, model: small-radial");

        assertThat(40 / small.leakageOhms().si()).isCloseTo(18.8e-6, within(1e-9));
    }

    @Test
    void smallestElectrolyticLeaksWhatIsAllowedInAnyCase() {
        Electrolytic small = electrolytic("value: 1 uF, volts: 50 V, model: small-radial");

        assertThat(50 / small.leakageOhms().si()).isCloseTo(3e-6, within(1e-12));
    }

    @Test
    void capacitorTakesVoltsAndToleranceFromItsClass() {
        Capacitor capacitor =
                (Capacitor) part("{is: capacitor, between: [out, gnd], value: 100 nF, model: ceramic-disc-50V}");

        assertThat(capacitor.ratedVolts().si()).isEqualTo(50);
        assertThat(capacitor.farads().tolerance().highRatio()).isEqualTo(0.8);
    }

    /** AWG 18: 20.95 Ω/km at 20 °C (ASTM B258, IEC 60028), times 259.5/254.5 at 25 °C. */
    @Test
    void wireHasTheResistanceOfItsLength() {
        Wire wire = (Wire) part("{is: wire, between: [out, gnd], model: wire-18, length: 2 m}");

        assertThat(wire.ohms().si()).isCloseTo(2 * 20.95e-3 * 259.5 / 254.5, within(2e-5));
        assertThat(Objects.requireNonNull(wire.conductor()).shape()).isEqualTo(Conductor.Shape.WIRE);
    }

    @Test
    void wireByModelWithoutLengthIsTold() {
        assertThat(problem("{is: wire, between: [out, gnd], model: wire-18}")).contains("how long it is, is not said");
    }

    @Test
    void wireByGaugeAndAreaIsTold() {
        assertThat(problem("{is: wire, between: [out, gnd], gauge: 18, area: 0.8 mm², length: 1 m}"))
                .contains("gauge and area both tell the cross-section");
    }

    @Test
    void traceBesideALengthIsTold() {
        assertThat(problem("{is: wire, between: [out, gnd], length: 1 m, trace: {width: 1 mm, length: 80 mm}}"))
                .contains("stands beside a trace's size");
    }

    /** 100 mil of 1 oz foil: 19.4 mΩ per 100 mm at 20 °C; 6.38 A at a rise of 20 K (IPC-2221, outer layer; foil 1.378 mil). */
    @Test
    void traceFollowsItsSize() {
        Wire wire = (Wire) part("{is: wire, between: [out, gnd], trace: {width: 2.54 mm, length: 100 mm}}");

        assertThat(wire.ohms().si()).isCloseTo(19.4e-3 * 259.5 / 254.5, within(0.05e-3));
        assertThat(Objects.requireNonNull(wire.ratedAmps()).si()).isCloseTo(6.38, within(0.01));
    }

    @Test
    void fuseTakesItsClipsFromItsHolder() {
        Fuse fuse = (Fuse) part("{is: fuse, between: [out, gnd], rating: 2 A, speed: slow, holder: holder-6.3}");

        assertThat(fuse.clipOhms().si()).isEqualTo(0.006);
        assertThat(Objects.requireNonNull(fuse.holder()).acceptedWatts().si()).isEqualTo(2.5);
    }

    @Test
    void connectorTakesCurrentAndContactsFromItsModel() {
        CircuitFile read = Sample.read(Sample.with(
                "J1: {pins: {1: {board: out, harness: raw}}}",
                "J1: {model: header-3.96-18, pins: {1: {board: out, harness: raw}}}"));
        Connector connector =
                Objects.requireNonNull(read.circuit()).connectors().get(0);

        assertThat(Objects.requireNonNull(connector.ratedAmps()).si()).isEqualTo(7);
        assertThat(connector.pins().get(0).ohms().si()).isEqualTo(0.007);
    }
}
