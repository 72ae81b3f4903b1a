package fusetale.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.circuit.FuseLink;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import org.junit.jupiter.api.Test;

class FuseEnduranceTest {
    private static FuseLink slow(FuseLink.Standard standard, double amps) {
        return new FuseLink(
                new Quantity(amps, Unit.AMPERE), FuseLink.Speed.SLOW, standard, "5x20", new Quantity(0.02, Unit.OHM));
    }

    /** IEC 60127-2 sheet 3: a time-lag link stands ten times its rating for 20 ms, 100·In²·0.02 s; shorter, the same I²t. */
    @Test
    void timeLagLinkStandsTheI2tOfItsLastGate() {
        double stands = FuseEndurance.ampsSquaredSeconds(slow(FuseLink.Standard.IEC_60127, 5), 1.0 / 120);

        assertThat(stands).isCloseTo(100 * 25 * 0.020, within(0.01));
    }

    /** Makers' melting I²t of time-lag 5x20 links: 5 A 314 A²s; what it surely stands is less. */
    @Test
    void whatALinkStandsIsBelowTheMeltingI2tThatMakersPrint() {
        assertThat(FuseEndurance.ampsSquaredSeconds(slow(FuseLink.Standard.IEC_60127, 5), 1.0 / 120))
                .isLessThan(314);
    }
}
