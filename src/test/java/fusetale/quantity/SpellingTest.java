package fusetale.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The four slips are those of Damerau (1964), section 1, who found them in four of five misspelt words. */
class SpellingTest {
    private static final List<String> WORDS = List.of("leaky", "drifted", "dried-out", "open");

    @ParameterizedTest
    @CsvSource({
        "leahy, leaky", // wrong letter
        "drited, drifted", // missing letter
        "oopen, open", // extra letter
        "laeky, leaky" // two neighbours exchanged
    })
    void findsTheWordBehindOneSlip(String written, String meant) {
        assertThat(Spelling.nearest(written, WORDS)).hasValue(meant);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Dried Out", "DRIED_OUT", " dried-out "})
    void capitalsHyphensAndSpacesAreNoSlips(String written) {
        assertThat(Spelling.nearest(written, WORDS)).hasValue("dried-out");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "transformer", "shorted"})
    void offersNothingWhereNothingIsNear(String written) {
        assertThat(Spelling.nearest(written, WORDS)).isEmpty();
    }

    @Test
    void offersTheFirstOfTwoEquallyNear() {
        assertThat(Spelling.nearest("F203", List.of("F201", "F202"))).hasValue("F201");
    }

    @Test
    void exchangedNeighboursAreOneSlip() {
        assertThat(Spelling.oneSlip("rial5", "rail5")).isTrue();
    }

    @Test
    void twoWrongLettersAreNotOneSlip() {
        assertThat(Spelling.oneSlip("roal5", "rail5")).isFalse();
    }

    @Test
    void longTextIsNotTakenForAMisspeltWord() {
        assertThat(Spelling.nearest("leaky".repeat(20), List.of("leaky".repeat(20))))
                .isEmpty();
    }
}
