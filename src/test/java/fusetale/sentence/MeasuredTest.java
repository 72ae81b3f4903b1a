package fusetale.sentence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasuredTest {
    private static final Circuit FERRY = WholeSentenceTest.read("circuits/night-ferry.yaml");
    private static final MeasuredParser PARSER = new MeasuredParser(FERRY);
    private static final Check TAG = new Check("TP4", "gnd", MeterFunction.DC_VOLTS);

    private static Measured read(String typed, @Nullable Check focused) throws SentenceException {
        return PARSER.parse(typed, focused, MeterFunction.DC_VOLTS);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tp2 32.4 dc | TP2 | gnd | DC_VOLTS | 32.4 | TP2 32.4 V d.c. volts",
                "tp2 0,61 ac | TP2 | gnd | AC_VOLTS | 0.61 | TP2 0.61 V a.c. volts",
                "tp2: 610mV ac | TP2 | gnd | AC_VOLTS | 0.61 | TP2 0.61 V a.c. volts",
                "tp2 350m | TP2 | gnd | DC_VOLTS | 0.35 | TP2 0.35 V d.c. volts",
                "tp2 -5,1 | TP2 | gnd | DC_VOLTS | -5.1 | TP2 -5.1 V d.c. volts",
                "tp2=32.4vdc | TP2 | gnd | DC_VOLTS | 32.4 | TP2 32.4 V d.c. volts",
                "tp2 1,234 | TP2 | gnd | DC_VOLTS | 1.234 | TP2 1.234 V d.c. volts",
                "tp10 6.5 ac | TP10 | gi1r | AC_VOLTS | 6.5 | TP10 6.5 V a.c. volts",
                "tp1-tp3 OL ohms | TP1 | TP3 | OHMS | Infinity | TP1 to TP3 OL ohms",
                "tp6 3k3 | TP6 | gnd | OHMS | 3300 | TP6 3.3 kohm",
                "tp6 47k | TP6 | gnd | OHMS | 47000 | TP6 47 kohm",
                "tp6 0R47 | TP6 | gnd | OHMS | 0.47 | TP6 470 mohm",
                "tp6 ohms 47 | TP6 | gnd | OHMS | 47 | TP6 47 ohm",
                "gnd to tp4 0.52 dt | gnd | TP4 | DIODE_TEST | 0.52 | gnd to TP4 0.52 V diode test",
                "br201 ac1 br201 plus 0.5 diode test | BR201.ac1 | BR201.plus | DIODE_TEST | 0.5"
                        + " | BR201.ac1 to BR201.plus 0.5 V diode test",
                "tp4 against tp5 beeps | TP4 | TP5 | CONTINUITY | 0 | TP4 to TP5 beeps",
                "tp4, tp5, silent | TP4 | TP5 | CONTINUITY | Infinity | TP4 to TP5 silent",
                "f201.one f201.two 1,2 A | F201.one | F201.two | DC_AMPS | 1.2 | F201.one to F201.two 1.2 A"
            })
    void readingsAreTypedAsTheyAreRead(
            String typed, String red, String black, MeterFunction function, double value, String text)
            throws SentenceException {
        Measured measured = read(typed, null);

        assertThat(measured.check()).isEqualTo(new Check(red, black, function));
        assertThat(measured.value()).isEqualTo(value);
        assertThat(measured.overRange()).isEqualTo(Double.isInfinite(value));
        assertThat(measured.unit()).isEqualTo(function.unit());
        assertThat(measured.text()).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "32.4 | TP4 32.4 V d.c. volts",
                "0,61 ac | TP4 0.61 V a.c. volts",
                "OL | TP4 OL d.c. volts",
                "3k3 | TP4 3.3 kohm",
                "tp5 45 | TP5 45 V d.c. volts"
            })
    void whatIsMissingIsTakenFromTheTag(String typed, String text) throws SentenceException {
        assertThat(read(typed, TAG).text()).isEqualTo(text);
    }

    @Test
    void theTagsOwnFunctionHolds() throws SentenceException {
        Check tag = new Check("TP4", "gnd", MeterFunction.AC_VOLTS);

        assertThat(read("22.4", tag).check()).isEqualTo(tag);
        assertThat(read("tp5 22.4", tag).check().function()).isEqualTo(MeterFunction.DC_VOLTS);
    }

    @ParameterizedTest
    @EnumSource(MeterFunction.class)
    void whatIsReadIsReadAgainFromItsText(MeterFunction function) throws SentenceException {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            double value = Math.pow(10, random.nextInt(9) - 3) * random.nextInt(4000) / 1000;
            String typed = "tp4 to tp" + (5 + random.nextInt(4)) + " "
                    + (random.nextInt(5) == 0 ? "OL" : Double.toString(value)) + " " + function.words();
            Measured once = read(typed, null);

            for (MeterFunction now : MeterFunction.values()) {
                assertThat(PARSER.parse(once.text(), TAG, now)).as(typed).isEqualTo(once);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tp99 5 | tp99 is not on this board. Near: TP9, TP19, TP28.",
                "tp3 to xx 5 | xx is not on this board. Near: TP1, TP2, TP3.",
                "32.4 | Say where it was read: tp2 32.4 dc.",
                "tp4 | Say what the meter showed: 32.4, 3k3, OL.",
                "tp4 abc | 'abc' is no number with a unit; volts are expected, such as '12 V'",
                "tp4 5 V ohms | '5 V' is in volts; ohms are expected, such as '12 ohm'",
                "tp4 4.7m ohms | '4.7m' can be read in two ways: write '4.7 mohm' for thousandths or '4.7 Mohm'"
            })
    void whatCannotBeReadSaysWhatToChange(String typed, String message) {
        assertThatThrownBy(() -> read(typed, null))
                .isInstanceOf(SentenceException.class)
                .hasMessageStartingWith(message);
    }
}
