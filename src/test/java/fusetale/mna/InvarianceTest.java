package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.mna.RandomNetworks.Nature;
import fusetale.signal.Waveform;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What must not matter: names, order, the length called a period, where the search starts. And what must matter in one way
 * only: all impedances times k (C. A. Desoer and E. S. Kuh, Basic Circuit Theory, McGraw-Hill 1969, on normalisation;
 * nonlinear parts with their currents over k obey the same equations).
 */
class InvarianceTest {
    private static final PeriodicSettings SETTINGS = PeriodicSettings.mains(RandomNetworks.HERTZ);
    /** What is left of two searches that end within 9e-7 of full scale each and would go no further than 1e-5. */
    private static final double FOUND_RATIO = 2e-5;
    /** Where steps differ too: the local accuracy asked for, over the few hundred steps in which it matters. */
    private static final double STEPS_RATIO = 5e-4;

    private static final double FLOOR_VOLTS = 1e-4;

    static LongStream supplies() {
        return LongStream.of(3, 5, 6, 7, 8, 9, 11, 12);
    }

    @ParameterizedTest
    @MethodSource("supplies")
    void namesAndOrderDoNotMatterAtRest(long seed) {
        Network n = RandomNetworks.draw(Nature.SUPPLY, seed).network();
        Network other = Renamed.shuffled(n, seed, name -> "x" + name);
        OperatingPoint one = Solve.rest(n);
        OperatingPoint two = Solve.rest(other);

        for (int k = 1; k < n.nodes().size(); k++) {
            int there = other.node("x" + n.nodes().get(k));
            assertThat(two.volts(there, 0))
                    .as(n.nodes().get(k))
                    .isCloseTo(one.volts(k, 0), within(1e-7 + 1e-7 * Math.abs(one.volts(k, 0))));
        }
    }

    @ParameterizedTest
    @MethodSource("supplies")
    void namesAndOrderDoNotMatterInThePeriodicState(long seed) {
        Network n = RandomNetworks.draw(Nature.SUPPLY, seed).network();
        Network other = Renamed.shuffled(n, seed, name -> "x" + name);
        PeriodicState one = Solve.periodic(n);
        PeriodicState two = Solve.periodic(other);

        for (int k = 1; k < n.nodes().size(); k++) {
            same(n.nodes().get(k), two.volts(other.node("x" + n.nodes().get(k)), 0), one.volts(k, 0), FOUND_RATIO);
        }
    }

    @ParameterizedTest
    @MethodSource("supplies")
    void namesAndOrderDoNotMatterInARun(long seed) {
        Network n = RandomNetworks.draw(Nature.SUPPLY, seed).network();
        Network other = Renamed.shuffled(n, seed, name -> "x" + name);
        Run one = Solve.run(n, SETTINGS, 0.02);
        Run two = Solve.run(other, SETTINGS, 0.02);

        for (int k = 1; k < n.nodes().size(); k++) {
            same(n.nodes().get(k), two.volts(other.node("x" + n.nodes().get(k)), 0), one.volts(k, 0), FOUND_RATIO);
        }
    }

    /** What repeats after one cycle repeats after two. */
    @ParameterizedTest
    @MethodSource("supplies")
    void twoCyclesShowWhatOneShows(long seed) {
        Network n = RandomNetworks.draw(Nature.SUPPLY, seed).network();
        PeriodicSettings twice =
                PeriodicSettings.mains(RandomNetworks.HERTZ / 2).withFewestSteps(256);
        PeriodicState one = Solve.periodic(withoutCorners(n));
        PeriodicState two = Solve.periodic(withoutCorners(n), twice);

        for (int k = 1; k < n.nodes().size(); k++) {
            same(n.nodes().get(k), two.volts(k, 0), one.volts(k, 0), STEPS_RATIO);
        }
    }

