package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a repairer is told about names that mean nothing and nets that hang in the air. */
class StructureProblemsTest {
    private static List<String> told(String old, String fresh) {
        return Sample.problemsWith(old, fresh);
    }

    @Test
    void sampleHasNoProblems() {
        assertThat(Sample.read(Sample.TEXT).problems()).isEmpty();
    }

    @Test
    void testPointOnNoNetIsToldWithTheNearest() {
        assertThat(told("at: out", "at: outt"))
                .containsExactly("bench.yaml:10: TP1 at: there is no net 'outt'; nearest: 'out'.");
    }

    @Test
    void groundThatNothingTouchesIsTold() {
        assertThat(told("ground: gnd", "ground: gmd"))
                .containsExactly("bench.yaml:4: ground: no part touches the net 'gmd'; nearest: 'gnd'.");
    }

    @Test
    void sectionWithoutGroundIsTold() {
        String floating = Sample.with("[out, gnd], value: 47", "[f1, f2], value: 47")
                .replace("[out, gnd], value: 100", "[f1, f2], value: 100")
                .replace("board: out", "board: raw2")
                .replace("pins: [raw, gnd]", "pins: [raw, raw2, gnd]")
                .replace("at: out", "at: raw");

        assertThat(Sample.read(floating).problems())
                .extracting(Problem::toString)
                .containsExactly("bench.yaml:7: R1: nothing joins this section to ground 'gnd': nets f1, f2 at R1, C1."
                        + " Allowed: a part, or a wire, from one of these nets to the rest.");
    }

    @Test
    void secondaryWithoutGroundFloatsThoughThePrimaryDoesNot() {
        String floating = Sample.with("pins: [raw, gnd]", "pins: [raw, low]")
                .replace("[out, gnd], value: 47", "[out, low], value: 47")
                .replace("[out, gnd], value: 100", "[gnd, neutral], value: 100");

        assertThat(Sample.read(floating).problems())
                .extracting(Problem::toString)
                .containsExactly(
                        "bench.yaml:6: T1: nothing joins this section to ground 'gnd': nets raw, low, out at T1,"
                                + " R1. Allowed: a part, or a wire, from one of these nets to the rest.");
    }

    @Test
    void netOnOnePinOnlyIsAWarning() {
        CircuitFile file = Sample.read(Sample.with("[out, gnd], value: 100", "[oot, gnd], value: 100"));

        assertThat(file.circuit()).isNotNull();
        assertThat(file.problems())
                .extracting(Problem::toString)
                .containsExactly("bench.yaml:8: warning: C1: net oot touches one pin only, C1.one; there is also a net"
                        + " out.");
    }

    @Test
    void partWithAllPinsOnOneNetIsAWarning() {
        assertThat(told("[out, gnd], value: 100", "[out, out], value: 100"))
                .containsExactly("bench.yaml:8: warning: C1: all its pins sit on net out, so it does nothing.");
    }

    @Test
    void primaryThatMissesTheMainsIsToldWhereTheMainsIs() {
        assertThat(told("[line, neutral]", "[live, cold]"))
                .contains("bench.yaml:6: T1: nothing joins this section to ground 'gnd': nets live, cold at T1."
                        + " Allowed: the nets line and neutral, where the mains comes in.");
    }

    @Test
    void connectorThatPartsNothingIsAWarning() {
        assertThat(told("{board: out, harness: raw}", "{board: out, harness: raw}, 2: {board: gnd, harness: gnd}"))
                .containsExactly("bench.yaml:12: warning: J1 pin 2: net gnd stands on both sides, so unplugging parts"
                        + " nothing.");
    }

    @Test
    void holdingOnWhatNothingCommandsIsTold() {
        String lamp = Sample.with(
                        "{is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}",
                        "{is: lamp, between: [out, gnd], volts: 12 V, current: 0.1 A}")
                .replace("power on: {power: on}", "power on: {power: on, held on: [C1]}");

        assertThat(Sample.read(lamp).problems())
                .extracting(Problem::toString)
                .containsExactly("bench.yaml:14: power on held on: no logic output commands 'C1'."
                        + " Allowed: none in this circuit.");
    }

