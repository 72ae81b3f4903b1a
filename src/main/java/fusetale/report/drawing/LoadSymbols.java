package fusetale.report.drawing;

import fusetale.circuit.Controller;
import fusetale.circuit.Lamp;
import fusetale.circuit.LogicOutput;
import fusetale.circuit.OpAmp;
import fusetale.circuit.Part;
import fusetale.circuit.Regulator;
import fusetale.circuit.Relay;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;

/** Symbols of regulators, op-amps, controllers, logic outputs, lamps and relays. */
final class LoadSymbols {
    private static final int CHECK_GAP = 20;

    private final boolean iec;

    LoadSymbols(SymbolStyle style) {
        this.iec = style == SymbolStyle.IEC_60617;
    }

    private static Symbol of(Part part, String kind, String value) {
        return new Symbol(part.name(), Symbols.kind(kind)).value(value);
    }

    Symbol regulator(Regulator r) {
        String volts = Symbols.value(new Quantity(r.model().outputVolts(), Unit.VOLT));
        return of(r, "regulator", volts)
                .line(Outline.rectangle(new Box(-36, -20, 72, 40)), Weight.SYMBOL)
                .line("M -50 0 L -36 0", Weight.WIRE)
                .line("M 36 0 L 50 0", Weight.WIRE)
                .line("M 0 20 L 0 30", Weight.WIRE)
                .solid(-36, -20, 36, 20)
                .text(r.name(), 0, -3, Label.Role.NAME)
                .text(Symbols.WORDS.say("regulator", volts), 0, 13, Label.Role.VALUE)
                .port(r, "in", -50, 0, Side.LEFT)
                .port(r, "out", 50, 0, Side.RIGHT)
                .port(r, "ground", 0, 30, Side.DOWN)
                .leg("", -50, 0, 50, 0, 72)
                .leg("ground", 0, 20, 0, 30, 0);
    }

    /** A triangle with its inverting input on top; the rails are not drawn. */
    Symbol opAmp(OpAmp a) {
        return of(a, "op-amp", "")
                .line("M -30 -35 L -30 35 L 30 0 Z", Weight.SYMBOL)
                .line("M -50 -20 L -30 -20", Weight.WIRE)
                .line("M -50 20 L -30 20", Weight.WIRE)
                .line("M 30 0 L 50 0", Weight.WIRE)
                .line("M -25 -20 L -17 -20", Weight.WIRE)
                .line("M -25 20 L -17 20", Weight.WIRE)
                .line("M -21 16 L -21 24", Weight.WIRE)
                .solid(-30, -35, 30, 35)
                .text(a.name(), -8, 4, Label.Role.NAME)
                .port(a, "minus", -50, -20, Side.LEFT)
                .port(a, "plus", -50, 20, Side.LEFT)
                .port(a, "out", 50, 0, Side.RIGHT)
                .leg("", 30, 0, 50, 0, 0)
                .leg("minus", -50, -20, -30, -20, 0)
                .leg("plus", -50, 20, -30, 20, 0);
    }

    /** A box with its checks on the left, one below the other, {@code spread} squares apart. */
    Symbol controller(Controller c, int spread) {
        double gap = spread == 0 ? CHECK_GAP : spread * (double) Placement.SQUARE;
        int checks = c.checks().size();
        double height = 60 + (Math.max(1, checks) - 1) * gap;
        double top = -Placement.SQUARE * Math.floor(height / 2 / Placement.SQUARE);
        double bottom = top + height;
        double half = 70;
        Symbol s = of(c, "controller", Symbols.value(c.ratedVolts()))
                .line(Outline.rectangle(new Box(-half, top, 2 * half, height)), Weight.SYMBOL)
                .line(Outline.line(0, top - 10, 0, top), Weight.WIRE)
                .line(Outline.line(0, bottom, 0, bottom + 10), Weight.WIRE)
                .solid(-half, top, half, bottom)
                .port(c, "supply", 0, top - 10, Side.UP)
                .port(c, "ground", 0, bottom + 10, Side.DOWN)
                .leg("", 0, top - 10, 0, bottom + 10, height);
        for (int i = 0; i < checks; i++) {
            Controller.StartUpCheck check = c.checks().get(i);
            double y = top + 40 + i * gap;
            s.line(Outline.line(-half - 10, y, -half, y), Weight.WIRE)
                    .text(check.label(), -half + 6, y + 4, Label.Anchor.START, Label.Role.NOTE)
                    .port("check " + (i + 1), check.net().name(), -half - 10, y, Side.LEFT)
                    .leg("check" + (i + 1), -half - 10, y, -half, y, 0);
        }
        s.text(c.name(), half - 6, top + 17, Label.Anchor.END, Label.Role.NAME)
                .text(Symbols.kind("controller"), 6 - half, top + 17, Label.Anchor.START, Label.Role.VALUE);
        return s;
    }