    /** It may lay its steps anew. */
    @ParameterizedTest
    @MethodSource("supplies")
    void askedAgainFromItsOwnAnswerTheSearchStaysThere(long seed) {
        Network n = RandomNetworks.draw(Nature.SUPPLY, seed).network();
        PeriodicState one = Solve.periodic(n);
        PeriodicState again = Solve.found(new Solver(n).periodicState(SETTINGS, one, () -> false));

        assertThat(again.work().passes()).isLessThanOrEqualTo(3);
        for (int k = 1; k < n.nodes().size(); k++) {
            same(n.nodes().get(k), again.volts(k, 0), one.volts(k, 0), STEPS_RATIO);
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 3, 20})
    void allImpedancesTimesKLeaveTheVoltagesOfASupplyWithDiodesAndTransistors(double k) {
        PeriodicState one = Solve.periodic(supply(1));
        PeriodicState other = Solve.periodic(supply(k));

        for (String node : new String[] {"plus", "out", "collector", "reference"}) {
            int at = supply(1).node(node);
            same(node, other.volts(at, 0), one.volts(at, 0), STEPS_RATIO);
        }
        assertThat(other.amps("R1").rms() * k)
                .isCloseTo(one.amps("R1").rms(), within(2e-3 * one.amps("R1").rms()));
    }

    private static void same(String node, Waveform found, Waveform expected, double ratio) {
        double allowed = ratio * expected.rms() + FLOOR_VOLTS;
        assertThat(found.mean()).as(node).isCloseTo(expected.mean(), within(allowed));
        assertThat(found.rms()).as(node).isCloseTo(expected.rms(), within(allowed));
    }

    /** Sources with corners do not repeat after their last one. */
    private static Network withoutCorners(Network n) {
        return new Network(
                n.nodes(),
                n.elements().stream()
                        .map(e -> e instanceof Element.VoltageSource v && v.shape() instanceof SourceShape.Corners c
                                ? new Element.VoltageSource(
                                        v.name(), v.one(), v.two(), new SourceShape.Constant(c.at(5e-3)))
                                : e)
                        .toList());
    }

    /** Bridge, reservoir, a follower on a zener, a lamp driver: every ohm and henry times k, every farad and ampere over k. */
    private static Network supply(double k) {
        Network.Builder b = Network.builder("gnd");
        b.voltage("V", "w", "b", new SourceShape.Sine(0, 25, RandomNetworks.HERTZ, 0));
        b.resistor("R1", "w", "a", 0.4 * k);
        b.resistor("R2", "b", "gnd", 1e6 * k);
        String[][] legs = {{"a", "plus"}, {"b", "plus"}, {"gnd", "a"}, {"gnd", "b"}};
        for (int leg = 0; leg < legs.length; leg++) {
            b.port(
                    "D" + leg,
                    legs[leg][0],
                    "j" + leg,
                    JunctionLaw.of(1e-8 / k, 1.7).withLinear(100e-12 / k, 1e-8 / k));
            b.resistor("RD" + leg, "j" + leg, legs[leg][1], 0.02 * k);
        }
        b.capacitor("C1", "plus", "e", 4700e-6 / k);
        b.resistor("RE", "e", "gnd", 0.03 * k);
        b.resistor("RZ", "plus", "reference", 1e3 * k);
        PortLaw zener =
                JunctionLaw.of(1e-12 / k, 1).withBreakdown(12, 10e-3 / k, 8 * k).withLinear(100e-12 / k, 1e-8 / k);
        b.port("Z", "gnd", "reference", zener);
        b.ports("Q1", "reference", "out", "reference", "plus", transistor(k));
        b.resistor("RL", "out", "gnd", 100 * k);
        b.voltage("VB", "drive", "gnd", new SourceShape.Sine(1, 2, RandomNetworks.HERTZ, 1));
        b.resistor("RB", "drive", "base", 1e3 * k);
        b.ports("Q2", "base", "gnd", "base", "collector", transistor(k));
        b.resistor("RC", "plus", "coil", 50 * k);
        b.inductor("LC", "coil", "collector", 0.05 * k);
        b.port("DC", "collector", "plus", JunctionLaw.of(1e-9 / k, 1.8).withLinear(20e-12 / k, 1e-8 / k));
        return b.build();
    }

    private static PortLaw transistor(double k) {
        return BipolarLaw.of(BipolarLaw.Polarity.NPN, 1e-13 / k, 80, 2, 80, 20e-12 / k, Double.POSITIVE_INFINITY);
    }
}
