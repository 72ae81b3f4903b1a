package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FilamentLawTest extends PortLawContract {
    /** 120 V 60 W. */
    private static final FilamentLaw MAINS = FilamentLaw.rated(120, 0.5, 2600, 0.08);
    /** Trade number 44: 6.3 V 0.25 A. */
    private static final FilamentLaw SMALL = FilamentLaw.rated(6.3, 0.25, 2350, 0.06);

    @Override
    Stream<Case> cases() {
        double[][] volts = {{-130}, {-1}, {0.01}, {0.5}, {6}, {60}, {120}, {400}};
        return Stream.of(new Case("60 W", MAINS, List.of(volts)), new Case("no. 44", SMALL, List.of(volts)));
    }

    private static double steadyAmps(FilamentLaw law, double volts) {
        return at(law, volts).amps[0] + law.baselineSiemens(0) * volts;
    }

    @Test
    void ratedVoltageDrawsRatedCurrent() {
        assertThat(steadyAmps(MAINS, 120)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void ratedVoltageMakesTheStatedTemperature() {
        assertThat(at(MAINS, 120).end[0]).isCloseTo(2600, within(1e-6));
    }

    /** Lamp rerating, I ∝ V^0.55 (Standard Handbook for Electrical Engineers, 11th ed., p. 22-8), from 40 % to 115 %. */
    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.6, 0.8, 0.9, 1.1, 1.15})
    void currentFollowsTheReratingLaw(double ratio) {
        assertThat(steadyAmps(MAINS, 120 * ratio) / 0.5).isCloseTo(Math.pow(ratio, 0.55), within(0.02));
    }

    /** Same source, P ∝ V^1.6 within its rounding (exponents 1.5 to 1.6 are printed). */
    @Test
    void powerFollowsTheReratingLaw() {
        double ratio = 0.9;

        assertThat(steadyAmps(MAINS, 120 * ratio) * ratio / 0.5).isCloseTo(Math.pow(ratio, 1.55), within(0.005));
    }

    /** A lamp for 6.3 V 0.25 A takes 0.220 A at 5 V, one for 0.15 A 0.132 A (rerating law; lamps are made to ±10 %). */
    @ParameterizedTest
    @CsvSource({"0.25, 0.220", "0.15, 0.132"})
    void miniatureLampAtFiveVolts(double ratedAmps, double amps) {
        assertThat(steadyAmps(FilamentLaw.rated(6.3, ratedAmps, 2350, 0.06), 5)).isCloseTo(amps, within(0.01 * amps));
    }

    /** Common practice: cold to hot 1 : 10 to 1 : 14 in miniature lamps, to 1 : 15 in gas-filled ones. */
    @Test
    void coldFilamentHasAboutATwelfthOfItsHotResistance() {
        assertThat(SMALL.ohms(2350) / SMALL.ohms(298.15)).isBetween(10.0, 14.0);
        assertThat(MAINS.ohms(2600) / MAINS.ohms(298.15)).isBetween(10.0, 15.0);
    }

    /** Tungsten, Jones and Langmuir 1927 (from memory): resistivity 5.65 at 300 K, 73.91 microhm cm at 2500 K. */
    @Test
    void resistanceFollowsTungsten() {
        assertThat(MAINS.ohms(2500) / MAINS.ohms(300)).isCloseTo(73.91 / 5.65, within(0.5));
    }

    /** A small step of voltage dies out with the stated time constant: first-order lag, closed form. */
    @Test
    void smallChangesSettleWithTheTimeConstant() {
        double kelvin = 2600;
        double target = MAINS.steadyKelvin(120.12);
        int steps = 1000;
        for (int i = 0; i < steps; i++) {
            kelvin = stage(MAINS, 0.08 / steps, kelvin, 120.12).end[0];
        }

        assertThat((target - kelvin) / (target - 2600)).isCloseTo(Math.exp(-1), within(0.002));
    }

    @ParameterizedTest
    @CsvSource({"120, 2600", "5, 300", "300, 1500", "0, 2000", "1e6, 300", "50, -200"})
    void implicitStageObeysItsEquation(double volts, double start) {
        double step = 1e-3;

        double end = stage(MAINS, step, start, volts).end[0];

        // heat balance with the steady law as the reference: loss = what a steady voltage of that temperature brings in
        double slopeSeconds = (end - start) / step;
        double balancedVolts = balancedVolts(end);
        double net = (volts * volts - balancedVolts) / MAINS.ohms(end);
        double joulesPerKelvin = 0.08 * 60 / 2600 * (3.94 + 1.2);
        assertThat(slopeSeconds * joulesPerKelvin).isCloseTo(net, within(Math.abs(net) * 0.01 + 1e-3));
    }

    /** Square of the voltage whose steady temperature is {@code kelvin}, by halving; 0 and less below room temperature. */
    private static double balancedVolts(double kelvin) {
        double low = 0;
        double high = 1e7;
        for (int i = 0; i < 200; i++) {
            double v = (low + high) / 2;
            if (MAINS.steadyKelvin(v) < kelvin) {
                low = v;
            } else {
                high = v;
            }
        }
        return low * low;
    }

    /** What {@link PortLaw#reachVolts} promises, in a step: here with the baseline at the temperature, as beside a neighbour. */
    @ParameterizedTest
    @CsvSource({
        "120, 2600, 1e-5",
        "120, 2600, 2e-3",
        "20, 900, 1e-4",
        "-60, 2000, 1e-3",
        "1e-7, 298.15, 1e-5",
        "0, 298.15, 1e-4",
        "0.5, 299, 1e-2",
        "170, 2600, 1e-6"
    })
    void withinItsReachTheSlopeOfAStepNoMoreThanDoubles(double volts, double start, double step) {
        PortLaw law = MAINS.near(new double[] {start});
        PortPoint here = stage(law, step, start, volts);
        double reach = law.reachVolts(here, 0);
        double most = 2.0001 * Math.max(PortLaw.NO_SIEMENS, Math.abs(here.siemens[0]));

        assertThat(reach).isPositive();
        for (double part : new double[] {-1, -0.5, 0.5, 1}) {
            double slope = stage(law, step, start, volts + part * reach).siemens[0];
            assertThat(Math.abs(slope)).isLessThanOrEqualTo(most + 1e-15 * law.baselineSiemens(0));
        }
    }

    @ParameterizedTest
    @CsvSource({"120, 2600", "20, 900", "-60, 2000", "0.5, 299"})
    void slopesOfAStepAreDerivatives(double volts, double start) {
        double step = 2e-3;
        double h = 1e-4;
        PortPoint here = stage(MAINS, step, start, volts);
        PortPoint up = stage(MAINS, step, start, volts + h);
        PortPoint down = stage(MAINS, step, start, volts - h);
        PortPoint warmer = stage(MAINS, step, start + h, volts);
        PortPoint cooler = stage(MAINS, step, start - h, volts);

        assertThat(here.siemens[0]).isCloseTo((up.amps[0] - down.amps[0]) / (2 * h), within(1e-7));
        assertThat(here.endByVolts[0]).isCloseTo((up.end[0] - down.end[0]) / (2 * h), within(1e-2));
        assertThat(here.endByStart[0]).isCloseTo((warmer.end[0] - cooler.end[0]) / (2 * h), within(1e-2));
        assertThat(here.ampsByStart[0]).isCloseTo((warmer.amps[0] - cooler.amps[0]) / (2 * h), within(1e-7));
    }

    /**
     * As far from where it was evaluated as the law says, in voltage and temperature together, its tangents give the current to
     * within three billionths of what the rated voltage drives. Reference: the law itself there.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 600", "3, 1700", "6.3, 2350", "-6.3, 2350", "9, 2400"})
    void tangentsHoldAsFarAsTheyAreSaidTo(double volts, double kelvin) {
        double stage = 70e-6;
        PortPoint here = stage(SMALL, stage, kelvin, volts);
        double dv = SMALL.straightVolts(here, 0, SMALL.reachVolts(here, 0));
        double dk = kelvin * SMALL.straightRatio(here, 0);
        double whole = Math.max(6.3, Math.abs(volts)) / SMALL.ohms(kelvin);
        assertThat(dv).isBetween(1e-4, 1.0);
        assertThat(dk).isBetween(1e-4, 1.0);
        for (double side : new double[] {-1, 1}) {
            for (double way : new double[] {-1, 1}) {
                PortPoint there = stage(SMALL, stage, kelvin + way * dk, volts + side * dv);
                double straight = here.amps[0] + here.siemens[0] * side * dv + here.ampsByStart[0] * way * dk;
                assertThat(there.amps[0]).isCloseTo(straight, within(3e-9 * whole));
            }
        }
    }
}
