package fusetale.fault;

import fusetale.circuit.About;
import fusetale.circuit.Armature;
import fusetale.circuit.Battery;
import fusetale.circuit.Bridge;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Circuit;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
import fusetale.circuit.Connector.Contact;
import fusetale.circuit.Controller;
import fusetale.circuit.Darlington;
import fusetale.circuit.DarlingtonModel;
import fusetale.circuit.Diode;
import fusetale.circuit.DiodeModel;
import fusetale.circuit.Drawing;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.EndOfStroke;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Lamp;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Mains;
import fusetale.circuit.Mosfet;
import fusetale.circuit.MosfetModel;
import fusetale.circuit.Net;
import fusetale.circuit.OpAmp;
import fusetale.circuit.OpAmpModel;
import fusetale.circuit.Part;
import fusetale.circuit.Ratings;
import fusetale.circuit.Regulator;
import fusetale.circuit.RegulatorModel;
import fusetale.circuit.Relay;
import fusetale.circuit.Resistor;
import fusetale.circuit.Switch;
import fusetale.circuit.Thyristor;
import fusetale.circuit.ThyristorModel;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transformer.Magnetics;
import fusetale.circuit.Transformer.Winding;
import fusetale.circuit.Transistor;
import fusetale.circuit.TransistorModel;
import fusetale.circuit.Wire;
import fusetale.circuit.Zener;
import fusetale.quantity.Quantity;
import fusetale.quantity.Tolerance;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/** A board with one part of every kind; it makes no electrical sense and needs none. */
public final class OneOfEach {
    private static final Ratings RATINGS = new Ratings(8, 200, 160, 200, 75, 1.7, List.of());
    private static final DiodeModel JUNCTION =
            new DiodeModel("rect-1A", 37.8e-9, 2, 0.12, 15e-12, 1e9, 200, 1e-3, 1, RATINGS);
    private static final Ratings SMALL = new Ratings(0.2, 0.5, 0.1, 100, 0.5, 350, List.of());
    private static final DiodeModel SIGNAL =
            new DiodeModel("signal-0A2", 2.5e-9, 1.75, 0.6, 4e-12, 1e9, 100, 1e-4, 10, SMALL);
    private static final TransistorModel NPN = new TransistorModel(
            "npn", TransistorModel.Polarity.NPN, 1e-12, 50, 2, 100, 1, 0.05, 0.02, 100e-12, 100, RATINGS);

    private static final TransistorModel SMALL_NPN = new TransistorModel(
            "small npn", TransistorModel.Polarity.NPN, 1e-14, 100, 2, 100, 10, 1, 0.5, 10e-12, 60, SMALL);

    private OneOfEach() {}

    /** The board. */
    public static Circuit circuit() {
        return new Circuit(
                "One Of Each",
                "",
                new Mains(volts(120), volts(110), volts(126), new Quantity(60, Unit.HERTZ), ohms(0.3)),
                net("gnd"),
                parts(),
                List.of(),
                List.of(connector()),
                List.of(),
                Drawing.NONE,
                List.of());
    }

    private static List<Part> parts() {
        List<Part> parts = new ArrayList<>(supply());
        parts.addAll(loads());
        parts.addAll(switches());
        return parts;
    }

    private static List<Part> supply() {
        return List.of(
                transformer(),
                new Bridge("BR201", net("f"), net("s2"), net("raw"), net("gnd"), JUNCTION, About.NOTHING),
                new Diode("D1", net("raw"), net("logic"), JUNCTION, About.NOTHING),
                new Diode("D3", net("ref"), net("logic"), SIGNAL, About.NOTHING),
                new Zener("D401", net("gnd"), net("ref"), JUNCTION, exact(12, Unit.VOLT), About.NOTHING),
                new Electrolytic(
                        "C101",
                        net("raw"),
                        net("gnd"),
                        exact(4700e-6, Unit.FARAD),
                        volts(25),
                        ohms(0.05),
                        ohms(20e3),
                        About.NOTHING),
                new Capacitor("C102", net("ref"), net("gnd"), exact(100e-9, Unit.FARAD), volts(63), About.NOTHING),
                resistor("R204", 470, 0.5),
                resistor("R205", 100, 10),
                fuse(),
                new Lamp("E1", net("raw"), net("gnd"), volts(14), exact(0.2, Unit.AMPERE), 1, About.NOTHING),
                new Lamp("E2", net("raw"), net("gnd"), volts(6.3), exact(0.25, Unit.AMPERE), 8, About.NOTHING));
    }

