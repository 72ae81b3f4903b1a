package fusetale.aftermath;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fusetale.aftermath.ThermalNetwork.Stage;
import fusetale.aftermath.ThermalNetwork.Warmth;
import java.util.List;
import org.junit.jupiter.api.Test;

class ThermalNetworkTest {
    private static final ThermalNetwork PLATE = new ThermalNetwork(
            List.of(new Stage(1.9, 0.0078, false), new Stage(0.4, 14.5, true), new Stage(2.6, 195, true)));

    /** Closed form of one mass: ΔT = P·R·(1 − e^(−t/RC)), 0.632121 and 0.993262 of the end after 1 and 5 constants. */
    @Test
    void aSingleMassWarmsUpByTheExponential() {
        ThermalNetwork body = ThermalNetwork.single(25, 4);
        double constantSeconds = 100;

        assertThat(body.after(body.cool(), constantSeconds, 2, 2).riseKelvin()).isCloseTo(50 * 0.632121, within(1e-4));
        assertThat(body.after(body.cool(), 5 * constantSeconds, 2, 2).riseKelvin())
                .isCloseTo(50 * 0.993262, within(1e-4));
    }

    /** Adiabatic limit, ΔT = P·t/C, of a 60 g solenoid at 48 V and 4 Ω: 576 W over 23.1 J/K is 24.94 K/s. */
    @Test
    void longBeforeItsConstantItOnlyStores() {
        ThermalNetwork copper = ThermalNetwork.single(1e6, 60 * 0.385);

        assertThat(copper.after(copper.cool(), 1, 576, 576).riseKelvin()).isCloseTo(24.94, within(0.01));
    }

    /** Data sheets of the 2N6045 class, plastic Darlingtons in TO-220: 6 W over 1.67 K/W are 10 K from junction to case. */
    @Test
    void inTheEndEveryStageDropsItsShare() {
        ThermalNetwork junction = new ThermalNetwork(List.of(new Stage(1.67, 0.01, false), new Stage(55.33, 2, true)));

        assertThat(junction.settledKelvin(6, 6)).isCloseTo(342, within(0.1));
        assertThat(junction.settledKelvin(6, 6) - junction.settledKelvin(0, 6)).isCloseTo(10.02, within(0.01));
    }

    @Test
    void sharedStagesTakeTheHeatOfAllAndOthersTheirOwn() {
        assertThat(PLATE.settledKelvin(10, 25)).isCloseTo(1.9 * 10 + 3.0 * 25, within(1e-9));
    }

    /** Two steps of half the time are one step: the exponential is exact. */
    @Test
    void stepsMayBeDividedAtWill() {
        Warmth once = PLATE.after(PLATE.cool(), 30, 12, 20);
        Warmth twice = PLATE.after(PLATE.after(PLATE.cool(), 11, 12, 20), 19, 12, 20);

        assertThat(twice.riseKelvin()).isCloseTo(once.riseKelvin(), within(1e-9));
    }

    @Test
    void coolsDownAgain() {
        Warmth hot = PLATE.after(PLATE.cool(), 1e5, 12, 20);

        assertThat(PLATE.after(hot, 1e6, 0, 0).riseKelvin()).isCloseTo(0, within(1e-9));
    }

    @Test
    void refusesAStageWithoutWarmth() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Stage(1, 0, false))
                .withMessageContaining("0.0 J/K");
    }
}
