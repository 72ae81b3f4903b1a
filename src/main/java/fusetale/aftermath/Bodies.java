package fusetale.aftermath;

import fusetale.aftermath.Body.Nature;
import fusetale.aftermath.Body.Spread;
import fusetale.aftermath.ThermalNetwork.Stage;
import fusetale.circuit.Circuit;
import fusetale.circuit.ClipModel;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Fuse;
import fusetale.circuit.InsulationClass;
import fusetale.circuit.Part;
import fusetale.circuit.Relay;
import fusetale.circuit.Resistor;
import fusetale.circuit.ResistorStyle;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transformer.Winding;
import fusetale.circuit.Wire;
import fusetale.circuit.Wound;
import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * What of a circuit warms up, how, and at which temperature what happens to it. One method a kind; semiconductors are in {@link
 * Junctions}. Figures that a machine's file does not give are estimates with a wide spread, each with its reason here.
 */
public final class Bodies {
    /** Solenoids: bobbin, bracket and plunger, about 250 g of iron at 0.46 J/(g·K) (judgement). */
    private static final double IRON_JOULES_PER_KELVIN = 115;

    /**
     * A solenoid's copper to its iron and on to the air [K/W]. Judgement: a holding winding of about 15 W is meant to be held
     * for good, so with class 130 in 40 °C the sum is below 6 K/W.
     */
    private static final double COPPER_TO_IRON_KELVIN_PER_WATT = 1.2;

    private static final double IRON_TO_AIR_KELVIN_PER_WATT = 2.8;

    /** A relay on a board, some 10 g of iron beside its copper; 30 to 40 K/W (data sheets of relays of 1 to 2 W). */
    private static final double RELAY_IRON_JOULES_PER_KELVIN = 5;

    private static final double RELAY_KELVIN_PER_WATT = 35;

    /** Rise [K] of a small transformer at rated load: class 105 with 40 °C around it allows 60 (judgement). */
    private static final double TRANSFORMER_KELVIN = 55;

    /** How much of that falls between copper and core (judgement). */
    private static final double COPPER_SHARE = 0.25;

    /** Core: about 17 g of iron a volt-ampere at 0.46 J/(g·K) (judgement, 25 to 300 VA). */
    private static final double CORE_JOULES_PER_KELVIN_AND_WATT = 8;

    /** A resistor's own heat capacity for each watt of rating: 1 g of ceramic a watt at 0.9 J/(g·K) (judgement). */
    private static final double RESISTOR_JOULES_PER_KELVIN_AND_WATT = 0.9;

    /** Clips of a fuse on its board warm up by so much [K] at the power that their holder accepts (IEC 60127-6, from memory). */
    private static final double CLIP_RISE_KELVIN = 62.5;

    /** What a holder accepts where a file names none [W]: the middle class of IEC 60127-6 (from memory). */
    private static final double ACCEPTED_WATTS = 2.5;

    /** Clips and caps: 12 g of brass at 0.38 J/(g·K) (judgement). */
    private static final double CLIP_JOULES_PER_KELVIN = 4.5;

    /** A pin, its crimp and the first centimetres of wire (judgement). */
    static final double CONTACT_KELVIN_PER_WATT = 40;

    private static final double CONTACT_JOULES_PER_KELVIN = 3;

    /** A wire's time constant [s], thin wires in air 60 to 200 (judgement). */
    private static final double WIRE_CONSTANT_SECONDS = 100;

    /** What a contact is just after it burnt (judgement); with that it goes on burning. */
    private static final Quantity FIRST_BURNT = new Quantity(0.1, Unit.OHM);

    /** Place of the winding that takes the mains. */
    static final String PRIMARY = "primary";

    private static final Spread ESTIMATED = new Spread(1.3, 1.5);
    private static final Spread KNOWN = new Spread(1.15, 1.2);

    private static final String ENAMEL =
            "enamel cuts through between 200 and 300 °C (IEC 60317 asks 170 to 300 °C by kind, from memory)";
    private static final String HOUSING =
            "connector housings and their contacts are rated for 105 °C in all (makers' catalogues)";
    private static final String CHARRED = "nylon softens and chars, tin is gone: 180 to 260 °C (from memory)";

