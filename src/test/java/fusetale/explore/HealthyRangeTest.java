package fusetale.explore;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fusetale.bench.Check;
import fusetale.bench.Reading;
import fusetale.circuit.MeterFunction;
import org.junit.jupiter.api.Test;

/** The definition: |as supposed − healthy nominal| divided by half of the range's width; figures worked by hand. */
class HealthyRangeTest {
    private static final HealthyRange RANGE = new HealthyRange(40, 48);
    private static final HealthyRange ALWAYS_OVER =
            new HealthyRange(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    @Test
    void movedIsTheDifferenceOverHalfTheWidth() {
        assertThat(RANGE.moved(shows(45), shows(25))).isCloseTo(20 / 4.0, within(1e-12));
    }

    @Test
    void sameReadingHasNotMoved() {
        assertThat(RANGE.moved(shows(45), shows(45))).isZero();
    }

    @Test
    void rangeOfNoWidthCountsWithTheMetersOwnAccuracy() {
        assertThat(new HealthyRange(0, 0).moved(shows(0), shows(0.3))).isCloseTo(3, within(1e-12));
    }

    @Test
    void figureThatBecomesOverRangeMovedMoreThanAnyFigure() {
        assertThat(RANGE.moved(shows(45), over())).isEqualTo(HealthyRange.TO_OR_FROM_OVER_RANGE);
        assertThat(RANGE.moved(shows(45), shows(1e9))).isLessThan(HealthyRange.TO_OR_FROM_OVER_RANGE);
    }

    @Test
    void overRangeThatBecomesAFigureMovedMoreThanAnyFigure() {
        assertThat(ALWAYS_OVER.moved(over(), shows(0.5))).isEqualTo(HealthyRange.TO_OR_FROM_OVER_RANGE);
    }

    @Test
    void overRangeOnBothSidesHasNotMoved() {
        assertThat(ALWAYS_OVER.moved(over(), over())).isZero();
    }

    @Test
    void overRangeThatSomeHealthyMachinesShowHasNotMoved() {
        assertThat(new HealthyRange(40, Double.POSITIVE_INFINITY).moved(shows(45), over()))
                .isZero();
    }

    @Test
    void endsInTheWrongOrderAreRefused() {
        assertThatThrownBy(() -> new HealthyRange(2, 1)).isInstanceOf(IllegalArgumentException.class);
    }

    private static Reading shows(double value) {
        return new Reading(check(), value, false, value + " V", 0.1);
    }

    private static Reading over() {
        return new Reading(check(), Double.POSITIVE_INFINITY, true, "OL", 0);
    }

    private static Check check() {
        return new Check("TP1", "gnd", MeterFunction.DIODE_TEST);
    }
}
