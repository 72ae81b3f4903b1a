package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.signal.Waveform;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A 12 V relay of the general-purpose class (data sheets, common practice): 160 ohm, must operate at 75 % and release at 10
 * % or more of the rated voltage, operates within 10 ms, contact at most 100 mohm.
 */
class RelayLawTest extends PortLawContract {
    private static final double PULL_IN = 9.0 / 160;
    private static final double DROP_OUT = 3.0 / 160;
    private static final RelayLaw.Coil COIL = new RelayLaw.Coil(160, PULL_IN, DROP_OUT, 8e-3);
    private static final RelayLaw MAKES = new RelayLaw(COIL, new RelayLaw.Contact(0.05, 1e10, false));
    private static final RelayLaw BREAKS = new RelayLaw(COIL, new RelayLaw.Contact(0.05, 1e10, true));

    @Override
    Stream<Case> cases() {
        double[][] volts = {{0, 10}, {12, 0.05}, {-12, 0.05}, {3, -10}, {8, 1}};
        return Stream.of(new Case("makes", MAKES, List.of(volts)), new Case("breaks", BREAKS, List.of(volts)));
    }

    @ParameterizedTest
    @CsvSource({"9, 1, 0.1", "9.1, 0.2, 0.48", "5, 0.1, 0.52", "6, -0.1, 0.5", "-12, 0.1, 0.53"})
    void slopesOfAStepAreDerivatives(double coil, double contact, double start) {
        double step = 1e-3;
        double h = 1e-6;
        PortPoint here = stage(MAKES, step, start, coil, contact);
        PortPoint up = stage(MAKES, step, start, coil + h, contact);
        PortPoint down = stage(MAKES, step, start, coil - h, contact);
        PortPoint more = stage(MAKES, step, start + h, coil, contact);
        PortPoint less = stage(MAKES, step, start - h, coil, contact);

        assertNear(here.siemens[2], (up.amps[1] - down.amps[1]) / (2 * h));
        assertNear(here.endByVolts[0], (up.end[0] - down.end[0]) / (2 * h));
        assertNear(here.endByStart[0], (more.end[0] - less.end[0]) / (2 * h));
        assertNear(here.ampsByStart[1], (more.amps[1] - less.amps[1]) / (2 * h));
    }

    private static void assertNear(double value, double expected) {
        assertThat(value).isCloseTo(expected, within(1e-4 * Math.abs(expected) + 1e-9));
    }

    private static double contactOhms(RelayLaw law, double coilVolts) {
        PortPoint at = at(law, coilVolts, 1);
        return 1 / (at.amps[1] + law.baselineSiemens(1));
    }

    @ParameterizedTest
    @CsvSource({"12, 0.05", "-12, 0.05", "10, 0.05", "8, 1e10", "0, 1e10"})
    void contactClosesAboveThePullInCurrent(double volts, double ohms) {
        assertThat(contactOhms(MAKES, volts)).isCloseTo(ohms, within(1e-6 * ohms));
    }

    @ParameterizedTest
    @CsvSource({"12, 1e10", "8, 0.05"})
    void contactClosedAtRestOpensAboveThePullInCurrent(double volts, double ohms) {
        assertThat(contactOhms(BREAKS, volts)).isCloseTo(ohms, within(1e-4 * ohms));
    }

    @Test
    void coilIsItsResistance() {
        PortPoint at = at(MAKES, 12, 0);

        assertThat(at.amps[0] + MAKES.baselineSiemens(0) * 12).isCloseTo(0.075, within(1e-12));
    }

    /** Coil voltage in steps from {@code start}, each held for long: where the armature ends. */
    private static double held(double start, double volts) {
        double place = start;
        for (int k = 0; k < 2000; k++) {
            place = stage(MAKES, 0.1e-3, place, volts, 0).end[0];
        }
        return place;
    }

    @ParameterizedTest
    @CsvSource({"0, 8, 0", "0, 10, 1", "1, 8, 1", "1, 3.5, 1", "1, 2.5, 0"})
    void betweenDropOutAndPullInItStaysAsItWas(double start, double volts, double ends) {
        assertThat(held(start, volts)).isCloseTo(ends, within(1e-3));
    }

    /** The contact moves, x = ½, one operate time after the current has set in: τ = t/ln 2, closed form. */
    @Test
    void contactMovesAfterTheOperateTime() {
        double place = 0;
        int steps = 800;
        for (int k = 0; k < steps; k++) {
            place = stage(MAKES, 8e-3 / steps, place, 12, 0).end[0];
        }

        assertThat(place).isCloseTo(0.5, within(1e-3));
    }

    /** Coil through its inductance on a contact, lamp load behind the relay's. */
    private static Network lampRelay(SourceShape coilSupply) {
        Network.Builder b = Network.builder("gnd");
        b.voltage("VC", "coil", "gnd", coilSupply);
        b.inductor("L", "coil", "inside", 0.3);
        b.voltage("V", "supply", "gnd", new SourceShape.Sine(0, 17, 60, 0));
        b.resistor("RL", "out", "gnd", 40);
        b.ports("K", "inside", "gnd", "supply", "out", MAKES);
        return b.build();
    }

    /** Current of a coil after a step: V/R·(1 − e^(−t·R/L)) passes pull-in at L/R·ln(1/(1 − 9/12)); then the armature moves. */
    @Test
    void runOfACoilSwitchedOnClosesAfterRiseAndOperateTime() {
        Network n = lampRelay(new SourceShape.Constant(12));
        double rise = 0.3 / 160 * Math.log(4);
        Waveform w = Solve.run(n, PeriodicSettings.mains(60), 0.03).amps("RL");
        double closes = 0;
        double elapsed = 0;
        for (int k = 0; k < w.size() && closes == 0; k++) {
            elapsed += w.weight(k);
            if (Math.abs(w.value(k)) > 0.05) {
                closes = elapsed;
            }
        }

        // the run starts at rest with the coil's current at its steady value, or from nothing
        assertThat(closes).isBetween(0.0, rise + 8e-3 + 2e-3);
    }

    @Test
    void periodicStateWithTheRelayPulledInFeedsItsLoad() {
        PeriodicState p = Solve.periodic(lampRelay(new SourceShape.Constant(12)));

        assertThat(p.work().method()).isEqualTo("shooting");
        assertThat(p.amps("RL").rms()).isCloseTo(17 / Math.sqrt(2) / 40.05, within(1e-3));
    }

    @Test
    void periodicStateWithTheRelayAtRestFeedsNothing() {
        PeriodicState p = Solve.periodic(lampRelay(new SourceShape.Constant(8)));

        assertThat(p.work().method()).isEqualTo("shooting");
        assertThat(p.amps("RL").rms()).isLessThan(1e-8);
    }

    /** Ripple of 30 % on the coil's supply: the mean of 12 V holds it. */
    @Test
    void periodicStateOnARippledSupplyIsFound() {
        PeriodicState p = Solve.periodic(lampRelay(new SourceShape.Sine(12, 3.6, 120, 0)));

        assertThat(p.work().method()).isEqualTo("shooting");
        assertThat(p.amps("RL").rms()).isCloseTo(17 / Math.sqrt(2) / 40.05, within(1e-3));
    }
}