    Symbol logicOutput(LogicOutput o) {
        Symbol s = of(o, "logic-output", "")
                .line("M 0 -30 L 0 " + (iec ? "-14" : "-7.5"), Weight.WIRE)
                .line("M 0 30 L 0 " + (iec ? "14" : "7.5"), Weight.WIRE)
                .line("M 15 0 L 30 0", Weight.WIRE)
                .solid(-15, -15, 15, 15)
                .port(o, "out", 30, 0, Side.RIGHT)
                .port(o, "supply", 0, -30, Side.UP)
                .port(o, "ground", 0, 30, Side.DOWN)
                .leg("", 0, 0, 30, 0, 0);
        return iec
                ? s.line(Outline.rectangle(new Box(-14, -14, 28, 28)), Weight.SYMBOL)
                        .line("M -5 -6 L -5 6 L 6 0 Z", Weight.WIRE)
                : s.line("M -14 -15 L -14 15 L 14 0 Z", Weight.SYMBOL);
    }

    Symbol lamp(Lamp l) {
        String volts = Symbols.value(l.volts());
        Symbol s = of(l, "lamp", l.count() > 1 ? Symbols.WORDS.say("lamp.several", volts, l.count()) : volts);
        s.leads(l, 12, 20)
                .leg("one", -20, 0, 20, 0, 24)
                .line(Outline.circle(0, 0, 12), Weight.SYMBOL)
                .solid(-13, -13, 13, 13);
        return iec
                ? s.line("M -8.5 -8.5 L 8.5 8.5", Weight.WIRE).line("M -8.5 8.5 L 8.5 -8.5", Weight.WIRE)
                : s.line("M -12 0 L -5 0 C -7 -10 7 -10 5 0 L 12 0", Weight.WIRE);
    }

    /** Coil on the left, contact on the right, joined by a broken line. */
    Symbol relay(Relay r) {
        return of(r, "relay", Symbols.value(r.winding().ohms().nominal()))
                .line("M -20 -30 L -20 -12", Weight.WIRE)
                .line("M -20 12 L -20 30", Weight.WIRE)
                .line(Outline.rectangle(new Box(-34, -12, 28, 24)), Weight.SYMBOL)
                .line("M -34 12 L -6 -12", Weight.RING)
                .line("M 30 -30 L 30 -12", Weight.WIRE)
                .line("M 30 12 L 30 30", Weight.WIRE)
                .line(r.closedAtRest() ? "M 30 12 L 27 -13" : "M 30 12 L 18 -10", Weight.SYMBOL)
                .filled(Outline.circle(30, 12, 3), Tone.INK)
                .filled(Outline.circle(30, -12, 3), Tone.INK)
                .line("M -3 0 L 3 0", Weight.RING)
                .line("M 8 0 L 14 0", Weight.RING)
                .line("M 19 0 L 23 0", Weight.RING)
                .solid(-35, -13, 34, 16)
                .port(r, "coil1", -20, -30, Side.UP)
                .port(r, "coil2", -20, 30, Side.DOWN)
                .port(r, "contact1", 30, -30, Side.UP)
                .port(r, "contact2", 30, 30, Side.DOWN)
                .leg("", -20, -30, -20, 30, 24)
                .leg("coil", -20, -30, -20, 30, 24)
                .leg("contact", 30, -30, 30, 30, 24);
    }
}
