package fusetale.report.drawing;

import fusetale.circuit.Battery;
import fusetale.circuit.Fuse;
import fusetale.circuit.FuseLink;
import fusetale.circuit.Part;
import fusetale.circuit.Switch;
import fusetale.circuit.Transformer;
import java.util.List;

/** Symbols of fuses, switches, batteries and transformers. */
final class SupplySymbols {
    private static final double REACH = 30;

    /** From tap to tap of a winding [px]. */
    static final int SECTION = 40;

    /** From winding to winding [px] where a file says nothing. */
    static final int GAP = 20;

    private static Symbol of(Part part, String kind, String value) {
        return new Symbol(part.name(), Symbols.kind(kind)).value(value);
    }

    /** The line goes through, so that a blown one can be drawn as the broken line. */
    Symbol fuse(Fuse f) {
        return of(f, "fuse", rating(f.marked()))
                .leads(f, 18, REACH)
                .line(Outline.rectangle(new Box(-18, -6, 36, 12)), Weight.SYMBOL)
                .line(Outline.line(-18, 0, 18, 0), Weight.RING)
                .solid(-18, -7, 18, 7);
    }

    /** {@code 6 A slow}. */
    static String rating(FuseLink link) {
        return Symbols.WORDS.say(
                link.speed() == FuseLink.Speed.SLOW ? "fuse.slow" : "fuse.quick", Symbols.value(link.ratedAmps()));
    }

    Symbol onOff(Switch s) {
        return of(s, "switch", "")
                .leads(s, 14, REACH)
                .line(s.closed() ? "M -14 0 L 15 -3" : "M -14 0 L 11 -13", Weight.SYMBOL)
                .filled(Outline.circle(-14, 0, 3), Tone.INK)
                .filled(Outline.circle(14, 0, 3), Tone.INK)
                .solid(-18, -14, 18, 4);
    }

    Symbol battery(Battery b) {
        return of(b, "battery", Symbols.value(b.volts()))
                .leads(b, 9, 20)
                .line("M -9 -12 L -9 12", Weight.SYMBOL)
                .line("M -3 -6 L -3 6", Weight.BASE)
                .line("M 3 -12 L 3 12", Weight.SYMBOL)
                .line("M 9 -6 L 9 6", Weight.BASE)
                .line("M -15 -12 L -15 -6", Weight.WIRE)
                .line("M -18 -9 L -12 -9", Weight.WIRE)
                .solid(-18, -13, 11, 13);
    }

    /** Primary on the left, secondaries below each other on the right, {@code spread} squares apart. */
    Symbol transformer(Transformer t, int spread) {
        double gap = spread == 0 ? GAP : spread * (double) Placement.SQUARE;
        List<Transformer.Winding> windings = t.secondaries();
        double height = (windings.size() - 1) * gap;
        for (Transformer.Winding winding : windings) {
            height += SECTION * (winding.nets().size() - 1.0);
        }
        double top = -Placement.SQUARE * Math.floor(height / 2 / Placement.SQUARE);
        Symbol s = of(t, "transformer", "");
        double y = top;
        for (Transformer.Winding winding : windings) {
            y = winding(s, winding, y, 1) + gap;
        }
        double taps = t.primary().nets().size() - 1.0;
        double first = top + Placement.SQUARE * Math.floor((height - taps * SECTION) / 2 / Placement.SQUARE);
        winding(s, t.primary(), first, -1);
        double bottom = top + height;
        return s.line(Outline.line(-4, top - 4, -4, bottom + 4), Weight.SYMBOL)
                .line(Outline.line(4, top - 4, 4, bottom + 4), Weight.SYMBOL)
                .solid(-22, top - 5, 22, bottom + 5)
                .leg("", 0, top, 0, bottom, height)
                .leg("cutout", -40, first, -20, first, 0);
    }

    /** One winding from {@code top} down, its humps towards the core; gives where it ends. */
    private static double winding(Symbol s, Transformer.Winding winding, double top, int side) {
        int sections = winding.nets().size() - 1;
        double bottom = top + sections * (double) SECTION;
        double line = side * 20;
        Outline.Place upright = (x, y) -> new double[] {line + side * y, x};
        s.line(Outline.humps(top, bottom, 0, 4 * sections).mapped(upright), Weight.SYMBOL)
                .leg(winding.name(), line, top, line, bottom, bottom - top);
        for (int tap = 0; tap <= sections; tap++) {
            double y = top + tap * (double) SECTION;
            s.line(Outline.line(line, y, side * 40.0, y), Weight.WIRE)
                    .port(
                            winding.name() + "." + (tap + 1),
                            winding.nets().get(tap).name(),
                            side * 40.0,
                            y,
                            side > 0 ? Side.RIGHT : Side.LEFT);
        }
        if (side > 0) {
            s.text(
                    Symbols.value(winding.volts()),
                    28,
                    (sections > 1 ? top + SECTION / 2.0 : (top + bottom) / 2) + 5,
                    Label.Anchor.START,
                    Label.Role.NOTE);
        }
        return bottom;
    }
}
