package fusetale.mna;

/** Circuits that several tests share. */
final class Supplies {
    private static final String[][] LEGS = {{"ac1", "plus"}, {"ac2", "plus"}, {"minus", "ac1"}, {"minus", "ac2"}};

    private Supplies() {}

    /** A winding of so many volts behind 0.4 Ω, a bridge of 35 A legs, 12 000 μF with 30 mΩ, a load; leg 1 may be shorted. */
    static Network bridge(double rmsVolts, double loadOhms, double shortOhms) {
        Network.Builder b = Network.builder("minus");
        b.voltage("V", "e", "ac2", new SourceShape.Sine(0, rmsVolts * Math.sqrt(2), 60, 0));
        b.resistor("RS", "e", "ac1", 0.40);
        legs(b);
        if (shortOhms > 0) {
            b.resistor("S", "ac1", "plus", shortOhms);
        }
        b.capacitor("C", "plus", "x", 12000e-6);
        b.resistor("ESR", "x", "minus", 0.03);
        b.resistor("RL", "plus", "minus", loadOhms);
        return b.build();
    }

    /** The same behind a mains transformer with magnetising and leakage inductance: core offset takes seconds to die out. */
    static Network transformer(double rmsVolts, double loadOhms) {
        Network.Builder b = Network.builder("minus");
        b.voltage("V", "line", "neutral", new SourceShape.Sine(0, rmsVolts * Math.sqrt(2), 60, 0));
        b.resistor("tie", "neutral", "minus", 1e6);
        b.resistor("RP", "line", "p", 2);
        double turns = 28.0 / 120;
        double m = 6.0;
        b.add(new Element.CoupledInductors(
                "T",
                java.util.List.of(b.ends("p", "neutral"), b.ends("e", "ac2")),
                java.util.List.of(
                        java.util.List.of(m + 5e-3, turns * m),
                        java.util.List.of(turns * m, turns * turns * m + 3e-4))));
        b.resistor("RS", "e", "ac1", 0.30);
        legs(b);
        b.capacitor("C", "plus", "x", 12000e-6);
        b.resistor("ESR", "x", "minus", 0.03);
        b.resistor("RL", "plus", "minus", loadOhms);
        return b.build();
    }

    private static void legs(Network.Builder b) {
        for (int k = 0; k < LEGS.length; k++) {
            b.port("D" + (k + 1), LEGS[k][0], "j" + k, new PlainJunction(8.774e-8, 2 * 0.0256926, 200e-12));
            b.resistor("RD" + k, "j" + k, LEGS[k][1], 6.74e-3);
        }
    }
}
