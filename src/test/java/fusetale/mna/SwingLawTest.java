package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SwingLawTest extends PortLawContract {
    private static final SwingLaw LAW = new SwingLaw(-13.5, 12);

    @Override
    Stream<Case> cases() {
        double[][] volts = {{-20}, {-13.505}, {-13.4}, {0}, {5}, {11.99}, {12.007}, {12.015}, {30}};
        return Stream.of(new Case("-13.5 to 12 V", LAW, List.of(volts)));
    }

    /** Definition of a limiter. */
    @ParameterizedTest
    @ValueSource(doubles = {-13.49, -1, 0, 7, 11.99})
    void nothingFlowsBetweenTheLimits(double volts) {
        assertThat(at(LAW, volts).amps[0]).isZero();
    }

    /** What the class says of itself: 0.1 A gets a node no further than 30 mV past a limit. */
    @Test
    void limitsAreSteep() {
        assertThat(at(LAW, 12.03).amps[0]).isGreaterThanOrEqualTo(0.1);
        assertThat(at(LAW, -13.53).amps[0]).isLessThanOrEqualTo(-0.1);
    }

    /** Straight beyond the corner: slope 10 S through the limit plus the half-width of the corner. */
    @Test
    void beyondTheCornerTheLineIsStraight() {
        assertThat(at(LAW, 13.01).amps[0]).isCloseTo(10, within(1e-9));
    }

    @Test
    void limitsWithoutRoomAreRefused() {
        assertThatThrownBy(() -> new SwingLaw(3, 3))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("room");
    }
}
