package fusetale.report.drawing;

import fusetale.circuit.Battery;
import fusetale.circuit.Bridge;
import fusetale.circuit.Capacitor;
import fusetale.circuit.Coil;
import fusetale.circuit.Connector;
import fusetale.circuit.Controller;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Fuse;
import fusetale.circuit.Lamp;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.Mains;
import fusetale.circuit.Mosfet;
import fusetale.circuit.OpAmp;
import fusetale.circuit.Part;
import fusetale.circuit.Regulator;
import fusetale.circuit.Relay;
import fusetale.circuit.Resistor;
import fusetale.circuit.Switch;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transistor;
import fusetale.circuit.Wire;
import fusetale.circuit.Zener;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;

/**
 * The symbol of every kind of part. Shapes of IEC 60617 and IEEE 315 from memory, those of a controller and of a connector's
 * pin after common practice.
 */
final class Symbols {
    private static final int DIGITS = 3;

    static final Words WORDS = Words.of(Symbols.class);

    private final PassiveSymbols passives;
    private final JunctionSymbols junctions;
    private final SupplySymbols supplies;
    private final LoadSymbols loads;

    Symbols(SymbolStyle style) {
        passives = new PassiveSymbols(style);
        junctions = new JunctionSymbols(style);
        supplies = new SupplySymbols();
        loads = new LoadSymbols(style);
    }

    /** A value in at most {@value #DIGITS} digits. */
    static String value(Quantity quantity) {
        return Notation.format(quantity, DIGITS);
    }

    /** The words for a kind. */
    static String kind(String key) {
        return WORDS.say("kind." + key);
    }

    /**
     * A part's symbol.
     *
     * @param spread squares from winding to winding or check to check; 0 for the usual
     */
    Symbol of(Part part, int spread) {
        if (part instanceof Resistor r) {
            return passives.resistor(r);
        } else if (part instanceof Capacitor c) {
            return passives.capacitor(c);
        } else if (part instanceof Electrolytic c) {
            return passives.electrolytic(c);
        } else if (part instanceof Wire w) {
            return passives.wire(w);
        } else if (part instanceof Coil c) {
            return passives.coil(c);
        } else if (part instanceof DualCoil c) {
            return passives.dualCoil(c);
        } else if (part instanceof Fuse f) {
            return supplies.fuse(f);
        } else if (part instanceof Switch s) {
            return supplies.onOff(s);
        } else if (part instanceof Battery b) {
            return supplies.battery(b);
        } else if (part instanceof Transformer t) {
            return supplies.transformer(t, spread);
        } else {
            return active(part, spread);
        }
    }

    private Symbol active(Part part, int spread) {
        if (part instanceof Diode d) {
            return junctions.diode(d);
        } else if (part instanceof Zener z) {
            return junctions.zener(z);
        } else if (part instanceof Bridge b) {
            return junctions.bridge(b);
        } else if (part instanceof Transistor t) {
            return junctions.transistor(t);
        } else if (part instanceof Darlington d) {
            return junctions.darlington(d);
        } else if (part instanceof Mosfet m) {
            return junctions.mosfet(m);
        } else if (part instanceof Thyristor t) {
            return junctions.thyristor(t);
        } else if (part instanceof Regulator r) {
            return loads.regulator(r);
        } else if (part instanceof OpAmp a) {
            return loads.opAmp(a);
        } else if (part instanceof Controller c) {
            return loads.controller(c, spread);
        } else if (part instanceof LogicOutput o) {
            return loads.logicOutput(o);
        } else if (part instanceof Lamp l) {
            return loads.lamp(l);
        } else if (part instanceof Relay r) {
            return loads.relay(r);
        }
        throw new IllegalArgumentException("no symbol for " + part.getClass().getSimpleName());
    }

    /** Where the mains come in. */
    Symbol mains(Mains mains) {
        String volts = value(mains.volts()) + ", " + value(mains.hertz());
        return new Symbol(Mains.NAME, kind("mains"))
                .line("M 3 -20 L 20 -20", Weight.WIRE)
                .line("M 3 20 L 20 20", Weight.WIRE)
                .line(Outline.circle(0, -20, 3.4), Weight.SYMBOL)
                .line(Outline.circle(0, 20, 3.4), Weight.SYMBOL)
                .solid(-5, -25, 5, -15)
                .solid(-5, 15, 5, 25)
                .text(Mains.NAME, -5, -1, Label.Anchor.START, Label.Role.NAME)
                .text(volts, -5, 12, Label.Anchor.START, Label.Role.NOTE)
                .port("line", Mains.LINE.name(), 20, -20, Side.RIGHT)
                .port("neutral", Mains.NEUTRAL.name(), 20, 20, Side.RIGHT)
                .leg("", 0, -20, 0, 20, 30);
    }

    /** One pin of a connector: a tongue on the board's side in a socket on the harness'. */
    static Symbol contact(Connector connector, Connector.Contact contact) {
        return new Symbol(connector.name() + "." + contact.label(), kind("contact"))
                .line(Outline.line(-20, 0, -6, 0), Weight.WIRE)
                .line("M 9 0 L 20 0", Weight.WIRE)
                .filled(Outline.rectangle(new Box(-8, -2.5, 11, 5)), Tone.INK)
                .line("M 2 -6.5 C 5.6 -6.5 8.5 -3.6 8.5 0 C 8.5 3.6 5.6 6.5 2 6.5", Weight.SYMBOL)
                .solid(-12, -7, 12, 7)
                .port("board", contact.board().name(), -20, 0, Side.LEFT)
                .port("harness", contact.harness().name(), 20, 0, Side.RIGHT)
                .leg("", -20, 0, 20, 0, 20);
    }
}
