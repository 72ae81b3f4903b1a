package fusetale.journeys;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Swaps as typed: another bridge, another mounting, another capacitor, another link. */
class SwapJourneyTest {
    private static final String FIRST_LIGHT = "circuits/first-light.yaml";

    private static JsonNode asked(String swap, String... options) throws IOException {
        List<String> line = new ArrayList<>(List.of("suppose", FIRST_LIGHT, swap, "--json", "--draws", "2"));
        line.addAll(List.of(options));
        Typed typed = Typed.in(line.toArray(String[]::new));
        assertThat(typed.code()).isZero();
        return new ObjectMapper().readTree(typed.out());
    }

    private static JsonNode row(JsonNode answer, String part, String what) {
        for (JsonNode row : answer.path("swaps")) {
            if (row.path("part").asText().equals(part)
                    && row.path("what").asText().equals(what)) {
                return row;
            }
        }
        throw new AssertionError(part + " has no " + what + " in " + answer.path("swaps"));
    }

    @Test
    void bridgeClearOfThePlateIsToldInWordsAndFigures() {
        Typed typed = Typed.in("suppose", FIRST_LIGHT, "BR1=bridge-35A:on-chassis", "--draws", "2");

        assertThat(typed.code()).isZero();
        assertThat(typed.out())
                .contains("Suppose BR1 is a bridge-35A and BR1 sits on the chassis.")
                .contains("What the swap changes")
                .contains("junction temperature")
                .contains("safe d.c. current")
                .contains("The plate takes the heat of BR1 alone");
        assertThat(typed.out().lines()).allMatch(line -> line.codePointCount(0, line.length()) <= 100);
    }

    /**
     * ωCRL is 70 and more here, where Schade's pulses hardly depend on the capacitor any more (Proc. IRE 31, 1943: peak over
     * mean 8.02 at 20, 8.06 at 100); ripple goes as 1/C, and the empty capacitor takes more at switch-on.
     */
    @Test
    void largerCapacitorHalvesTheRippleLeavesThePulsesAndSurgesMore() throws IOException {
        JsonNode answer = asked("C1=10000uF");

        assertThat(row(answer, "C1", "peak-to-peak ripple")
                        .path("asSupposed")
                        .path(0)
                        .asDouble())
                .isLessThan(row(answer, "C1", "peak-to-peak ripple")
                                .path("asBuilt")
                                .path(0)
                                .asDouble()
                        / 1.8);
        JsonNode peak = row(answer, "BR1", "peak current");
        double pulse = peak.path("asBuilt").path(0).asDouble();
        assertThat(peak.path("asSupposed").path(0).asDouble()).isCloseTo(pulse, within(0.005 * pulse));
        JsonNode surge = row(answer, "BR1", "surge at switch-on");
        assertThat(surge.path("asSupposed").path(0).asDouble())
                .isGreaterThan(surge.path("asBuilt").path(0).asDouble());
        assertThat(surge.path("rating").asDouble()).isEqualTo(200);
    }

    @Test
    void anotherLinkIsFittedAndItsRatingIsWhatCounts() throws IOException {
        JsonNode answer = asked("F1=1A:quick");

        assertThat(answer.path("supposition").path(0).asText()).isEqualTo("F1=1A:quick");
        assertThat(answer.path("fuses").path(0).path("fitted").path("amps").asDouble())
                .isEqualTo(1);
        assertThat(answer.path("fuses").path(0).path("marked").path("amps").asDouble())
                .isEqualTo(2);
        assertThat(row(answer, "F1", "r.m.s. current").path("rating").asDouble())
                .isEqualTo(1);
    }

    @Test
    void keysOfSwapsComeBehindAllOthers() throws IOException {
        List<String> keys = new ArrayList<>();
        asked("C1=10000uF").fieldNames().forEachRemaining(keys::add);

        assertThat(keys).endsWith("swaps", "swapNotes");
    }

    @Test
    void aSwapAloneHasASupposedSide() throws IOException {
        JsonNode lamp = asked("F1=5A:slow", "--series-lamp=60").path("seriesLamp");

        assertThat(lamp.path("asBuilt").path("watts").asDouble()).isPositive();
        assertThat(lamp.path("asSupposed").path("watts").asDouble()).isPositive();
    }

    @Test
    void swapThatFitsNothingIsRefusedWithWhatWould() {
        Typed typed = Typed.in("suppose", FIRST_LIGHT, "BR1=1N4007");

        assertThat(typed.code()).isEqualTo(2);
        assertThat(typed.err()).contains("1N4007 is a diode, and BR1 is a bridge. Allowed: bridge-4A");
    }
}