    @Test
    void partWithoutAPlaceOnTheDrawingIsTold() {
        assertThat(told("  C1: {square: [2, 0]}\n", ""))
                .containsExactly("bench.yaml:8: C1: this part has no place on the drawing."
                        + " Allowed: drawing: {C1: {square: [column, row]}}.");
    }

    @Test
    void placeForNoPartIsToldWithTheNearest() {
        assertThat(told("  C1: {square: [2, 0]}", "  C1: {square: [2, 0]}\n  C2: {square: [3, 0]}"))
                .containsExactly("bench.yaml:20: drawing C2: no part has this name; nearest: 'C1'.");
    }

    @Test
    void twoPartsOnOneSquareAreTold() {
        assertThat(told("C1: {square: [2, 0]}", "C1: {square: [1, 0]}"))
                .containsExactly("bench.yaml:19: drawing C1: square [1, 0] is already taken by R1.");
    }

    @Test
    void connectorNamedLikeTheMainsIsTold() {
        assertThat(told("  J1: {pins", "  mains: {pins"))
                .contains("bench.yaml:12: mains: this name means the mains themselves; choose another.");
    }

    @Test
    void testPointNamedLikeAPartIsTold() {
        assertThat(told("  TP1: {at", "  R1: {at"))
                .contains("bench.yaml:10: R1: this name is already taken at bench.yaml:7.");
    }

    @Test
    void testPointNamedLikeANetIsTold() {
        assertThat(told("  TP1: {at", "  raw: {at"))
                .contains("bench.yaml:10: raw: a test point and a net have the same name; rename one of them.");
    }

    @Test
    void unpluggingAConnectorThatIsNotThereIsTold() {
        assertThat(told("unplugged: [J1]", "unplugged: [J11]"))
                .containsExactly("bench.yaml:15: power off unplugged: there is no connector 'J11'; nearest: 'J1'."
                        + " Allowed: J1.");
    }

    @Test
    void pullingAPartThatIsNoFuseIsTold() {
        assertThat(told("power on: {power: on}", "power on: {power: on, pulled: [R1]}"))
                .containsExactly("bench.yaml:14: power on pulled: 'R1' is not a fuse. Allowed: none in this circuit.");
    }

    @Test
    void liftingAPinThatIsNotThereIsToldWithThePinsThereAre() {
        assertThat(told("lifted: [R1.one]", "lifted: [R1.on]"))
                .containsExactly("bench.yaml:15: power off lifted: there is no pin 'R1.on'; nearest: 'R1.one'."
                        + " Allowed: R1.one, R1.two.");
    }

    @Test
    void clippingToAPointThatIsNotThereIsTold() {
        assertThat(told("[[TP1, gnd]]", "[[TP2, gnd]]"))
                .containsExactly("bench.yaml:15: power off clips: there is no point 'TP2'; nearest: 'TP1'."
                        + " Allowed: a test point, a net, PART.pin or CONNECTOR.pin.");
    }

    @Test
    void switchThatIsNotThereIsTold() {
        assertThat(told("power on: {power: on}", "power on: {power: on, switches: {S1: open}}"))
                .containsExactly("bench.yaml:14: power on switches: there is no switch 'S1'."
                        + " Allowed: none in this circuit.");
    }

    /** What somebody types finds either; what hangs on the one does not hang on the other. */
    @Test
    void netsThatDifferInCapitalsOnlyAreTold() {
        assertThat(told("[out, gnd], value: 100", "[out, GND], value: 100"))
                .contains(
                        "bench.yaml:8: C1: net GND at C1.two and net gnd at T1 (bench.yaml:6) differ in capitals only;"
                                + " write both alike, or rename one.");
    }

    @Test
    void aConnectorsPinCanBeLifted() {
        CircuitFile file = Sample.read(Sample.with("lifted: [R1.one]", "lifted: [J1.1]"));

        assertThat(file.problems()).isEmpty();
        assertThat(told("lifted: [R1.one]", "lifted: [J1.2]"))
                .containsExactly("bench.yaml:15: power off lifted: there is no pin 'J1.2'; nearest: 'J1.1'."
                        + " Allowed: J1.1.");
    }

