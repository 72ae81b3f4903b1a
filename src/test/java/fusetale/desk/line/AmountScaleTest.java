package fusetale.desk.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.desk.Answers;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;
import fusetale.quantity.Unit;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Amounts under a hand. */
class AmountScaleTest {
    @Test
    void farApartEndsStandByTheirLogarithm() {
        AmountScale scale = new AmountScale(new AmountRange(Unit.OHM, 5, 0.1, 10e6));

        assertThat(scale.at(0.5).si()).isCloseTo(1000, within(1e-9));
        assertThat(scale.position(1000)).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void nearEndsStandEvenly() {
        AmountScale scale = new AmountScale(new AmountRange(Unit.RATIO, 0.4, 0.1, 0.9));

        assertThat(scale.at(0.5).si()).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void everyFailureOfTheBoardHasAmountsWithinItsBounds() {
        for (FaultForm form : Catalogue.possible(Answers.circuit("night-ferry"))) {
            AmountRange range = form.amount();
            if (range == null) {
                continue;
            }
            AmountScale scale = new AmountScale(range);
            for (double position : new double[] {-1, 0, 0.123, 0.5, 0.999, 1, 2}) {
                assertThat(range.holds(scale.at(position)))
                        .as("%s at %s: %s", form.target(), position, scale.at(position))
                        .isTrue();
            }
            assertThat(scale.position(Objects.requireNonNull(range).usualSi())).isBetween(0.0, 1.0);
        }
    }
}
