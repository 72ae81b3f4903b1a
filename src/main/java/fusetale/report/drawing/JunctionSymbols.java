package fusetale.report.drawing;

import fusetale.circuit.Bridge;
import fusetale.circuit.Darlington;
import fusetale.circuit.Diode;
import fusetale.circuit.Mosfet;
import fusetale.circuit.MosfetModel;
import fusetale.circuit.Part;
import fusetale.circuit.Thyristor;
import fusetale.circuit.Transistor;
import fusetale.circuit.TransistorModel;
import fusetale.circuit.Zener;

/** Symbols of diodes and transistors. A diode is 40 px long; a transistor has its base on the left, its collector on top. */
final class JunctionSymbols {
    private static final double REACH = 20;
    private static final String TRIANGLE = "M -8 -8.5 L -8 8.5 L 7 0 Z";

    private final boolean iec;

    JunctionSymbols(SymbolStyle style) {
        this.iec = style == SymbolStyle.IEC_60617;
    }

    private static Symbol of(Part part, String kind, String value) {
        return new Symbol(part.name(), Symbols.kind(kind)).value(value);
    }

    private Symbol junction(Symbol s) {
        s.line(TRIANGLE, Weight.SYMBOL).solid(-10, -10, 10, 10);
        return iec ? s.line("M -8 0 L 7 0", Weight.WIRE) : s;
    }

    Symbol diode(Diode d) {
        return junction(of(d, "diode", d.model().name()).leads(d, 8, REACH)).line("M 7 -8.5 L 7 8.5", Weight.SYMBOL);
    }

    Symbol zener(Zener z) {
        Symbol s = junction(of(z, "zener", Symbols.value(z.volts().nominal())).leads(z, 8, REACH));
        return s.line(iec ? "M 2 -8.5 L 7 -8.5 L 7 8.5" : "M 2 -10 L 7 -8.5 L 7 8.5 L 12 10", Weight.SYMBOL);
    }

    /** Four diodes on the edges of a square on its corner: alternating current above and below, plus on the right. */
    Symbol bridge(Bridge b) {
        double corner = 40;
        Symbol s = of(b, "bridge", bridgeValue(b.model().name()))
                .line("M 0 -50 L 0 -40 L 40 0 L 50 0", Weight.WIRE)
                .line("M 0 50 L 0 40 L -40 0 L -50 0", Weight.WIRE)
                .line("M 0 -40 L -40 0", Weight.WIRE)
                .line("M 0 40 L 40 0", Weight.WIRE)
                .solid(-40, -10, 40, 10)
                .solid(-30, -30, 30, 30)
                .solid(-10, -40, 10, 40)
                .port(b, "ac1", 0, -50, Side.UP)
                .port(b, "ac2", 0, 50, Side.DOWN)
                .port(b, "plus", 50, 0, Side.RIGHT)
                .port(b, "minus", -50, 0, Side.LEFT)
                .leg("", -corner, 0, corner, 0, 2 * corner);
        edge(s, "leg1", 0, -corner, corner, 0);
        edge(s, "leg2", 0, corner, corner, 0);
        edge(s, "leg3", -corner, 0, 0, -corner);
        edge(s, "leg4", -corner, 0, 0, corner);
        return s.text(b.name(), 0, -2, Label.Role.NAME)
                .text(bridgeValue(b.model().name()), 0, 13, Label.Role.VALUE);
    }

    /** {@code bridge-25A} says 25 A. */
    private static String bridgeValue(String model) {
        return model.matches("bridge-\\d+A") ? model.substring(7, model.length() - 1) + " A" : "";
    }

    private static void edge(Symbol s, String place, double x1, double y1, double x2, double y2) {
        double length = Math.hypot(x2 - x1, y2 - y1);
        double alongX = (x2 - x1) / length;
        double alongY = (y2 - y1) / length;
        double middleX = (x1 + x2) / 2;
        double middleY = (y1 + y2) / 2;
        Outline.Place on =
                (x, y) -> new double[] {middleX + x * alongX - y * alongY, middleY + x * alongY + y * alongX};
        s.line(Outline.of("M -6.5 -6.5 L -6.5 6.5 L 5.5 0 Z").mapped(on), Weight.SYMBOL)
                .line(Outline.of("M 5.5 -6.5 L 5.5 6.5").mapped(on), Weight.SYMBOL)
                .leg(place, x1, y1, x2, y2, 14);
    }