    private static List<Part> loads() {
        return List.of(
                new Coil(
                        "L205",
                        net("raw"),
                        net("drive"),
                        exact(4, Unit.OHM),
                        exact(0.02, Unit.HENRY),
                        null,
                        null,
                        About.NOTHING),
                new DualCoil(
                        "L208",
                        net("raw"),
                        net("drive"),
                        exact(2.7, Unit.OHM),
                        exact(0.01, Unit.HENRY),
                        exact(150, Unit.OHM),
                        exact(0.4, Unit.HENRY),
                        EndOfStroke.FOLLOWS,
                        false,
                        About.NOTHING),
                new Transistor("Q204", net("drive"), net("base"), net("gnd"), NPN, About.NOTHING),
                new Transistor("Q208", net("drive"), net("base"), net("gnd"), SMALL_NPN, About.NOTHING),
                new Darlington(
                        "Q205",
                        net("drive"),
                        net("base"),
                        net("gnd"),
                        new DarlingtonModel("darl", NPN, NPN, 5000, 150, JUNCTION, RATINGS),
                        About.NOTHING),
                new Regulator(
                        "U101",
                        net("raw"),
                        net("logic"),
                        net("gnd"),
                        new RegulatorModel("5V-1A", 5, 0.04, 0.02, 2, 4e-3, 2.2, 1200, RATINGS),
                        About.NOTHING),
                new OpAmp(
                        "U301",
                        net("ref"),
                        net("amp"),
                        net("amp"),
                        volts(-12),
                        volts(12),
                        OpAmp.State.WORKS,
                        new OpAmpModel("op-amp-bipolar", 2e5, 2e6, 75, 1.5, 1e6),
                        About.NOTHING),
                new Battery("B501", net("logic"), net("gnd"), volts(3.6), ohms(1), About.NOTHING),
                new Switch("S1", net("line"), net("p1"), true, ohms(0.02), About.NOTHING),
                new LogicOutput(
                        "U502",
                        net("base"),
                        net("logic"),
                        net("gnd"),
                        ohms(1000),
                        ohms(50),
                        LogicOutput.State.LOW,
                        "L205",
                        About.NOTHING),
                new Controller(
                        "U501",
                        net("logic"),
                        net("gnd"),
                        volts(5),
                        new Quantity(0.8, Unit.AMPERE),
                        volts(4.5),
                        List.of(new Controller.StartUpCheck("memory supply", net("ref"), volts(3.8), volts(5.3))),
                        About.NOTHING),
                new Wire("W1", net("logic"), net("ref"), exact(0.01, Unit.OHM), null, About.NOTHING));
    }

    private static List<Part> switches() {
        return List.of(
                new Mosfet(
                        "Q206",
                        net("drive"),
                        net("base"),
                        net("gnd"),
                        new MosfetModel(
                                "nmos",
                                MosfetModel.Channel.N,
                                2,
                                3,
                                0.1,
                                50,
                                1,
                                1e-12,
                                1e9,
                                50e-12,
                                20e-12,
                                60,
                                RATINGS),
                        About.NOTHING),
                new Thyristor(
                        "Q207",
                        net("raw"),
                        net("base"),
                        net("gnd"),
                        new ThyristorModel(
                                "scr", 1e-3, 0.8, 1e4, 8e-3, 5e-3, 0.95, 0.1, 1e7, 50e-12, 100, 30e-6, RATINGS),
                        About.NOTHING),
                new Relay(
                        "K201",
                        new Relay.Ends(net("raw"), net("drive")),
                        new Relay.Ends(net("ref"), net("logic")),
                        new Relay.Winding(
                                exact(160, Unit.OHM),
                                exact(0.3, Unit.HENRY),
                                new Quantity(0.056, Unit.AMPERE),
                                new Quantity(0.02, Unit.AMPERE),
                                new Quantity(0.01, Unit.SECOND)),
                        ohms(0.05),
                        false,
                        Armature.FOLLOWS,
                        About.NOTHING));
    }

    private static Transformer transformer() {
        return new Transformer(
                "T1",
                new Winding("primary", List.of(net("p1"), net("neutral")), volts(120), exact(2, Unit.OHM), null),
                List.of(
                        new Winding(
                                "sec",
                                List.of(net("s1"), net("s2")),
                                volts(28),
                                exact(0.4, Unit.OHM),
                                new Quantity(5, Unit.AMPERE)),
                        new Winding("lamps", List.of(net("g1"), net("g2")), volts(6.3), exact(0.05, Unit.OHM), null)),
                new Magnetics(
                        new Quantity(0.12, Unit.RATIO),
                        new Quantity(0.04, Unit.AMPERE),
                        new Quantity(4, Unit.WATT),
                        new Quantity(0.02, Unit.RATIO)),
                About.NOTHING);
    }

    private static Fuse fuse() {
        FuseLink link = new FuseLink(
                new Quantity(5, Unit.AMPERE), FuseLink.Speed.SLOW, FuseLink.Standard.UL_248_14, "6.3x32", ohms(0.0256));
        return new Fuse("F201", net("s1"), net("f"), link, link, exact(0.005, Unit.OHM), About.NOTHING);
    }

    private static Resistor resistor(String name, double ohms, double watts) {
        return new Resistor(
                name,
                net("ref"),
                net("gnd"),
                new Toleranced(ohms(ohms), new Tolerance(-0.05, 0.05)),
                new Quantity(watts, Unit.WATT),
                About.NOTHING);
    }

    private static Connector connector() {
        return new Connector(
                "J3",
                List.of(
                        new Contact("1", net("raw"), net("raw-h"), exact(0.005, Unit.OHM)),
                        new Contact("4", net("drive"), net("drive-h"), exact(0.005, Unit.OHM)),
                        new Contact("key", net("gnd"), net("gnd-h"), exact(0.005, Unit.OHM))),
                new Quantity(7, Unit.AMPERE));
    }

    private static Net net(String name) {
        return new Net(name);
    }

    private static Quantity volts(double v) {
        return new Quantity(v, Unit.VOLT);
    }

    private static Quantity ohms(double r) {
        return new Quantity(r, Unit.OHM);
    }

    private static Toleranced exact(double value, Unit unit) {
        return new Toleranced(new Quantity(value, unit), Tolerance.EXACT);
    }
}
