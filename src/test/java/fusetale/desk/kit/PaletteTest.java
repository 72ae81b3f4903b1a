package fusetale.desk.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Contrast by the formula of WCAG 2.2, "contrast ratio" and "relative luminance"; text 4.5 (1.4.3), marks 3 (1.4.11). */
class PaletteTest {
    private static final double TEXT = 4.5;
    private static final double MARK = 3;

    static Stream<Arguments> texts() {
        return palettes("-fusetale-ink", "-fusetale-soft-ink", "-fusetale-marker-line", "-fusetale-pencil");
    }

    static Stream<Arguments> marks() {
        return palettes("-fusetale-rule", "-fusetale-focus");
    }

    private static Stream<Arguments> palettes(String... colours) {
        return Stream.of(Palette.LIGHT, Palette.DARK)
                .flatMap(p -> Stream.of(colours)
                        .flatMap(c -> Stream.of("-fusetale-desk", "-fusetale-paper", "-fusetale-tag")
                                .map(ground -> Arguments.of(p, c, ground))));
    }

    @ParameterizedTest
    @MethodSource("texts")
    void textCanBeRead(Palette palette, String colour, String ground) {
        assertThat(contrast(palette, colour, ground)).isGreaterThanOrEqualTo(TEXT);
    }

    @ParameterizedTest
    @MethodSource("marks")
    void marksCanBeSeen(Palette palette, String colour, String ground) {
        assertThat(contrast(palette, colour, ground)).isGreaterThanOrEqualTo(MARK);
    }

    static Stream<Palette> both() {
        return Stream.of(Palette.LIGHT, Palette.DARK);
    }

    @ParameterizedTest
    @MethodSource("both")
    void dangerAndTheHighlighterCanBeRead(Palette palette) {
        assertThat(contrast(palette, "-fusetale-danger-text", "-fusetale-danger-ground"))
                .isGreaterThanOrEqualTo(TEXT);
        assertThat(contrast(palette, "-fusetale-ink", "-fusetale-marker-fill")).isGreaterThanOrEqualTo(TEXT);
        assertThat(contrast(palette, "-fusetale-hatch", "-fusetale-hatch-ground"))
                .isGreaterThanOrEqualTo(MARK);
    }

    /** The formula gives 21 for black on white. */
    @ParameterizedTest
    @MethodSource("both")
    void theFormulaIsTheOneOfTheStandard(Palette palette) {
        assertThat((luminance("#FFFFFF") + 0.05) / (luminance("#000000") + 0.05))
                .isBetween(20.99, 21.01);
        assertThat(palette.colours().values()).allMatch(c -> c.matches("#[0-9A-F]{6}"));
    }

    private static double contrast(Palette palette, String one, String two) {
        Map<String, String> colours = palette.colours();
        double a = luminance(Objects.requireNonNull(colours.get(one)));
        double b = luminance(Objects.requireNonNull(colours.get(two)));
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String colour) {
        List<Double> weights = List.of(0.2126, 0.7152, 0.0722);
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            double c = Integer.parseInt(colour.substring(1 + 2 * k, 3 + 2 * k), 16) / 255.0;
            sum += weights.get(k) * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
        }
        return sum;
    }
}
