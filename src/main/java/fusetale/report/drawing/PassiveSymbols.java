package fusetale.report.drawing;

import fusetale.circuit.Capacitor;
import fusetale.circuit.Coil;
import fusetale.circuit.DualCoil;
import fusetale.circuit.Electrolytic;
import fusetale.circuit.Part;
import fusetale.circuit.Resistor;
import fusetale.circuit.Wire;

/** Symbols of resistors, capacitors, coils and wires. Two pins lie side by side, 60 px apart; wires 40 px. */
final class PassiveSymbols {
    private static final double REACH = 30;
    private static final double DUAL_REACH = 50;

    private final boolean iec;

    PassiveSymbols(SymbolStyle style) {
        this.iec = style == SymbolStyle.IEC_60617;
    }

    private static Symbol of(Part part, String kind, String value) {
        return new Symbol(part.name(), Symbols.kind(kind)).value(value);
    }

    Symbol resistor(Resistor r) {
        Symbol s = of(r, "resistor", Symbols.value(r.ohms().nominal()));
        s.leads(r, 18, REACH).solid(-18, -8, 18, 8);
        return iec
                ? s.line(Outline.rectangle(new Box(-18, -7, 36, 14)), Weight.SYMBOL)
                : s.line("M -18 0 L -15 -6 L -9 6 L -3 -6 L 3 6 L 9 -6 L 15 6 L 18 0", Weight.SYMBOL);
    }

    Symbol capacitor(Capacitor c) {
        Symbol s = of(c, "capacitor", Symbols.value(c.farads().nominal()));
        s.leads(c, 4, REACH).solid(-7, -14, 8, 14).line("M -4 -12 L -4 12", Weight.PLATE);
        return iec ? s.line("M 4 -12 L 4 12", Weight.PLATE) : s.line("M 8 -12 C 2.7 -5 2.7 5 8 12", Weight.PLATE);
    }

    Symbol electrolytic(Electrolytic c) {
        Symbol s = of(c, "electrolytic", Symbols.value(c.farads().nominal()));
        s.solid(-18, -14, 9, 14).line("M -14 -13 L -14 -7", Weight.WIRE).line("M -17 -10 L -11 -10", Weight.WIRE);
        return iec
                ? s.leads(c, 8, REACH)
                        .line(Outline.rectangle(new Box(-8, -13, 6, 26)), Weight.SYMBOL)
                        .filled(Outline.rectangle(new Box(2, -14, 7, 28)), Tone.INK)
                : s.leads(c, 4, REACH)
                        .line("M -4 -13 L -4 13", Weight.PLATE)
                        .line("M 9 -13 C 2.3 -5 2.3 5 9 13", Weight.PLATE);
    }

    Symbol wire(Wire w) {
        return of(w, "wire", "")
                .leads(w, 12, 20)
                .line(Outline.line(-12, 0, 12, 0), Weight.SYMBOL)
                .filled(Outline.circle(-12, 0, 3.6), Tone.PAPER)
                .filled(Outline.circle(12, 0, 3.6), Tone.PAPER)
                .line(Outline.circle(-12, 0, 2.8), Weight.WIRE)
                .line(Outline.circle(12, 0, 2.8), Weight.WIRE)
                .solid(-16, -5, 16, 5);
    }

    Symbol coil(Coil c) {
        return of(c, "coil", Symbols.value(c.ohms().nominal()))
                .leads(c, 20, REACH)
                .line(Outline.humps(-20, 20, 0, 4), Weight.SYMBOL)
                .solid(-20, -8, 20, 5);
    }

    /** Both windings in a row, the switch beside the second. */
    Symbol dualCoil(DualCoil c) {
        String ohms = Symbols.WORDS.say(
                "dual-coil",
                Symbols.value(c.powerOhms().nominal()),
                Symbols.value(c.holdOhms().nominal()));
        return of(c, "dual-coil", ohms)
                .leads(c, 40, DUAL_REACH)
                .line(Outline.humps(-40, -4, 0, 4), Weight.SYMBOL)
                .line("M -4 0 L 4 0", Weight.WIRE)
                .line(Outline.humps(4, 40, 0, 4), Weight.SYMBOL)
                .line("M 0 0 L 0 14 L 12 14", Weight.WIRE)
                .line("M 32 14 L 44 14 L 44 0", Weight.WIRE)
                .line(c.pulledIn() ? "M 12 14 L 30 6" : "M 12 14 L 32 12", Weight.SYMBOL)
                .filled(Outline.circle(12, 14, 2.6), Tone.INK)
                .filled(Outline.circle(32, 14, 2.6), Tone.INK)
                .filled(Outline.circle(0, 0, DrawnNet.JOINT_RADIUS), Tone.INK)
                .filled(Outline.circle(44, 0, DrawnNet.JOINT_RADIUS), Tone.INK)
                .solid(-42, -8, 47, 18)
                .leg("power", -48, 0, 0, 0, 36)
                .leg("hold", 0, 0, 46, 0, 36)
                .leg("switch", 0, 14, 44, 14, 22);
    }
}
