package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class DarlingtonLawTest extends PortLawContract {
    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final BipolarLaw FIRST = BipolarLaw.of(BipolarLaw.Polarity.NPN, 2e-13, 80, 1, 100, 3e-11, 125);
    private static final BipolarLaw SECOND = BipolarLaw.of(BipolarLaw.Polarity.NPN, 3e-12, 50, 1, 100, 1.5e-10, 125);
    private static final DarlingtonLaw LAW = new DarlingtonLaw(FIRST, SECOND, 5e-8, 2);

    @Override
    Stream<Case> cases() {
        double[][] volts = {
            {0.6, 0.7, -10},
            {0.65, 0.72, 0.5},
            {0.7, 0.75, -0.1},
            {0, 0, -120},
            {0, 0, -130},
            {0, 0, 0.6},
            {-0.3, -0.2, 0.5}
        };
        return Stream.of(new Case("npn", LAW, List.of(volts)));
    }

    /** Textbook: the gains multiply, β1·β2 + β1 + β2 without Early's effect (Sedra and Smith, 5th ed., §6.11). */
    @Test
    void gainIsThatOfBothTransistors() {
        BipolarLaw one = BipolarLaw.of(BipolarLaw.Polarity.NPN, 2e-13, 80, 1, NEVER, 0, NEVER);
        BipolarLaw two = BipolarLaw.of(BipolarLaw.Polarity.NPN, 3e-12, 50, 1, NEVER, 0, NEVER);
        DarlingtonLaw law = new DarlingtonLaw(one, two, 1e-12, 2);
        // the base of the second takes what the emitter of the first gives
        double me = 0.7;
        double second = 3e-12 * Math.expm1(me / Exponential.THERMAL_VOLTS) / 50;
        double bm = Exponential.THERMAL_VOLTS * Math.log1p(second / (2e-13 * (1 + 1.0 / 80)));

        PortPoint at = at(law, bm, me, -10);

        double base = at.amps[0];
        double middle = at.amps[1] + at.amps[2] - at.amps[0];
        double collector = -at.amps[2];
        assertThat(middle).as("no current left in the middle").isCloseTo(0, within(1e-9 * collector));
        assertThat(collector / base).isCloseTo(80 * 50 + 80 + 50, within(0.5));
    }

    @Test
    void blocksUpToItsBreakdown() {
        assertThat(-at(LAW, 0, 0, -100).amps[2]).isBetween(0.0, 1e-6);
    }

    /** A diode of IS 50 nA and N 2 drops 0.5088 V at 1 mA, by its equation; the transistors are made too small to help. */
    @Test
    void damperConductsFromEmitterToCollector() {
        BipolarLaw tiny = BipolarLaw.of(BipolarLaw.Polarity.NPN, 1e-18, 50, 1, 100, 0, 125);

        assertThat(at(new DarlingtonLaw(tiny, tiny, 5e-8, 2), 0, 0, 0.5088).amps[2])
                .isCloseTo(1e-3, within(2e-6));
    }

    @Test
    void mixedPolaritiesAreRefused() {
        BipolarLaw pnp = BipolarLaw.of(BipolarLaw.Polarity.PNP, 2e-13, 80, 1, 100, 0, 125);

        assertThatThrownBy(() -> new DarlingtonLaw(pnp, SECOND, 5e-8, 2)).hasMessageContaining("polarity");
    }
}
