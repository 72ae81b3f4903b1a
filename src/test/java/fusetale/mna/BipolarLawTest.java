package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BipolarLawTest extends PortLawContract {
    private static final double VT = 0.0256926;
    private static final BipolarLaw NPN = BipolarLaw.of(BipolarLaw.Polarity.NPN, 1e-14, 100, 4, 80, 1e-11, 40);
    private static final BipolarLaw PNP = BipolarLaw.of(BipolarLaw.Polarity.PNP, 1e-14, 100, 4, 80, 1e-11, 40);

    @Override
    Stream<Case> cases() {
        double[][] npn = {{0.65, -5}, {0.7, 0.6}, {0.7, 0.69}, {-5, 0.6}, {0, -10}, {0.6, -39.5}, {0, -42}, {0.6, 0.8}};
        double[][] pnp = {{-0.65, 5}, {-0.7, -0.6}, {5, -0.6}, {0, 42}};
        return Stream.of(new Case("npn", NPN, List.of(npn)), new Case("pnp", PNP, List.of(pnp)));
    }

    /** Active region, textbook: IC = IS·exp(vbe/VT)·(1 + vcb/VA), IB = IC0/βF (Sedra and Smith, 5th ed., §5.2). */
    @Test
    void collectorCurrentFollowsTheExponentialAndEarlyVoltage() {
        PortPoint at = at(NPN, 0.65, -8);

        assertThat(-at.amps[1]).isCloseTo(1e-14 * Math.exp(0.65 / VT) * 1.1, within(1e-4 * at.amps[0]));
    }

    @Test
    void baseCurrentIsCollectorCurrentOverGain() {
        PortPoint at = at(NPN, 0.65, 0);

        assertThat(at.amps[0] + at.amps[1]).isCloseTo(-at.amps[1] / 100, within(1e-12));
    }

    /**
     * Saturation voltage of the inner transistor, VT·ln((1/αR + βforced/βR)/(1 − βforced/βF)) (Ebers and Moll 1954; Sedra and
     * Smith, 5th ed., eq. 5.114), VA infinite.
     */
    @Test
    void saturationVoltageFollowsTheForcedGain() {
        double forced = 10;
        double vce = VT * Math.log((1 + 1.0 / 4 + forced / 4) / (1 - forced / 100));
        BipolarLaw law = BipolarLaw.of(BipolarLaw.Polarity.NPN, 1e-14, 100, 4, Double.POSITIVE_INFINITY, 0, 40);

        PortPoint at = at(law, 0.72, 0.72 - vce);

        assertThat(-at.amps[1] / (at.amps[0] + at.amps[1])).isCloseTo(forced, within(0.01));
    }

    @Test
    void pnpIsTheMirrorImage() {
        PortPoint n = at(NPN, 0.65, -8);
        PortPoint p = at(PNP, -0.65, 8);

        assertThat(p.amps).containsExactly(-n.amps[0], -n.amps[1]);
    }

    @Test
    void offTransistorBlocksUpToItsBreakdown() {
        assertThat(-at(NPN, 0, -30).amps[1]).isBetween(0.0, 1e-12);
    }

    @Test
    void beyondBreakdownCollectorCurrentRuns() {
        assertThat(-at(NPN, 0, -44).amps[1]).isGreaterThan(1);
    }

    @Test
    void breakdownDoesNotFlowThroughTheBase() {
        PortPoint at = at(NPN, 0, -44);

        assertThat(at.amps[0] + at.amps[1]).isCloseTo(0, within(1e-9));
    }

    @Test
    void offTransistorHasNoSlope() {
        assertThat(at(NPN, -2, -30).siemens)
                .satisfies(slopes -> assertThat(java.util.Arrays.stream(slopes).allMatch(s -> s == 0))
                        .isTrue());
    }
}
