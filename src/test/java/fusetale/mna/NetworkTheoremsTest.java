package fusetale.mna;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Theorems that hold in every network of a class, whatever its values, on networks drawn at random. C. A. Desoer and E. S.
 * Kuh, Basic Circuit Theory, McGraw-Hill 1969: superposition (ch. 16), reciprocity (ch. 16), Tellegen (ch. 9); B. D. H.
 * Tellegen, "A general network theorem, with applications", Philips Research Reports 7, 259-269, 1952.
 */
class NetworkTheoremsTest {
    private static final int NODES = 6;
    private static final double ROUNDING_RATIO = 1e-9;
    private static final PeriodicSettings SETTINGS = PeriodicSettings.mains(RandomNetworks.HERTZ);

    static LongStream seeds() {
        return LongStream.range(100, 120);
    }

    /** A current into one pair of nodes makes across another what the same current into that makes across the first. */
    @ParameterizedTest
    @MethodSource("seeds")
    void resistiveNetworksAreReciprocal(long seed) {
        Network n = RandomNetworks.resistive(seed, NODES);
        OperatingPoint there = Solve.rest(with(n, "n1", "gnd", new SourceShape.Constant(0.1)));
        OperatingPoint back = Solve.rest(with(n, "n5", "gnd", new SourceShape.Constant(0.1)));

        double forth = there.volts(n.node("n5"), 0);

        assertThat(forth).isNotZero();
        assertThat(back.volts(n.node("n1"), 0)).isCloseTo(forth, within(ROUNDING_RATIO * largest(there, n)));
    }

