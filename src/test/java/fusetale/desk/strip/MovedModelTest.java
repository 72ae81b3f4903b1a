package fusetale.desk.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.explore.HealthyRange;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The scale by what defines it: in a linear part equal steps, in a logarithmic part equal factors take equal room. */
class MovedModelTest {
    private static final double HAIR = 1e-12;

    @Test
    void upToCantTellEqualStepsTakeEqualRoom() {
        MovedModel scale = MovedModel.upTo(50);

        assertThat(scale.share(0)).isZero();
        assertThat(scale.share(0.5) - scale.share(0.25)).isCloseTo(scale.share(1) - scale.share(0.75), within(HAIR));
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 700, 10_000})
    void beyondItEqualFactorsTakeEqualRoom(double most) {
        MovedModel scale = MovedModel.upTo(most);

        assertThat(scale.share(2) - scale.share(1)).isCloseTo(scale.share(14) - scale.share(7), within(HAIR));
        assertThat(scale.share(1)).isCloseTo(MovedModel.CANT_TELL_RATIO, within(HAIR));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 3, 99, 100, 149, 151, 1000, 1600, 9_999, 10_000})
    void everyFigureStandsWithinTheWidth(double most) {
        MovedModel scale = MovedModel.upTo(most);

        assertThat(scale.share(most)).isBetween(0.0, 1.0);
        assertThat(scale.marks())
                .isNotEmpty()
                .allSatisfy(m -> assertThat(m.share()).isBetween(0.28, 1.0));
        assertThat(scale.marks()).isSortedAccordingTo((a, b) -> Double.compare(a.share(), b.share()));
    }

    @Test
    void aReadingToOrFromOverRangeStandsAtTheMarkOfOl() {
        MovedModel scale = MovedModel.upTo(HealthyRange.TO_OR_FROM_OVER_RANGE);
        List<MovedModel.Mark> marks = scale.marks();
        MovedModel.Mark last = marks.get(marks.size() - 1);

        assertThat(last.text()).isEqualTo("OL");
        assertThat(scale.share(HealthyRange.TO_OR_FROM_OVER_RANGE)).isEqualTo(last.share());
    }

    @Test
    void marksStandWhereTheirFiguresDo() {
        MovedModel scale = MovedModel.upTo(60);

        assertThat(scale.marks()).extracting(MovedModel.Mark::text).containsExactly("3×", "10×", "30×", "100×");
        assertThat(scale.marks().get(1).share()).isCloseTo(scale.share(10), within(HAIR));
    }

    @Test
    void theLinearPartKeepsItsWidthWhateverTheEnd() {
        assertThat(MovedModel.upTo(5).share(0.7))
                .isEqualTo(MovedModel.upTo(5_000).share(0.7));
    }
}
