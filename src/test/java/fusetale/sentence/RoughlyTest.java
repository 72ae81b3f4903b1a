package fusetale.sentence;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.circuit.Circuit;
import fusetale.desk.Answers;
import fusetale.fault.UnfitSupposition;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults that were concluded, as a repairer says them. */
class RoughlyTest {
    private static final Circuit FIRST_LIGHT = Answers.circuit("first-light");

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "r2 open 631 Mohm|R2 is open",
                "c1 leaky 6.31 kohm|C1 is leaky",
                "br1 leg1 shorted|BR1 leg 1 is shorted",
                "r2 drifted x1.585|R2 has drifted, about × 1.6",
                "c1 dried out 33.3%|C1 is dried out to about 33 % left",
                "j1.1 burnt 2.345 ohm|J1 pin 1 is burnt",
                "c1 high-esr 2.345 ohm|C1 has high ESR, about 2.3 ohm",
                "f1 holds 25 A|F1 holds a 25 A fuse"
            })
    void amountsThatDoNotMatterAreLeftOut(String typed, String said) throws SentenceException, UnfitSupposition {
        assertThat(new SentencePrinter(FIRST_LIGHT).roughly(new SentenceParser(FIRST_LIGHT).parse(List.of(typed))))
                .containsExactly(said);
    }
}