    private Bodies() {}

    /** Everything that warms up, in the order of the circuit; connectors last. */
    public static List<Body> of(Circuit circuit) {
        List<Body> bodies = new ArrayList<>();
        for (Part part : circuit.parts()) {
            add(part, bodies);
        }
        circuit.connectors().forEach(c -> contacts(c, bodies));
        return bodies;
    }

    private static void add(Part part, List<Body> bodies) {
        if (part instanceof Transformer p) {
            windings(p, bodies);
        } else if (part instanceof Coil p) {
            bodies.add(solenoid(p.name(), "", p.wound(), IRON_JOULES_PER_KELVIN));
        } else if (part instanceof DualCoil p) {
            bodies.add(solenoid(p.name(), "power", p.powerWound(), IRON_JOULES_PER_KELVIN));
            bodies.add(solenoid(p.name(), "hold", p.holdWound(), IRON_JOULES_PER_KELVIN));
        } else if (part instanceof Relay p) {
            double joules = p.wound().joulesPerKelvin() + RELAY_IRON_JOULES_PER_KELVIN;
            bodies.add(new Body(
                    p.name(),
                    "coil",
                    Nature.COIL,
                    ThermalNetwork.single(RELAY_KELVIN_PER_WATT, joules),
                    ESTIMATED,
                    copper(p.name(), "coil", p.wound().insulation())));
        } else if (part instanceof Resistor p) {
            bodies.add(resistor(p));
        } else if (part instanceof Fuse p) {
            bodies.add(clips(p));
        } else if (part instanceof Wire p) {
            if (p.ratedAmps() != null) {
                bodies.add(wire(p));
            }
        } else {
            Junctions.add(part, bodies);
        }
    }

    private static Body solenoid(String part, String place, Wound wound, double iron) {
        ThermalNetwork network = new ThermalNetwork(List.of(
                new Stage(COPPER_TO_IRON_KELVIN_PER_WATT, wound.joulesPerKelvin(), false),
                new Stage(IRON_TO_AIR_KELVIN_PER_WATT, iron + wound.joulesPerKelvin(), true)));
        return new Body(part, place, Nature.COIL, network, ESTIMATED, copper(part, place, wound.insulation()));
    }

    /** Class passed, turns shorted, then open: the lugs' solder, or the wire itself. */
    private static List<Limit> copper(String part, String place, InsulationClass insulation) {
        double hottest = insulation.hottestCelsius();
        return List.of(
                new Limit(
                        hottest,
                        hottest,
                        Harm.WINDING_PAST_CLASS,
                        null,
                        "class " + insulation.hottestCelsius() + " of IEC 60085"),
                new Limit(200, 300, Harm.TURNS_SHORT, fault(part, place, FailureMode.SHORTED_TURNS), ENAMEL),
                new Limit(
                        400,
                        700,
                        Harm.BURNS_OPEN,
                        fault(part, place, FailureMode.OPEN),
                        "a charred winding parts at its lugs or within, 400 to 700 °C (judgement)"));
    }

    /**
     * Windings of a transformer. Each has its own copper and, at its rated current, its share of the rise over the core; core
     * and surface they share.
     */
    private static void windings(Transformer t, List<Body> bodies) {
        double copperWatts = 0;
        for (Winding w : t.windings()) {
            copperWatts += ratedWatts(t, w);
        }
        double allWatts = copperWatts + t.magnetics().coreLossWatts().si();
        double voltAmperes = t.primary().volts().si() * t.ratedAmps(t.primary());
        Stage surface = new Stage(
                (1 - COPPER_SHARE) * TRANSFORMER_KELVIN / allWatts,
                CORE_JOULES_PER_KELVIN_AND_WATT * voltAmperes,
                true);
        for (Winding w : t.windings()) {
            Wound wound = t.wound(w);
            Stage own = new Stage(COPPER_SHARE * TRANSFORMER_KELVIN / ratedWatts(t, w), wound.joulesPerKelvin(), false);
            bodies.add(new Body(
                    t.name(),
                    w.name(),
                    Nature.WINDING,
                    new ThermalNetwork(List.of(own, surface)),
                    ESTIMATED,
                    copper(t.name(), w.name(), wound.insulation())));
        }
    }

