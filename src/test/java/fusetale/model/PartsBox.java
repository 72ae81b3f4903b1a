package fusetale.model;

import fusetale.circuit.About;
import fusetale.circuit.Bridge;
import fusetale.circuit.Circuit;
import fusetale.circuit.Diode;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.Drawing;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Lamp;
import fusetale.circuit.Mains;
import fusetale.circuit.Net;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import fusetale.circuit.Resistor;
import fusetale.circuit.TransistorModel;
import fusetale.circuit.Wire;
import fusetale.mna.Element;
import fusetale.mna.Network;
import fusetale.mna.OperatingPoint;
import fusetale.mna.Solver;
import fusetale.mna.SourceShape;
import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** Parts for tests, said in a line each. */
public final class PartsBox {
    /** kT/q at 25 °C [V]. */
    public static final double VT = 0.0256926;

    private static final double MANY = Double.POSITIVE_INFINITY;
    private static final Ratings UNRATED = new Ratings(MANY, MANY, MANY, MANY, MANY, MANY, List.of());

    private PartsBox() {}

    /** A quantity. */
    public static Quantity quantity(double si, Unit unit) {
        return new Quantity(si, unit);
    }

    /** An exact value. */
    public static Toleranced exactly(double si, Unit unit) {
        return new Toleranced(quantity(si, unit), Tolerance.EXACT);
    }

    /** A value ± a ratio. */
    public static Toleranced about(double si, Unit unit, double ratio) {
        return new Toleranced(quantity(si, unit), new Tolerance(-ratio, ratio));
    }

    /** A net. */
    public static Net net(String name) {
        return new Net(name);
    }

    /** A resistor. */
    public static Resistor resistor(String name, String one, String two, double ohms) {
        return new Resistor(name, net(one), net(two), exactly(ohms, Unit.OHM), quantity(1, Unit.WATT), About.NOTHING);
    }

    /** A wire. */
    public static Wire wire(String name, String one, String two, double ohms) {
        return new Wire(name, net(one), net(two), exactly(ohms, Unit.OHM), null, About.NOTHING);
    }

    /** A junction that never breaks down. */
    public static DiodeModel junction(double saturationAmps, double idealityRatio, double seriesOhms) {
        return new DiodeModel("test", saturationAmps, idealityRatio, seriesOhms, 1e-10, 1e12, MANY, 1e-5, 100, UNRATED);
    }

    /** Leg of a 35 A bridge: 0.48 V at 1 mA, 1.1 V at 17.5 A. */
    public static DiodeModel leg35() {
        return junction(8.774e-8, 2, 6.74e-3);
    }

    /** A diode. */
    public static Diode diode(String name, String anode, String cathode, DiodeModel model) {
        return new Diode(name, net(anode), net(cathode), model, About.NOTHING);
    }

    /** A bridge. */
    public static Bridge bridge(String name, String ac1, String ac2, String plus, String minus) {
        return new Bridge(name, net(ac1), net(ac2), net(plus), net(minus), leg35(), About.NOTHING);
    }

    /** An electrolytic without leakage to speak of. */
    public static Electrolytic electrolytic(String name, String plus, String minus, double farads, double seriesOhms) {
        return new Electrolytic(
                name,
                net(plus),
                net(minus),
                exactly(farads, Unit.FARAD),
                quantity(100, Unit.VOLT),
                quantity(seriesOhms, Unit.OHM),
                quantity(1e9, Unit.OHM),
                About.NOTHING);
    }

    /** A lamp. */
    public static Lamp lamp(String name, String one, String two, double volts, double amps) {
        return new Lamp(
                name, net(one), net(two), quantity(volts, Unit.VOLT), exactly(amps, Unit.AMPERE), 1, About.NOTHING);
    }

    /** An NPN transistor that drops {@code baseVolts} at {@code amps}, without bulk resistances or Early's effect. */
    public static TransistorModel npn(double baseVolts, double amps, double gain) {
        return new TransistorModel(
                "test",
                TransistorModel.Polarity.NPN,
                amps / Math.exp(baseVolts / VT),
                gain,
                1,
                MANY,
                0,
                0,
                0,
                1e-11,
                MANY,
                UNRATED);
    }

    /** A circuit on a mains of {@code volts} at 60 Hz behind {@code sourceOhms}, ground {@code gnd}. */
    public static Circuit circuit(double volts, double sourceOhms, Part... parts) {
        Mains mains = new Mains(
                quantity(volts, Unit.VOLT),
                quantity(0.9 * volts, Unit.VOLT),
                quantity(1.1 * volts, Unit.VOLT),
                quantity(60, Unit.HERTZ),
                quantity(sourceOhms, Unit.OHM));
        return new Circuit(
                "test",
                "",
                mains,
                net("gnd"),
                List.of(parts),
                List.of(),
                List.of(),
                List.of(),
                Drawing.NONE,
                List.of());
    }

    /** A circuit fed by nothing but what is connected to its nets afterwards. */
    public static Modelled unplugged(Part... parts) {
        return NetworkBuilder.build(circuit(120, 0.1, parts), Conditions.unplugged());
    }

    /** The state at rest with a d.c. supply between a net and ground. */
    public static OperatingPoint fed(Modelled modelled, String net, double volts) {
        List<Element> elements = new ArrayList<>(modelled.network().elements());
        elements.add(new Element.VoltageSource("supply", modelled.node(net(net)), 0, new SourceShape.Constant(volts)));
        return rest(new Network(modelled.network().nodes(), elements));
    }

    /** The state at rest. */
    public static OperatingPoint rest(Network network) {
        return new Solver(network).operatingPoint(null).orElse(reason -> {
            throw new AssertionError(reason);
        });
    }
}