    Symbol transistor(Transistor t) {
        boolean npn = t.model().polarity() == TransistorModel.Polarity.NPN;
        Symbol s = of(t, "transistor", t.model().name())
                .line(Outline.circle(2, 0, 18), Weight.RING)
                .line("M -30 0 L -5 0", Weight.WIRE)
                .line("M -5 -11 L -5 11", Weight.BASE)
                .line("M -5 -5 L 10 -14 L 10 -30", Weight.WIRE)
                .line("M -5 5 L 10 14 L 10 30", Weight.WIRE)
                .filled(npn ? "M 10 14 L 1.1 12.6 L 4.9 6.4 Z" : "M -4 5.6 L 4.9 7 L 1.1 13.2 Z", Tone.INK)
                .solid(-16, -18, 20, 18);
        return threePins(s, t, "collector", "base", "emitter");
    }

    private static Symbol threePins(Symbol s, Part part, String top, String left, String bottom) {
        char c = top.charAt(0);
        char b = left.charAt(0);
        char e = bottom.charAt(0);
        s.leg("", 10, -26, 10, 26, 24)
                .leg("" + c + e, 10, -30, 10, 30, 28)
                .leg("" + b + e, -22, 0, 10, 26, 18)
                .leg("" + c + b, 10, -26, -22, 0, 18)
                .leg("" + c, 10, -30, 10, -16, 0)
                .leg("" + b, -30, 0, -16, 0, 0)
                .leg("" + e, 10, 16, 10, 30, 0)
                .leg("" + b + c, 10, -26, -22, 0, 18);
        return s.port(part, top, 10, -30, Side.UP)
                .port(part, left, -30, 0, Side.LEFT)
                .port(part, bottom, 10, 30, Side.DOWN);
    }

    /** Two transistors in one ring, the first's emitter on the second's base. */
    Symbol darlington(Darlington d) {
        boolean npn = d.model().first().polarity() == TransistorModel.Polarity.NPN;
        Symbol s = of(d, "darlington", d.model().name())
                .line(Outline.circle(0, 0, 21), Weight.RING)
                .line("M -30 0 L -12 0", Weight.WIRE)
                .line("M -12 -8 L -12 7", Weight.BASE)
                .line("M -12 -4 L -3 -11 L 10 -11", Weight.WIRE)
                .line("M -12 3 L -2 8", Weight.WIRE)
                .line("M -2 0 L -2 14", Weight.BASE)
                .line("M -2 4 L 10 -3 L 10 -30", Weight.WIRE)
                .line("M -2 10 L 10 17 L 10 30", Weight.WIRE)
                .filled(npn ? "M 10 17 L 1.9 15.8 L 5.2 9.9 Z" : "M -1 10.6 L 7.1 11.8 L 3.8 17.7 Z", Tone.INK)
                .solid(-21, -21, 21, 21);
        return threePins(s, d, "collector", "base", "emitter");
    }

    /** An enhancement type: its channel is broken. */
    Symbol mosfet(Mosfet m) {
        boolean n = m.model().channel() == MosfetModel.Channel.N;
        Symbol s = of(m, "mosfet", m.model().name())
                .line(Outline.circle(2, 0, 18), Weight.RING)
                .line("M -30 0 L -9 0", Weight.WIRE)
                .line("M -9 -9 L -9 9", Weight.SYMBOL)
                .line("M -4 -12 L -4 -6", Weight.PLATE)
                .line("M -4 -3 L -4 3", Weight.PLATE)
                .line("M -4 6 L -4 12", Weight.PLATE)
                .line("M -4 -9 L 10 -9 L 10 -30", Weight.WIRE)
                .line("M -4 9 L 10 9 L 10 30", Weight.WIRE)
                .line("M -4 0 L 10 0 L 10 9", Weight.WIRE)
                .filled(n ? "M -4 0 L 4 -3.6 L 4 3.6 Z" : "M 6 0 L -2 -3.6 L -2 3.6 Z", Tone.INK)
                .solid(-16, -18, 20, 18);
        return threePins(s, m, "drain", "gate", "source");
    }

    Symbol thyristor(Thyristor t) {
        return junction(of(t, "thyristor", t.model().name()))
                .line("M -20 0 L -8 0", Weight.WIRE)
                .line("M 7 0 L 20 0", Weight.WIRE)
                .line("M 7 -8.5 L 7 8.5", Weight.SYMBOL)
                .line("M 7 3 L 10 8 L 10 20", Weight.WIRE)
                .port(t, "anode", -20, 0, Side.LEFT)
                .port(t, "gate", 10, 20, Side.DOWN)
                .port(t, "cathode", 20, 0, Side.RIGHT)
                .leg("", -20, 0, 20, 0, 16)
                .leg("ak", -20, 0, 20, 0, 16)
                .leg("gk", 10, 18, 20, 0, 8)
                .leg("ag", -18, 0, 10, 18, 12)
                .leg("a", -20, 0, -8, 0, 0)
                .leg("g", 10, 20, 10, 8, 0)
                .leg("k", 8, 0, 20, 0, 0);
    }
}
