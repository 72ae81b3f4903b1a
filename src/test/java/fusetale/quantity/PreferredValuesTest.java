package fusetale.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Series after IEC 60063:2015, as printed in parts handbooks (from memory, E12 to E96 as in every resistor catalogue). */
class PreferredValuesTest {
    @Test
    void e3IsEveryEighthOfE24() {
        assertThat(hundredths(PreferredValues.E3)).containsExactly(100, 220, 470);
    }

    @Test
    void e12IsAsPrintedInTheStandard() {
        assertThat(hundredths(PreferredValues.E12))
                .containsExactly(100, 120, 150, 180, 220, 270, 330, 390, 470, 560, 680, 820);
    }

    @Test
    void e24AddsTwelveValuesToE12() {
        List<Integer> added = hundredths(PreferredValues.E24);
        added.removeAll(hundredths(PreferredValues.E12));

        assertThat(added).containsExactly(110, 130, 160, 200, 240, 300, 360, 430, 510, 620, 750, 910);
    }

    @Test
    void eightValuesOfE24LieBesideTheGeometricRule() {
        List<Integer> beside = IntStream.range(0, 24)
                .filter(i -> Math.round(10 * Math.pow(10, i / 24.0)) * 10
                        != hundredths(PreferredValues.E24).get(i))
                .mapToObj(i -> hundredths(PreferredValues.E24).get(i))
                .toList();

        assertThat(beside).containsExactly(270, 300, 330, 360, 390, 430, 470, 820);
    }

    @Test
    void e96BeginsAsInEveryCatalogue() {
        assertThat(hundredths(PreferredValues.E96)).hasSize(96).startsWith(100, 102, 105, 107, 110, 113, 115, 118, 121);
    }

    @Test
    void e96EndsAsInEveryCatalogue() {
        assertThat(hundredths(PreferredValues.E96)).endsWith(909, 931, 953, 976);
    }

    @Test
    void e48IsEverySecondOfE96() {
        List<Integer> e96 = hundredths(PreferredValues.E96);

        assertThat(hundredths(PreferredValues.E48))
                .isEqualTo(IntStream.range(0, 48).mapToObj(i -> e96.get(2 * i)).toList());
    }

    @Test
    void e192Has920WhereTheRuleSays919() {
        assertThat(hundredths(PreferredValues.E192)).hasSize(192).contains(920).doesNotContain(919);
    }

    @ParameterizedTest
    @CsvSource({
        "E12, 5000,   4700",
        "E12, 5200,   5600",
        "E24, 5000,   5100",
        "E12, 9.5,    10",
        "E12, 0.95,   1",
        "E96, 4.7e-6, 4.75e-6",
        "E3,  1e9,    1e9",
        // half-way, the smaller
        "E12, 11,     10"
    })
    void findsTheNearestValue(PreferredValues series, double ohms, double nearest) {
        assertThat(series.nearest(new Quantity(ohms, Unit.OHM))).isEqualTo(new Quantity(nearest, Unit.OHM));
    }

    @ParameterizedTest
    @CsvSource({"E12, 4700, true", "E12, 5100, false", "E24, 5100, true", "E96, 4700, false", "E12, 0.00047, true"})
    void knowsItsOwnValuesInEveryDecade(PreferredValues series, double ohms, boolean member) {
        assertThat(series.contains(new Quantity(ohms, Unit.OHM))).isEqualTo(member);
    }

    @Test
    void nothingIsNearZero() {
        assertThatIllegalArgumentException().isThrownBy(() -> PreferredValues.E12.nearest(new Quantity(0, Unit.OHM)));
    }

    private static List<Integer> hundredths(PreferredValues series) {
        return new ArrayList<>(Arrays.stream(series.decade())
                .mapToObj(value -> (int) Math.round(100 * value))
                .toList());
    }
}