    /** Nothing that the bench refuses gets past the reader: whoever runs a command could not say which line is meant. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "power on, charged: {C1: 8 V} | bench charged: capacitors charge by themselves with the power on; say power: off, or leave this out",
                "power off, charged: {C1: 1200 V} | charged C1: '1200 V' is out of bounds",
                "power on, mains: 1200 V | mains: '1200 V' is out of bounds",
                "power on, series lamp: 20 kW | series lamp: '20 kW' is out of bounds",
                "power on, pulsed: {U1: 2 s} | pulsed U1: '2 s' is out of bounds",
                "power off, pulsed: {U1: 40 ms} | pulsed: nothing drives 'U1' with the power off; say power: on, or leave this out",
                "power on, held on: [U1], pulsed: {U1: 40 ms} | pulsed: 'U1' is held on, and what is on already cannot be pulsed; leave one out",
                "power off, lifted: [R1.one, R1.one] | lifted: 'R1.one' stands here twice; leave one out",
                "power off, clips: [[TP1, R1.one]] | clips: a clip lead from 'TP1' to 'R1.one' joins net out with itself; clip it to another net, or leave it out",
                "power off, lifted: [R1.one], clips: [[R1.one, R1.one]] | clips: a clip lead from 'R1.one' to 'R1.one' joins net out with itself",
                "power off, lifted: [J1.1], clips: [[J1.1, raw]] | clips: a clip lead from 'J1.1' to 'raw' joins net raw with itself"
            })
    void whatCannotBeDoneIsTold(String setting, String told) {
        CircuitFile file = withOutput("{power: " + setting.substring("power ".length()) + "}");

        assertThat(file.circuit()).isNull();
        assertThat(file.problems())
                .extracting(Problem::toString)
                .singleElement()
                .asString()
                .startsWith("bench.yaml:16: ")
                .contains(told);
    }

    /** A clip that holds a lifted pin to the net it came off is a deed: contact by way of the clip. */
    @Test
    void aLiftedPinMayBeClippedBack() {
        assertThat(withOutput("{power: off, lifted: [R1.one], clips: [[R1.one, out]]}")
                        .problems())
                .isEmpty();
    }

    private static CircuitFile withOutput(String setting) {
        String output = "  U1: {is: logic output, out: out, supply: raw, ground: gnd, rests: low}\n";
        String text = Sample.with(
                        "power off: {power: off, unplugged: [J1], lifted: [R1.one], clips: [[TP1, gnd]]}",
                        "bench: " + setting)
                .replace("testpoints:\n", output + "testpoints:\n")
                .replace("  C1: {square: [2, 0]}", "  C1: {square: [2, 0]}\n  U1: {square: [3, 0]}");
        return Sample.read(text);
    }

    @Test
    void aPlungerThatIsHeldWithMoreThanPulledInIsTold() {
        assertThat(told(
                        "{is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}",
                        "{is: coil, between: [out, gnd], ohms: 7 ohm, inductance: 20 mH, pull-in: 1 A, hold: 2 A}"))
                .containsExactly("bench.yaml:8: C1 hold: a plunger needs more current to be pulled in than to be held."
                        + " Allowed: not above 'pull-in'.");
    }

    @Test
    void mainsThatMayComeToMoreThanTheBenchTakesAreTold() {
        assertThat(told("volts: 120 V, hertz", "volts: 950 V, hertz"))
                .contains("bench.yaml:3: mains volts: the mains may come to more than 1000 V."
                        + " Allowed: at most 925 V, or a range up to 1000 V.");
    }

    @Test
    void outputThatCommandsNothingIsTold() {
        assertThat(told(
                        "{is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}",
                        "{is: logic output, out: out, supply: raw, ground: gnd, rests: low, commands: L1}"))
                .containsExactly("bench.yaml:8: C1 commands: there is no coil or lamp 'L1'."
                        + " Allowed: none in this circuit.");
    }
}
