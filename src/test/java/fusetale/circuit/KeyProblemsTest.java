package fusetale.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What a repairer is told about keys and values: the whole sentence. */
class KeyProblemsTest {
    private static List<String> told(String old, String fresh) {
        return Sample.problemsWith(old, fresh);
    }

    @Test
    void misspeltKeyIsToldWithTheNearest() {
        assertThat(told("tolerance: ±10 %", "toleranse: ±10 %"))
                .containsExactly("bench.yaml:7: R1: key 'toleranse' is not known here; nearest: 'tolerance'."
                        + " Allowed: is, between, value, tolerance, watts, style, note, mounting.");
    }

    @Test
    void misspeltKeyAtTheTopIsToldAndTheMissingOneToo() {
        assertThat(told("ground: gnd", "gruond: gnd"))
                .containsExactly(
                        "bench.yaml:1: key 'ground' is missing: the net that readings are taken against unless said"
                                + " otherwise.",
                        "bench.yaml:4: key 'gruond' is not known here; nearest: 'ground'. Allowed: format, name, story,"
                                + " mains, ground, include, parts, testpoints, connectors, arrangements, staged start, drawing, sections.");
    }

    @Test
    void misspeltKeyDeepInsideIsToldWithItsPath() {
        assertThat(told("volts: 12 V, ohms: 1 ohm", "volts: 12 V, ohm: 1 ohm"))
                .containsExactly(
                        "bench.yaml:6: T1 windings sec: key 'ohm' is not known here; nearest: 'ohms'."
                                + " Allowed: pins, volts, ohms, amps, copper, class.",
                        "bench.yaml:6: T1 windings sec: key 'ohms' is missing: resistance end to end at 25 °C.");
    }

    @Test
    void unknownKindIsToldWithTheNearest() {
        assertThat(told("is: resistor", "is: resister"))
                .containsExactly("bench.yaml:7: R1: 'resister' is not a kind of part; nearest: 'resistor'. Allowed:"
                        + " transformer, fuse, battery, resistor, wire, capacitor, electrolytic, coil, dual coil,"
                        + " relay, switch, diode, zener, bridge, transistor, darlington, mosfet, thyristor, regulator,"
                        + " op-amp, lamp, logic output, controller.");
    }

    @Test
    void missingKindIsTold() {
        assertThat(told("is: resistor, ", ""))
                .containsExactly("bench.yaml:7: R1: key 'is' is missing: the kind of part. Allowed: transformer, fuse,"
                        + " battery, resistor, wire, capacitor, electrolytic, coil, dual coil, relay, switch, diode,"
                        + " zener, bridge, transistor, darlington, mosfet, thyristor, regulator, op-amp, lamp, logic output,"
                        + " controller.");
    }

    @Test
    void railsWithoutRoomBetweenThemAreTold() {
        assertThat(told(
                        "{is: resistor, between: [out, gnd], value: 47 ohm, tolerance: ±10 %}",
                        "{is: op-amp, plus: out, minus: gnd, out: raw, high rail: -14 V, model: op-amp-fet}"))
                .containsExactly("bench.yaml:7: R1 high rail: the rails leave the output no room."
                        + " Allowed: a voltage further above 'low rail'.");
    }

    @Test
    void wrongUnitIsTold() {
        assertThat(told("value: 47 ohm", "value: 47 V"))
                .containsExactly("bench.yaml:7: R1 value: '47 V' is in volts; ohms are expected, such as '12 ohm'."
                        + " Allowed: a resistance such as 4k7, 0R47 or 0.47 ohm, a tolerance may follow: ±10 %.");
    }

    @Test
    void bareNumberIsTold() {
        assertThat(told("value: 47 ohm", "value: 47"))
                .containsExactly("bench.yaml:7: R1 value: '47' has no unit: write '47 ohm' or '47R'."
                        + " Allowed: a resistance such as 4k7, 0R47 or 0.47 ohm, a tolerance may follow: ±10 %.");
    }

    @Test
    void decimalCommaBetweenBracesIsToldForWhatItIs() {
        assertThat(told("volts: 63 V", "volts: 6,3 V"))
                .contains("bench.yaml:8: C1: the comma before '3 V' ends the value; write a decimal point, or quotes"
                        + " around the value.");
    }

    @Test
    void nothingBehindAKeyIsTold() {
        assertThat(told("value: 47 ohm", "value:"))
                .containsExactly("bench.yaml:7: R1 value: nothing stands here. Allowed: a resistance such as 4k7, 0R47"
                        + " or 0.47 ohm, a tolerance may follow: ±10 %.");
    }