    /** With alternating current: inductors, capacitors and transformers are reciprocal too; amplifiers are not. */
    @ParameterizedTest
    @MethodSource("seeds")
    void passiveLinearNetworksAreReciprocalAtEveryMoment(long seed) {
        Network n = withoutAmplifiers(RandomNetworks.linear(seed, NODES));
        SourceShape sine = new SourceShape.Sine(0, 0.1, RandomNetworks.HERTZ, 0.3);
        Waveform forth = periodic(with(n, "n1", "gnd", sine)).volts(n.node("n5"), n.node("n3"));
        Waveform back = periodic(with(n, "n5", "n3", sine)).volts(n.node("n1"), 0);

        // end less start of the two states differs by what SETTINGS leaves
        double scale = Math.max(forth.highest(), -forth.lowest());
        assertThat(back.mean()).isCloseTo(forth.mean(), within(1e-4 * scale));
        assertThat(back.rms()).isCloseTo(forth.rms(), within(1e-4 * scale));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatTwoSourcesDoIsTheSumOfWhatEachDoesAtRest(long seed) {
        Network n = RandomNetworks.linear(seed, NODES);
        SourceShape one = new SourceShape.Constant(2);
        SourceShape two = new SourceShape.Constant(-0.3);
        OperatingPoint first = Solve.rest(sourced(n, one, off()));
        OperatingPoint second = Solve.rest(sourced(n, off(), two));
        OperatingPoint both = Solve.rest(sourced(n, one, two));

        for (int k = 1; k < n.nodes().size(); k++) {
            assertThat(both.volts(k, 0))
                    .isCloseTo(first.volts(k, 0) + second.volts(k, 0), within(ROUNDING_RATIO * largest(both, n)));
        }
    }

    /** Steps are chosen by error, so the three runs have other steps; each is as near as asked to what is true. */
    @ParameterizedTest
    @MethodSource("seeds")
    void whatTwoSourcesDoIsTheSumOfWhatEachDoesInARun(long seed) {
        Network n = RandomNetworks.linear(seed, NODES);
        SourceShape one = new SourceShape.Sine(0, 10, RandomNetworks.HERTZ, 0);
        SourceShape two = new SourceShape.Constant(0.05);
        PeriodicSettings fine = SETTINGS.withAccuracy(1e-6);
        Run first = Solve.run(sourced(n, one, off()), fine, 0.02);
        Run second = Solve.run(sourced(n, off(), two), fine, 0.02);
        Run both = Solve.run(sourced(n, one, two), fine, 0.02);

        for (int k = 1; k < n.nodes().size(); k++) {
            assertThat(both.volts(k, 0).mean())
                    .isCloseTo(
                            first.volts(k, 0).mean() + second.volts(k, 0).mean(),
                            within(1e-4 * both.volts(k, 0).rms() + 1e-5));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whatTwoSourcesDoIsTheSumOfWhatEachDoesInThePeriodicState(long seed) {
        Network n = RandomNetworks.linear(seed, NODES);
        SourceShape one = new SourceShape.Sine(0, 10, RandomNetworks.HERTZ, 0);
        SourceShape two = new SourceShape.Sine(0.02, 0.05, 2 * RandomNetworks.HERTZ, 1);
        PeriodicState first = periodic(sourced(n, one, off()));
        PeriodicState second = periodic(sourced(n, off(), two));
        PeriodicState both = periodic(sourced(n, one, two));

        for (int k = 1; k < n.nodes().size(); k++) {
            Waveform sum = both.volts(k, 0);
            Waveform a = first.volts(k, 0);
            Waveform b = second.volts(k, 0);
            double scale = a.rms() + b.rms() + sum.rms();
            assertThat(sum.mean()).isCloseTo(a.mean() + b.mean(), within(1e-4 * scale));
        }
    }

    /**
     * Voltages of one network with currents of another of the same graph: the sum over all branches is nothing. Says that
     * all voltages obey Kirchhoff's voltage law and all currents his current law, and nothing else.
     */
    @ParameterizedTest
    @MethodSource("seeds")
    void voltagesOfOneNetworkTakeNoPowerFromCurrentsOfAnother(long seed) {
        Network n = sourced(RandomNetworks.linear(seed, NODES), new SourceShape.Sine(0, 10, 60, 0), off());
        Network other = new Network(n.nodes(), others(n, seed));
        Run volts = Solve.run(n, SETTINGS, 0.02);
        Run amps = Solve.run(other, SETTINGS, 0.02);

        double sum = 0;
        double magnitude = 0;
        for (Element e : n.elements()) {
            for (int k = 0; k < e.ends().size(); k++) {
                Element.Ends ends = e.ends().get(k);
                String name = e instanceof Element.CoupledInductors ? e.name() + "." + k : e.name();
                double part = last(volts.volts(ends.one(), ends.two())) * last(amps.amps(name));
                sum += part;
                magnitude += Math.abs(part);
            }
        }

        assertThat(magnitude).isPositive();
        assertThat(sum).isCloseTo(0, within(ROUNDING_RATIO * magnitude));
    }

    /** Elements that are passive cannot together be anything else: seen from outside the network takes power. */
    @ParameterizedTest
    @MethodSource("seeds")
    void passiveNetworksGiveNoPower(long seed) {
        Network n = withoutAmplifiers(RandomNetworks.linear(seed, NODES));
        PeriodicState state = periodic(sourced(n, new SourceShape.Sine(0, 10, RandomNetworks.HERTZ, 0), off()));

        Waveform given = state.volts(n.node("n1"), 0).times(state.amps("~one"));

        assertThat(given.mean()).isPositive();
    }

    /** Ohms and henries times k, farads over k: every voltage from voltage sources stays (Desoer and Kuh, ch. 14). */
    @ParameterizedTest
    @MethodSource("seeds")
    void scalingAllImpedancesLeavesTheVoltages(long seed) {
        Network n = withoutAmplifiers(RandomNetworks.linear(seed, NODES));
        SourceShape sine = new SourceShape.Sine(3, 10, RandomNetworks.HERTZ, 0);
        double k = new SplittableRandom(seed).nextDouble(2, 500);
        Network small = voltageSourced(n, sine);
        Network large = voltageSourced(new Network(n.nodes(), scaled(n.elements(), k)), sine);
        PeriodicState one = periodic(small);
        PeriodicState other = periodic(large);

        for (int node = 1; node < n.nodes().size(); node++) {
            Waveform a = one.volts(node, 0);
            assertThat(other.volts(node, 0).mean()).isCloseTo(a.mean(), within(2e-4 * a.rms() + 1e-6));
            assertThat(other.volts(node, 0).rms()).isCloseTo(a.rms(), within(2e-4 * a.rms() + 1e-6));
        }
        assertThat(other.amps("~E").rms() * k)
                .isCloseTo(one.amps("~E").rms(), within(2e-4 * one.amps("~E").rms()));
    }

    private static double last(Waveform wave) {
        return wave.value(wave.size() - 1);
    }

    /** The same graph with other values. */
    private static List<Element> others(Network n, long seed) {
        SplittableRandom random = new SplittableRandom(seed + 1);
        List<Element> elements = new ArrayList<>();
        for (Element e : n.elements()) {
            elements.addAll(scaled(List.of(e), random.nextDouble(0.2, 5)));
        }
        return elements;
    }

    private static List<Element> scaled(List<Element> elements, double k) {
        List<Element> scaled = new ArrayList<>();
        for (Element e : elements) {
            if (e instanceof Element.Resistor r) {
                scaled.add(new Element.Resistor(r.name(), r.one(), r.two(), r.ohms() * k));
            } else if (e instanceof Element.Capacitor c) {
                scaled.add(new Element.Capacitor(c.name(), c.one(), c.two(), c.farads() / k));
            } else if (e instanceof Element.Inductor l) {
                scaled.add(new Element.Inductor(l.name(), l.one(), l.two(), l.henries() * k));
            } else if (e instanceof Element.CoupledInductors t) {
                List<List<Double>> henries = t.henries().stream()
                        .map(row -> row.stream().map(h -> h * k).toList())
                        .toList();
                scaled.add(new Element.CoupledInductors(t.name(), t.windings(), henries));
            } else {
                scaled.add(e);
            }
        }
        return scaled;
    }

    private static SourceShape off() {
        return new SourceShape.Constant(0);
    }

    /** A voltage source behind 10 ohm at one node, a current source at another. */
    private static Network sourced(Network n, SourceShape volts, SourceShape amps) {
        List<Element> elements = new ArrayList<>(n.elements());
        elements.add(new Element.CurrentSource("~one", 0, n.node("n1"), times(volts, 0.1)));
        elements.add(new Element.Resistor("~ten", n.node("n1"), 0, 10));
        elements.add(new Element.CurrentSource("~two", n.node("n4"), n.node("n2"), amps));
        return new Network(n.nodes(), elements);
    }

    private static SourceShape times(SourceShape shape, double k) {
        if (shape instanceof SourceShape.Sine s) {
            return new SourceShape.Sine(k * s.offset(), k * s.peak(), s.hertz(), s.phaseRadians());
        }
        return new SourceShape.Constant(k * shape.mean());
    }

    private static Network voltageSourced(Network n, SourceShape volts) {
        List<Element> elements = new ArrayList<>(n.elements());
        elements.add(new Element.VoltageSource("~E", n.node("n4"), 0, volts));
        return new Network(n.nodes(), elements);
    }

    private static Network with(Network n, String into, String outOf, SourceShape amps) {
        List<Element> elements = new ArrayList<>(n.elements());
        elements.add(new Element.CurrentSource("~I", n.node(outOf), n.node(into), amps));
        return new Network(n.nodes(), elements);
    }

    private static Network withoutAmplifiers(Network n) {
        return new Network(
                n.nodes(),
                n.elements().stream()
                        .filter(e -> !(e instanceof Element.CurrentByVoltage))
                        .toList());
    }

    /** With steps ten times as fine as usual or more: what is compared differs in them. */
    private static PeriodicState periodic(Network n) {
        return Solve.periodic(n, SETTINGS.withAccuracy(1e-6));
    }

    private static double largest(OperatingPoint point, Network n) {
        double most = 0;
        for (int k = 1; k < n.nodes().size(); k++) {
            most = Math.max(most, Math.abs(point.volts(k, 0)));
        }
        return most;
    }
}
