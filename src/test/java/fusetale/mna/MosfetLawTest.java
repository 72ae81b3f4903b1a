package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Closed forms: A. S. Sedra and K. C. Smith, Microelectronic Circuits, 5th ed., section 4.2. */
class MosfetLawTest extends PortLawContract {
    private static final double K = 0.1;
    private static final MosfetLaw PLAIN =
            new MosfetLaw(MosfetLaw.Channel.N, 2, K, Double.POSITIVE_INFINITY, 1e-12, Double.POSITIVE_INFINITY);
    private static final MosfetLaw N = new MosfetLaw(MosfetLaw.Channel.N, 2, K, 50, 1e-12, 60);
    private static final MosfetLaw P = new MosfetLaw(MosfetLaw.Channel.P, 2, K, 50, 1e-12, 60);

    @Override
    Stream<Case> cases() {
        double[][] n = {
            {0, 12},
            {1.9, 5},
            {3, 0.5},
            {3, 4},
            {10, 0.1},
            {10, -0.3},
            {5, -0.7},
            {0, -0.6},
            {-5, 20},
            {0, 60.5},
            {4, 61}
        };
        double[][] p = {{0, -12}, {-3, -0.5}, {-3, -4}, {-10, 0.3}, {0, 0.6}, {0, -61}};
        return Stream.of(new Case("n", N, List.of(n)), new Case("p", P, List.of(p)));
    }

    @Test
    void belowThresholdOnlyTheBodyDiodeIsLeft() {
        assertThat(at(PLAIN, 1.99, 12).amps[1]).isCloseTo(1e-12, within(1e-15));
    }

    /** i = K·(vgs − VT)². */
    @ParameterizedTest
    @CsvSource({"3, 2, 0.1", "4, 12, 0.4", "7, 5, 2.5"})
    void saturationCurrentIsTheSquareOfTheDrive(double gate, double drain, double amps) {
        assertThat(at(PLAIN, gate, drain).amps[1]).isCloseTo(amps, within(1e-9));
    }

    /** i = K·(2·(vgs − VT)·vds − vds²): 0.1·(2·3·1 − 1). */
    @Test
    void triodeCurrentFollowsItsParabola() {
        assertThat(at(PLAIN, 5, 1).amps[1]).isCloseTo(0.5, within(1e-9));
    }

    /** rDS = 1/(2·K·(vgs − VT)): 0.625 ohm at 10 V. */
    @Test
    void resistanceAtTheOriginFollowsTheDrive() {
        assertThat(1 / at(PLAIN, 10, 0).siemens[3]).isCloseTo(0.625, within(1e-6));
    }

    /** ro = VA/I, I the current that the square law alone gives. */
    @Test
    void outputResistanceIsTheEarlyVoltageOverTheCurrent() {
        assertThat(1 / at(N, 4, 10).siemens[3]).isCloseTo(50 / 0.4, within(1e-6));
    }

    /** gm = 2·√(K·I). */
    @Test
    void transconductanceFollowsTheRootOfTheCurrent() {
        assertThat(at(PLAIN, 4, 10).siemens[2]).isCloseTo(2 * Math.sqrt(K * 0.4), within(1e-9));
    }

    @Test
    void channelConductsBothWays() {
        // vds small against the drive: a resistance, whichever way round
        assertThat(at(PLAIN, 10, -0.01).amps[1]).isCloseTo(-at(PLAIN, 10.01, 0.01).amps[1], within(1e-9));
    }

    /** Body diode: v = N·VT·ln(I/IS), 1.2 × 25.693 mV × ln(0.1/1e-12) = 0.781 V. */
    @Test
    void turnedOffTransistorConductsBackwardsThroughItsBody() {
        assertThat(at(PLAIN, 0, -0.781).amps[1]).isCloseTo(-0.1, within(2e-3));
    }

    @Test
    void breaksDownAtItsStatedVoltage() {
        assertThat(at(N, 0, 60).amps[1]).isCloseTo(250e-6, within(1e-6));
    }