    private static double ratedWatts(Transformer t, Winding w) {
        double amps = t.ratedAmps(w);
        return Math.max(amps * amps * w.ohms().si(), 1e-3);
    }

    private static Body resistor(Resistor r) {
        ResistorStyle style = r.style();
        double watts = r.ratedWatts().si();
        boolean wound = style == ResistorStyle.WIREWOUND;
        return new Body(
                r.name(),
                "",
                Nature.RESISTOR,
                ThermalNetwork.single(style.kelvinPerWatt(watts), RESISTOR_JOULES_PER_KELVIN_AND_WATT * watts),
                ESTIMATED,
                List.of(
                        new Limit(
                                style.hottestCelsius(),
                                style.hottestCelsius(),
                                Harm.RESISTOR_PAST_RATING,
                                null,
                                "where the derating curve of " + style.words() + " ends"),
                        new Limit(
                                wound ? 600 : 350,
                                wound ? 900 : 550,
                                Harm.RESISTOR_OPENS,
                                fault(r.name(), "", FailureMode.OPEN),
                                wound
                                        ? "resistance wire parts at 600 to 900 °C (judgement)"
                                        : "film or its caps part at 350 to 550 °C (judgement)")));
    }

    private static Body clips(Fuse f) {
        ClipModel holder = f.holder();
        double acceptedWatts =
                holder == null ? ACCEPTED_WATTS : holder.acceptedWatts().si();
        return new Body(
                f.name(),
                "",
                Nature.CLIP,
                ThermalNetwork.single(CLIP_RISE_KELVIN / acceptedWatts, CLIP_JOULES_PER_KELVIN),
                ESTIMATED,
                List.of(
                        new Limit(
                                120,
                                180,
                                Harm.CLIP_TIRES,
                                null,
                                "bronze relaxes above 105 °C in months, above 150 °C in hours (from memory)"),
                        new Limit(
                                183,
                                230,
                                Harm.CLIP_UNSOLDERS,
                                fault(f.name(), "", FailureMode.MISSING),
                                "tin-lead solder melts from 183 °C on (handbooks)")));
    }

    private static Body wire(Wire w) {
        return new Body(
                w.name(),
                "",
                Nature.CONDUCTOR,
                ThermalNetwork.single(1, WIRE_CONSTANT_SECONDS),
                ESTIMATED,
                List.of(new Limit(
                        80,
                        105,
                        Harm.WIRE_PAST_CLASS,
                        null,
                        "hook-up wire with PVC is rated for 80 to 105 °C (UL 758, from memory)")));
    }

    private static void contacts(Connector connector, List<Body> bodies) {
        for (Connector.Contact pin : connector.pins()) {
            bodies.add(new Body(
                    connector.name(),
                    pin.label(),
                    Nature.CONTACT,
                    ThermalNetwork.single(CONTACT_KELVIN_PER_WATT, CONTACT_JOULES_PER_KELVIN),
                    ESTIMATED,
                    List.of(
                            new Limit(105, 105, Harm.HOUSING_SOFTENS, null, HOUSING),
                            new Limit(
                                    180,
                                    260,
                                    Harm.CONTACT_BURNS,
                                    new Fault(connector.name(), pin.label(), FailureMode.BURNT, FIRST_BURNT),
                                    CHARRED),
                            new Limit(
                                    350,
                                    600,
                                    Harm.BURNS_OPEN,
                                    fault(connector.name(), pin.label(), FailureMode.OPEN),
                                    "pin or crimp parts at 350 to 600 °C (judgement)"))));
        }
    }

    static Fault fault(String part, String place, FailureMode mode) {
        return new Fault(part, place, mode, null);
    }

    /** What spreads figures of data sheets. */
    static Spread known() {
        return KNOWN;
    }
}
