package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How parts can fail, as typed. */
class ModesJourneyTest {
    private static final String FIRST_LIGHT = "circuits/first-light.yaml";

    @Test
    void failureIsListedWithWhatToTypeItsSentenceItsAmountsAndHowLikely() {
        Typed typed = Typed.in("modes", FIRST_LIGHT, "C1");

        assertThat(typed.code()).isZero();
        assertThat(typed.out())
                .contains("C1 of First Light (electrolytic) can fail in 6 ways")
                .containsPattern("C1=dried-out +40 % +1 % to 99 % +50 of 100 +C1 is dried out")
                .contains("C1=dried-out:40%")
                .contains("To make sure: ")
                .contains("Cautions\n");
    }

    @Test
    void withoutAPartEachHasItsLine() {
        Typed typed = Typed.in("modes", FIRST_LIGHT);

        assertThat(typed.code()).isZero();
        assertThat(typed.out())
                .containsPattern("(?m)^F1 +fuse +blown, missing, wrong-rating, short, loose, burnt$")
                .containsPattern("(?m)^J1 +connector +open, burnt, loose, cracked-joint, swapped, reversed$")
                .containsPattern("(?m)^mains +mains +open, low-line, high-line$");
    }

    @Test
    void placeOfAPartIsListedAlone() {
        assertThat(Typed.in("modes", FIRST_LIGHT, "br1.LEG2").out())
                .contains("BR1.leg2=short")
                .doesNotContain("BR1.leg1=short");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "BR2 | This circuit has no part 'BR2'; nearest: 'BR1'.",
                "mians | This circuit has no part 'mians'; nearest: 'mains'.",
                "BR1.leg5 | BR1 has no place 'leg5'; nearest: 'leg1'. It has: leg1, leg2, leg3, leg4, quarter.",
                "R1.one | R1 has no places, and so no 'one'.",
            })
    void whatIsNotThereIsToldWithTheNearest(String part, String message) {
        Typed typed = Typed.in("modes", FIRST_LIGHT, part);

        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err()).isEqualTo(message + "\n");
    }

    @Test
    void jsonHasTheDocumentedKeysInOrder() throws IOException {
        JsonNode root = new ObjectMapper()
                .readTree(Typed.in("modes", FIRST_LIGHT, "R2", "--json").out());

        assertThat(root.fieldNames()).toIterable().containsExactly("circuit", "parts");
        JsonNode part = root.path("parts").path(0);
        assertThat(part.fieldNames()).toIterable().containsExactly("part", "kind", "modes");
        JsonNode first = part.path("modes").path(0);
        assertThat(first.fieldNames())
                .toIterable()
                .containsExactly(
                        "type",
                        "sentence",
                        "failure",
                        "place",
                        "detail",
                        "amount",
                        "share",
                        "likely",
                        "prior",
                        "source",
                        "happened",
                        "confirm");
        assertThat(first.path("amount").fieldNames()).toIterable().containsExactly("unit", "usual", "low", "high");
        assertThat(first.path("type").asText()).isEqualTo("R2=open");
    }

    @Test
    void jsonWithoutAPartHasThemAll() throws IOException {
        JsonNode root = new ObjectMapper()
                .readTree(Typed.in("modes", FIRST_LIGHT, "--json").out());

        assertThat(root.path("parts").findValuesAsText("part"))
                .isEqualTo(List.of("T1", "F1", "BR1", "C1", "R1", "R2", "E1", "J1", "mains"));
    }

    @Test
    void csvHasALinePerFailureAndAHeading() {
        String[] lines = Typed.in("modes", FIRST_LIGHT, "R2", "--csv").out().split("\r\n");

        assertThat(lines).hasSize(1 + 4);
        assertThat(lines[0]).startsWith("part,kind,type,sentence,failure,place,detail,unit,usual,low,high,share");
    }

    @Test
    void lowMainsAreSupposedLikeAnyOtherFault() {
        Typed typed = Typed.in("suppose", FIRST_LIGHT, "the mains is low, 90 V", "--draws=2");

        assertThat(typed.code()).isZero();
        assertThat(typed.out()).startsWith("Suppose the mains is low, 90 V.").contains("◆  TP1");
    }
}