    @Test
    void valueOfZeroIsTold() {
        assertThat(told("value: 47 ohm", "value: 0 ohm"))
                .containsExactly("bench.yaml:7: R1 value: '0 ohm' is not above zero. Allowed: a resistance such as 4k7,"
                        + " 0R47 or 0.47 ohm, a tolerance may follow: ±10 %.");
    }

    @Test
    void toleranceSaidTwiceIsTold() {
        assertThat(told("value: 47 ohm", "value: 47 ohm ±5 %"))
                .containsExactly("bench.yaml:7: R1: a tolerance stands both behind 'value' and in 'tolerance'; write it"
                        + " once.");
    }

    @Test
    void wrongNumberOfNetsIsTold() {
        assertThat(told("between: [out, gnd], value: 47", "between: [out], value: 47"))
                .containsExactly("bench.yaml:7: R1 between: the list has 1 entry. Allowed: [a net, ...], 2 in square"
                        + " brackets.");
    }

    @Test
    void oneNetInsteadOfAListIsTold() {
        assertThat(told("between: [out, gnd], value: 47", "between: out, value: 47"))
                .containsExactly("bench.yaml:7: R1 between: 'out' stands where a list belongs. Allowed: [a net, ...], 2"
                        + " in square brackets.");
    }

    @Test
    void netThatIsAMereNumberIsTold() {
        assertThat(told("ground: gnd", "ground: 0"))
                .containsExactly("bench.yaml:4: ground: '0' cannot be a net's name. Allowed: letters, digits, + - and _"
                        + " with a letter among them, such as raw or 5V.");
    }

    @Test
    void partNameWithADotIsTold() {
        assertThat(told("  R1: {is", "  R.1: {is"))
                .contains("bench.yaml:7: parts: 'R.1' cannot be a part's name. Allowed: letters, digits and hyphens, a"
                        + " letter first, such as R204.");
    }

    @Test
    void textInPlaceOfAPartIsTold() {
        assertThat(told("{is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}", "100 nF"))
                .containsExactly("bench.yaml:8: C1: '100 nF' stands where a part is described by keys."
                        + " Allowed: {is: resistor, ...}.");
    }

    @Test
    void unknownModelIsToldWithTheNearest() {
        assertThat(told(
                        "{is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}",
                        "{is: diode, anode: out, cathode: gnd, model: 1N404}"))
                .containsExactly("bench.yaml:8: C1 model: '1N404' is not among the diodes of the part models;"
                        + " nearest: '1N4004'. Allowed: a name from the diodes of the part models.");
    }

    @Test
    void fuseThatNoTableCoversIsTold() {
        assertThat(told(
                        "{is: capacitor, between: [out, gnd], value: 100 nF, volts: 63 V}",
                        "{is: fuse, between: [out, gnd], rating: 400 A, speed: slow}"))
                .containsExactly(
                        "bench.yaml:8: C1 rating: no table gives the cold resistance of a slow 400 A fuse, 6.3x32,"
                                + " UL 248-14. Allowed: the key 'cold' with its resistance, as 25 mohm.");
    }

    @Test
    void duplicateKeyIsToldWithTheFirst() {
        assertThat(told("name: Bench", "name: Bench\nname: Bank"))
                .containsExactly("bench.yaml:3: name: this key stands here a second time; it is already on line 2.");
    }

    @Test
    void duplicatePartIsToldWithTheFirst() {
        assertThat(told("  C1: {is", "  R1: {is"))
                .contains("bench.yaml:8: R1: this key stands here a second time; it is already on line 7.");
    }

    @Test
    void laterFormatIsTold() {
        assertThat(told("format: 1", "format: 2"))
                .containsExactly("bench.yaml:1: format: '2' is not a format this program reads. Allowed: 1.");
    }

    @Test
    void mainsOutsideItsOwnRangeIsTold() {
        assertThat(told("hertz: 60 Hz", "hertz: 60 Hz, range: 220..240 V"))
                .containsExactly("bench.yaml:3: mains range: the nominal voltage lies outside this range."
                        + " Allowed: a range around the nominal voltage.");
    }

    @Test
    void everythingWrongIsToldAtOnce() {
        String spoilt = Sample.with("value: 47 ohm", "value: 47")
                .replace("volts: 63 V", "volts: 63 A")
                .replace("at: out", "at: out, acess: bench top")
                .replace("unplugged: [J1]", "unplugged: [J2]");

        assertThat(Sample.read(spoilt).problems()).extracting(Problem::line).containsExactly(7, 8, 10, 15);
    }
}
