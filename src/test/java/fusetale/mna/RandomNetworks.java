package fusetale.mna;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Networks drawn at random, the same for the same seed: supplies as machines have them, sound and broken; tangles that no
 * sane person would solder; and the linear networks that theorems speak of. Values are drawn evenly over their logarithm
 * between the bounds said beside each (common practice of machines of that time; in tangles far beyond).
 */
public final class RandomNetworks {
    /** Mains frequency [Hz]. */
    public static final double HERTZ = 60;

    static final String GROUND = "gnd";

    private static final double[] NO_VALUES = {0, -1, Double.NaN, Double.POSITIVE_INFINITY};

    private final SplittableRandom random;
    private final Network.Builder b = Network.builder(GROUND);
    private final Map<String, String> laws = new LinkedHashMap<>();
    private int count;

    private RandomNetworks(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** What is drawn. */
    public enum Nature {
        /** Windings, rectifiers, reservoirs and loads, as designed. */
        SUPPLY,
        /** The same with one to three parts missing, bridged or of a value a thousand times off. */
        BROKEN,
        /** Any element between any two nodes, values over many decades, some of them none. */
        TANGLE
    }

    /**
     * A network and what it was drawn from.
     *
     * @param network the network
     * @param laws what each ported element is, in words
     */
    public record Drawn(Network network, Map<String, String> laws) {
        /** Copies. */
        public Drawn {
            laws = Map.copyOf(laws);
        }

        /** One line an element of {@code part}, which is this network or a part of it. */
        public List<String> listing(Network part) {
            List<String> lines = new ArrayList<>();
            for (Element e : part.elements()) {
                StringBuilder line = new StringBuilder(e.name());
                for (Element.Ends ends : e.ends()) {
                    line.append("  ").append(part.nodes().get(ends.one()));
                    line.append('-').append(part.nodes().get(ends.two()));
                }
                lines.add(line.append("  ")
                        .append(laws.getOrDefault(e.name(), e.toString()))
                        .toString());
            }
            return lines;
        }
    }

    /** A network of this nature. */
    public static Drawn draw(Nature nature, long seed) {
        RandomNetworks r = new RandomNetworks(seed);
        if (nature == Nature.TANGLE) {
            return r.tangle();
        }
        int rails = 1 + r.random.nextInt(2);
        for (int k = 0; k < rails; k++) {
            r.rail(k);
        }
        return nature == Nature.SUPPLY ? r.drawn(r.b.build()) : r.broken();
    }

    /** Resistors that join {@code nodes} nodes, every one to its neighbour and some across; 1 ohm to 100 kohm. */
    static Network resistive(long seed, int nodes) {
        RandomNetworks r = new RandomNetworks(seed);
        r.meshed(nodes);
        return r.b.build();
    }

    /**
     * The same with capacitors (1 μF to 1 mF), inductors (1 mH to 1 H) and a transformer, each behind its resistance, and an
     * amplifier of little gain. No sources.
     */
    static Network linear(long seed, int nodes) {
        RandomNetworks r = new RandomNetworks(seed);
        r.meshed(nodes);
        for (int k = 0; k < nodes; k++) {
            r.b.capacitor(r.name("C"), r.among(nodes), r.other(nodes), r.between(1e-6, 1e-3));
            String coil = "k" + k;
            r.b.resistor(r.name("R"), r.among(nodes), coil, r.between(1, 1000));
            r.b.inductor(r.name("L"), coil, r.other(nodes), r.between(1e-3, 1));
        }
        double primary = r.between(0.1, 10);
        double secondary = r.between(0.01, 1);
        double mutual = 0.9 * Math.sqrt(primary * secondary);
        r.b.resistor(r.name("R"), "n1", "t1", r.between(1, 100));
        r.b.resistor(r.name("R"), "n2", "t2", r.between(1, 100));
        r.b.add(new Element.CoupledInductors(
                r.name("T"),
                List.of(r.b.ends("t1", GROUND), r.b.ends("t2", GROUND)),
                List.of(List.of(primary, mutual), List.of(mutual, secondary))));
        r.b.add(new Element.CurrentByVoltage(
                r.name("G"), r.b.node("n1"), 0, r.b.node("n2"), r.b.node("n3"), r.between(1e-7, 1e-6)));
        return r.b.build();
    }

    /** The same elements; nodes that none of them touches are left out. */
    public static Network withoutBareNodes(Network network) {
        Network.Builder kept = Network.builder(network.nodes().get(0));
        network.elements()
                .forEach(e -> kept.add(Renamed.element(
                        e, e.name(), n -> n == 0 ? 0 : kept.node(network.nodes().get(n)))));
        return kept.build();
    }

    private Drawn drawn(Network network) {
        return new Drawn(network, laws);
    }

    private void meshed(int nodes) {
        for (int k = 0; k < nodes; k++) {
            String before = k == 0 ? GROUND : "n" + k;
            b.resistor(name("R"), before, "n" + (k + 1), between(1, 1e5));
        }
        for (int k = 0; k < nodes; k++) {
            b.resistor(name("R"), among(nodes), other(nodes), between(1, 1e5));
        }
    }

    private String among(int nodes) {
        return "n" + (1 + random.nextInt(nodes));
    }

    private String other(int nodes) {
        int n = random.nextInt(nodes + 1);
        return n == 0 ? GROUND : "n" + n;
    }

    private String name(String letter) {
        return letter + ++count;
    }

    private double between(double low, double high) {
        return low * Math.pow(high / low, random.nextDouble());
    }

    private boolean chance(double probability) {
        return random.nextDouble() < probability;
    }

    private void port(String kind, String one, String two, PortLaw law, String words) {
        String name = name(kind);
        laws.put(name, words);
        b.port(name, one, two, law);
    }

    // ---------------------------------------------------------------- supplies

    private void rail(int rail) {
        double volts = between(5, 50);
        String plus = "plus" + rail;
        rectifier(rail, volts, plus);
        if (chance(0.9)) {
            capacitor(plus, GROUND, between(100e-6, 22e-3), between(5e-3, 0.5));
        }
        if (chance(0.7)) {
            b.resistor(name("R"), plus, GROUND, between(100, 10e3));
        }
        int loads = 1 + random.nextInt(4);
        for (int k = 0; k < loads; k++) {
            load(plus, volts * Math.sqrt(2));
        }
    }

    private void rectifier(int rail, double rmsVolts, String plus) {
        String a = "a" + rail;
        String c = "b" + rail;
        int form = random.nextInt(10);
        if (form < 5) {
            winding(a, c, rmsVolts, 0);
            diode(a, plus);
            diode(c, plus);
            diode(GROUND, a);
            diode(GROUND, c);
        } else if (form < 7) {
            winding(a, GROUND, rmsVolts, 0);
            diode(a, plus);
        } else if (form < 9) {
            winding(a, GROUND, rmsVolts, 0);
            winding(c, GROUND, rmsVolts, Math.PI);
            diode(a, plus);
            diode(c, plus);
        } else {
            String middle = "m" + rail;
            winding(a, middle, rmsVolts / 2, 0);
            diode(a, plus);
            diode(GROUND, a);
            capacitor(plus, middle, between(100e-6, 5e-3), between(0.01, 0.3));
            capacitor(middle, GROUND, between(100e-6, 5e-3), between(0.01, 0.3));
        }
    }

    private void winding(String one, String two, double rmsVolts, double phase) {
        String inner = "w" + ++count;
        double ohms = between(0.05, 5);
        SourceShape sine = new SourceShape.Sine(0, rmsVolts * Math.sqrt(2), HERTZ, phase);
        if (chance(0.2)) {
            String line = "l" + ++count;
            double henries = between(0.5, 20);
            double loose = 1 - between(1e-4, 1e-2);
            b.voltage(name("V"), line, GROUND, sine);
            String primary = "p" + ++count;
            b.resistor(name("R"), line, primary, 20 * ohms);
            b.add(new Element.CoupledInductors(
                    name("T"),
                    List.of(b.ends(primary, GROUND), b.ends(inner, two)),
                    List.of(List.of(henries, loose * henries), List.of(loose * henries, henries))));
            b.resistor(name("R"), inner, two, between(1e4, 1e6));
        } else if (chance(0.3)) {
            String leak = "k" + ++count;
            b.voltage(name("V"), leak, two, sine);
            b.inductor(name("L"), leak, inner, between(20e-6, 5e-3));
            b.resistor(name("R"), leak, inner, between(10, 1000));
        } else {
            b.voltage(name("V"), inner, two, sine);
        }
        if (!two.equals(GROUND)) {
            b.resistor(name("R"), two, GROUND, between(1e6, 1e8));
        }
        b.resistor(name("R"), inner, one, ohms);
    }

    private void diode(String anode, String cathode) {
        String inner = "j" + ++count;
        double amps = between(1e-10, 1e-7);
        double ideality = 1 + random.nextDouble();
        double farads = chance(0.8) ? between(10e-12, 500e-12) : 0;
        JunctionLaw law = JunctionLaw.of(amps, ideality).withLinear(farads, 1e-9);
        if (chance(0.3)) {
            law = law.withBreakdown(between(50, 600), 1e-3, between(10, 1000));
        }
        port("D", anode, inner, law, "diode, IS " + amps + " A, N " + ideality + ", " + farads + " F");
        b.resistor(name("R"), inner, cathode, between(5e-3, 0.2));
    }

    private void zener(String cathode, String anode, double volts) {
        String inner = "j" + ++count;
        double ohms = between(1, 30);
        JunctionLaw law = JunctionLaw.of(1e-12, 1)
                .withBreakdown(volts, between(5e-3, 50e-3), ohms)
                .withLinear(between(20e-12, 500e-12), 1e-9);
        port("Z", anode, inner, law, "zener, " + volts + " V, " + ohms + " ohm");
        b.resistor(name("R"), inner, cathode, between(0.05, 1));
    }

    private void capacitor(String one, String two, double farads, double ohms) {
        String inner = "e" + ++count;
        b.capacitor(name("C"), one, inner, farads);
        b.resistor(name("R"), inner, two, ohms);
    }

    private void load(String plus, double volts) {
        switch (random.nextInt(9)) {
            case 0 -> b.resistor(name("R"), plus, GROUND, between(volts, 1000 * volts));
            case 1 -> lamp(plus, GROUND, volts);
            case 2 -> driven(plus);
            case 3 -> shunt(plus, volts);
            case 4 -> regulator(plus, volts);
            case 5 -> follower(plus, volts);
            case 6 -> draw(plus, GROUND, volts);
            case 7 -> choke(plus, volts);
            default -> highSide(plus);
        }
    }

    private void lamp(String one, String two, double volts) {
        double amps = between(0.02, 2);
        port("E", one, two, FilamentLaw.rated(volts, amps, 2400, 0.05), "lamp, " + volts + " V, " + amps + " A");
    }

    private void draw(String one, String two, double volts) {
        double amps = between(0.01, 2);
        port("X", one, two, new DrawLaw(volts, amps), "logic, " + volts + " V, " + amps + " A");
    }

    /** Coil or lamp on a transistor or Darlington, its base switched by corners or steady. */
    private void driven(String plus) {
        String collector = "c" + ++count;
        if (chance(0.7)) {
            String coil = "k" + ++count;
            b.resistor(name("R"), plus, coil, between(2, 100));
            b.inductor(name("L"), coil, collector, between(1e-3, 0.5));
            if (chance(0.8)) {
                diode(collector, plus);
            }
        } else {
            lamp(plus, collector, between(5, 30));
        }
        String drive = "g" + ++count;
        String base = "h" + ++count;
        b.voltage(name("V"), drive, GROUND, drive());
        b.resistor(name("R"), drive, base, between(100, 10e3));
        double breakdown = between(40, 120);
        if (chance(0.5)) {
            transistor(BipolarLaw.Polarity.NPN, base, collector, GROUND, breakdown);
        } else {
            darlington(base, collector, GROUND, breakdown);
        }
    }

    private SourceShape drive() {
        double high = between(1, 12);
        int form = random.nextInt(4);
        if (form == 0) {
            return new SourceShape.Constant(chance(0.5) ? 0 : high);
        }
        if (form == 1) {
            return new SourceShape.Sine(high / 2, high / 2, HERTZ * (1 + random.nextInt(3)), 6 * random.nextDouble());
        }
        double on = random.nextDouble() * 8e-3 + 1e-4;
        double edge = between(1e-6, 1e-4);
        double off = on + 2 * edge + random.nextDouble() * 7e-3;
        return new SourceShape.Corners(
                List.of(0.0, on, on + edge, off, off + edge), List.of(0.0, 0.0, high, high, 0.0));
    }

    private BipolarLaw bipolar(BipolarLaw.Polarity polarity, double breakdown) {
        return BipolarLaw.of(
                polarity,
                between(1e-15, 1e-11),
                between(15, 400),
                between(0.5, 10),
                chance(0.5) ? between(30, 200) : Double.POSITIVE_INFINITY,
                chance(0.3) ? between(2e-12, 200e-12) : 0,
                breakdown);
    }

    private void transistor(
            BipolarLaw.Polarity polarity, String base, String collector, String emitter, double breakdown) {
        String name = name("Q");
        laws.put(name, polarity + " transistor, breaks down at " + breakdown + " V");
        String inner = "q" + count;
        b.resistor(name("R"), base, inner, between(0.1, 20));
        b.ports(name, inner, emitter, inner, collector, bipolar(polarity, breakdown));
    }

    private void darlington(String base, String collector, String emitter, double breakdown) {
        String name = name("Q");
        laws.put(name, "Darlington, breaks down at " + breakdown + " V");
        String inner = "q" + count;
        String middle = "u" + count;
        PortLaw law = new DarlingtonLaw(
                bipolar(BipolarLaw.Polarity.NPN, Double.POSITIVE_INFINITY),
                bipolar(BipolarLaw.Polarity.NPN, breakdown),
                between(1e-12, 1e-9),
                1.5);
        b.resistor(name("R"), base, inner, between(0.1, 20));
        b.resistor(name("R"), inner, middle, between(2e3, 20e3));
        b.resistor(name("R"), middle, emitter, between(50, 500));
        List<Element.Ends> ends = List.of(b.ends(inner, middle), b.ends(middle, emitter), b.ends(middle, collector));
        b.add(new Element.Ported(name, ends, law));
    }

    private void shunt(String plus, double volts) {
        String out = "z" + ++count;
        b.resistor(name("R"), plus, out, between(20, 5e3));
        zener(out, GROUND, volts * (0.2 + 0.6 * random.nextDouble()));
        if (chance(0.5)) {
            b.resistor(name("R"), out, GROUND, between(100, 10e3));
        }
    }

    private void regulator(String plus, double volts) {
        String out = "r" + ++count;
        double regulated = volts * (0.3 + 0.6 * random.nextDouble());
        double limit = between(0.1, 3);
        PortLaw law =
                new RegulatorLaw(regulated, between(3e-3, 0.1), between(0.5, 2.5), 5e-3, limit, between(300, 1e4));
        String name = name("U");
        laws.put(name, "regulator, " + regulated + " V, " + limit + " A");
        b.ports(name, plus, out, out, GROUND, law);
        if (chance(0.7)) {
            capacitor(out, GROUND, between(0.1e-6, 470e-6), between(0.01, 2));
        }
        if (chance(0.5)) {
            draw(out, GROUND, regulated);
        } else {
            b.resistor(name("R"), out, GROUND, regulated / between(1e-3, 2 * limit));
        }
    }

    /** A transistor that follows a zener. */
    private void follower(String plus, double volts) {
        String reference = "z" + ++count;
        String out = "o" + ++count;
        b.resistor(name("R"), plus, reference, between(100, 5e3));
        zener(reference, GROUND, volts * (0.2 + 0.5 * random.nextDouble()));
        if (chance(0.4)) {
            capacitor(reference, GROUND, between(1e-6, 220e-6), between(0.1, 5));
        }
        if (chance(0.5)) {
            transistor(BipolarLaw.Polarity.NPN, reference, plus, out, Double.POSITIVE_INFINITY);
        } else {
            darlington(reference, plus, out, Double.POSITIVE_INFINITY);
        }
        b.resistor(name("R"), out, GROUND, between(volts, 200 * volts));
        if (chance(0.6)) {
            capacitor(out, GROUND, between(1e-6, 2200e-6), between(0.02, 2));
        }
    }

    private void choke(String plus, double volts) {
        String out = "f" + ++count;
        String coil = "k" + ++count;
        b.inductor(name("L"), plus, coil, between(1e-3, 5));
        b.resistor(name("R"), coil, out, between(0.1, 100));
        capacitor(out, GROUND, between(10e-6, 10e-3), between(0.01, 1));
        b.resistor(name("R"), out, GROUND, between(volts, 500 * volts));
    }

    private void highSide(String plus) {
        String out = "o" + ++count;
        String base = "h" + ++count;
        transistor(BipolarLaw.Polarity.PNP, base, out, plus, Double.POSITIVE_INFINITY);
        b.resistor(name("R"), base, plus, between(500, 10e3));
        b.resistor(name("R"), base, GROUND, between(300, 30e3));
        b.resistor(name("R"), out, GROUND, between(20, 2e3));
        if (chance(0.3)) {
            b.inductor(name("L"), out, GROUND, between(1e-3, 1));
        }
    }

    // ---------------------------------------------------------------- broken ones

    private Drawn broken() {
        Network sound = b.build();
        List<Element> elements = new ArrayList<>(sound.elements());
        int nodes = sound.nodes().size();
        int faults = 1 + random.nextInt(3);
        for (int k = 0; k < faults; k++) {
            int at = random.nextInt(elements.size());
            switch (random.nextInt(3)) {
                case 0 -> elements.remove(at);
                case 1 ->
                    elements.add(new Element.Resistor(
                            name("S"), random.nextInt(nodes), random.nextInt(nodes), between(1e-3, 1e3)));
                default -> elements.set(at, offValue(elements.get(at), chance(0.5) ? 1e3 : 1e-3));
            }
        }
        return drawn(new Network(sound.nodes(), elements));
    }

    private static Element offValue(Element e, double ratio) {
        if (e instanceof Element.Resistor r) {
            return new Element.Resistor(r.name(), r.one(), r.two(), r.ohms() * ratio);
        }
        if (e instanceof Element.Capacitor c) {
            return new Element.Capacitor(c.name(), c.one(), c.two(), c.farads() * ratio);
        }
        if (e instanceof Element.Inductor l) {
            return new Element.Inductor(l.name(), l.one(), l.two(), l.henries() * ratio);
        }
        return e;
    }

    // ---------------------------------------------------------------- tangles

    private Drawn tangle() {
        int nodes = 1 + random.nextInt(8);
        boolean tame = chance(0.5);
        int elements = nodes + 1 + random.nextInt(2 * nodes + 2);
        b.voltage(name("V"), among(nodes), other(nodes), shape());
        for (int k = 0; k < elements; k++) {
            String one = among(nodes);
            String two = other(nodes);
            switch (random.nextInt(tame ? 14 : 18)) {
                case 0, 1, 2, 3 -> b.resistor(name("R"), one, two, value(tame, 0.1, 1e5, 1e-6, 1e12));
                case 4, 5 -> b.capacitor(name("C"), one, two, value(tame, 1e-9, 1e-2, 1e-14, 10));
                case 6 -> b.inductor(name("L"), one, two, value(tame, 1e-5, 10, 1e-9, 1e4));
                case 7 -> diode(one, two);
                case 8 -> bareDiode(one, two);
                case 9 -> zener(one, two, between(2, 60));
                case 10 ->
                    transistor(
                            chance(0.5) ? BipolarLaw.Polarity.NPN : BipolarLaw.Polarity.PNP,
                            one,
                            two,
                            other(nodes),
                            chance(0.3) ? between(20, 100) : Double.POSITIVE_INFINITY);
                case 11 -> darlington(one, two, other(nodes), between(20, 100));
                case 12 -> lamp(one, two, between(1, 100));
                case 13 -> regulated(one, two, other(nodes));
                case 14 -> b.voltage(name("V"), one, two, shape());
                case 15 -> b.current(name("I"), one, two, shape());
                case 16 -> draw(one, two, between(1, 50));
                default -> controlled(one, two, nodes);
            }
        }
        return drawn(b.build());
    }

    private double value(boolean tame, double low, double high, double lowest, double highest) {
        if (tame) {
            return between(low, high);
        }
        return chance(0.01) ? NO_VALUES[random.nextInt(NO_VALUES.length)] : between(lowest, highest);
    }

    private SourceShape shape() {
        double size = between(1e-2, 200);
        return switch (random.nextInt(4)) {
            case 0 -> new SourceShape.Constant(chance(0.5) ? size : -size);
            case 1 -> drive();
            default -> new SourceShape.Sine(0, size, HERTZ * (1 + random.nextInt(2)), 6 * random.nextDouble());
        };
    }

    private void bareDiode(String one, String two) {
        double amps = between(1e-15, 1e-6);
        double ideality = 1 + random.nextDouble();
        port("D", one, two, JunctionLaw.of(amps, ideality), "bare diode, IS " + amps + " A, N " + ideality);
    }

    private void regulated(String in, String out, String ground) {
        String name = name("U");
        double volts = between(2, 30);
        laws.put(name, "regulator, " + volts + " V, 1 A");
        b.ports(name, in, out, out, ground, new RegulatorLaw(volts, 0.02, 2, 5e-3, 1, 1e3));
    }

    private void controlled(String one, String two, int nodes) {
        int plus = b.node(among(nodes));
        int minus = b.node(other(nodes));
        double gain = between(1e-3, 10) * (chance(0.5) ? 1 : -1);
        if (chance(0.5)) {
            b.add(new Element.VoltageByVoltage(name("A"), b.node(one), b.node(two), plus, minus, gain));
        } else {
            b.add(new Element.CurrentByVoltage(name("G"), b.node(one), b.node(two), plus, minus, gain / 100));
        }
    }
}