    @Test
    void channelOfTheOtherKindIsTheMirrorImage() {
        assertThat(at(P, -4, -8).amps[1]).isEqualTo(-at(N, 4, 8).amps[1]);
    }

    @Test
    void gateLeaksAndHoldsItsCharge() {
        MosfetLaw law = N.withLinear(1e9, 60e-12, 25e-12);

        assertThat(law.baselineSiemens(0)).isEqualTo(1e-9);
        assertThat(law.farads(0)).isEqualTo(60e-12);
        assertThat(law.farads(1)).isEqualTo(25e-12);
    }

    /**
     * A square-law detector: with the gate at VT + U + A·sin the mean current is K·(U² + A²/2), whatever the drain does as
     * long as it stays in saturation. 0.1·(1 + 0.125) = 112.5 mA, which drops 11.25 V at 100 ohm.
     */
    @Test
    void periodicStateOfADetectorHasTheMeanOfTheSquare() {
        Network.Builder b = Network.builder("gnd");
        b.voltage("V", "supply", "gnd", new SourceShape.Constant(24));
        b.voltage("G", "gate", "gnd", new SourceShape.Sine(3, 0.5, 60, 0));
        b.resistor("R", "supply", "drain", 100);
        b.capacitor("C", "drain", "gnd", 1e-3);
        b.ports("Q", "gate", "gnd", "drain", "gnd", PLAIN.withLinear(1e9, 0, 25e-12));
        Network n = b.build();
        PeriodicState p = Solve.periodic(n);

        assertThat(p.work().method()).isEqualTo("shooting");
        assertThat(p.volts(n.node("drain"), 0).mean()).isCloseTo(24 - 11.25, within(5e-3));
    }

    /** A switch in a coil's lead, its gate on a slow sine: driven through cut-off, saturation and triode and back. */
    @Test
    void switchedCoilRepeatsAndCarriesNoVoltageInTheMean() {
        Network.Builder b = Network.builder("gnd");
        b.voltage("V", "supply", "gnd", new SourceShape.Constant(24));
        b.voltage("G", "gate", "gnd", new SourceShape.Sine(2, 8, 60, 0));
        b.resistor("R", "supply", "coil", 12);
        b.inductor("L", "coil", "drain", 0.02);
        b.port("D", "drain", "supply", JunctionLaw.of(1e-9, 1.8).withLinear(50e-12, 1e-9));
        b.ports("Q", "gate", "gnd", "drain", "gnd", N.withLinear(1e9, 60e-12, 25e-12));
        Network n = b.build();
        PeriodicState p = Solve.periodic(n);

        // an inductance carries no mean voltage in a periodic state
        assertThat(p.work().method()).isEqualTo("shooting");
        assertThat(p.volts(n.node("coil"), n.node("drain")).mean()).isCloseTo(0, within(0.02));
        assertThat(p.volts(n.node("drain"), 0).highest()).isBetween(24.5, 26.0);
        assertThat(p.volts(n.node("drain"), 0).lowest()).isLessThan(1.5);
    }

    /** A source follower settles where K·(V − v − VT)² = v/R: 10 − v − 2 = √(v/(0.1·100)), v = 7.154 V. */
    @Test
    void sourceFollowerRestsOnItsLoadLine() {
        Network.Builder b = Network.builder("gnd");
        b.voltage("V", "supply", "gnd", new SourceShape.Constant(24));
        b.voltage("G", "gate", "gnd", new SourceShape.Constant(10));
        b.resistor("R", "source", "gnd", 100);
        b.ports("Q", "gate", "source", "supply", "source", PLAIN);
        Network n = b.build();

        double volts = Solve.rest(n).volts(n.node("source"), 0);
        double drive = 8 - volts;
        assertThat(K * drive * drive).isCloseTo(volts / 100, within(1e-9));
        assertThat(volts).isCloseTo(7.154, within(1e-3));
    }
}
