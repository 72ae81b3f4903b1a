package fusetale.fault;

import static fusetale.fault.AmountRange.OPENED;
import static fusetale.fault.AmountRange.SHORTED;
import static fusetale.fault.AmountRange.leak;
import static fusetale.fault.AmountRange.ratio;
import static fusetale.fault.FailureMode.LEAKY;
import static fusetale.fault.FailureMode.OPEN;
import static fusetale.fault.FailureMode.SHORT;
import static fusetale.fault.FailureMode.SHORTED_TURNS;

import fusetale.circuit.Circuit;
import fusetale.circuit.Net;
import fusetale.circuit.Rewiring;
import fusetale.circuit.Transformer;
import fusetale.circuit.Transformer.Magnetics;
import fusetale.circuit.Transformer.Winding;
import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Mains transformers. Places are the windings' names. Shares: FMD-91, "transformer": open .42, short .42, change .16 (from
 * memory), shorts divided between whole windings and some of their turns. A thermal cut-out, where one is buried in the
 * winding, lies in series with the primary; its share is judgement, since most transformers of the time have none.
 *
 * <p>Shorted turns, with a share k of a winding's turns left: the winding keeps k of its volts and ohms, and the other 1 − k
 * become a winding of their own on the same core, joined end to end. Fewer turns on the primary also raise the volts a turn:
 * its rated volts × k are what k of its turns stand, and the magnetising current goes with 1/k. Taps then divide what is
 * left evenly. Ideal-transformer relations; any textbook on machines.
 *
 * <p>Leaky: between the first pins of a secondary and of the primary.
 */
final class TransformerFailures implements Failures<Transformer> {
    private static final String PRIMARY = "primary";

    /** Place of the thermal cut-out, in series with the primary's first pin. */
    static final String CUT_OUT = "cutout";

    /** What joins the shorted turns [Ω]: far below their own resistance, which limits the current. */
    private static final double WELD_OHMS = 1e-3;

    @Override
    public String kind() {
        return "transformer";
    }

    @Override
    public List<FaultForm> forms(Transformer t) {
        FailureRate rate = FailureRate.TRANSFORMER;
        FormList list = new FormList(t.name(), kind());
        for (Winding w : t.windings()) {
            String words = w.name().equals(t.primary().name()) ? PRIMARY : "winding " + w.name();
            list.at(w.name(), words, OPEN, OPENED, rate.share(0.42))
                    .at(w.name(), words, SHORT, SHORTED, rate.share(0.10))
                    .at(w.name(), words, SHORTED_TURNS, ratio(0.95, 0.05, 0.999), rate.share(0.32));
            if (!w.name().equals(t.primary().name())) {
                list.at(w.name(), words, LEAKY, leak(100e3), rate.share(0.16));
            }
        }
        return list.at(CUT_OUT, "thermal cut-out", OPEN, OPENED, rate.judged(0.1))
                .list();
    }

    @Override
    public boolean clash(Fault a, Fault b) {
        return a.place().equals(b.place()) && a.mode() != LEAKY && b.mode() != LEAKY;
    }

    @Override
    public Circuit apply(Failing<Transformer> f) {
        Transformer t = f.now();
        if (f.fault().place().equals(CUT_OUT)) {
            return f.inSeries(t, t.primary().name() + ".1", f.amountSi());
        }
        Winding w = winding(t, f.fault().place());
        return switch (f.fault().mode()) {
            case OPEN -> open(f, w);
            case SHORT -> f.across(w.nets().get(0), last(w));
            case LEAKY -> f.across(w.nets().get(0), t.primary().nets().get(0));
            case SHORTED_TURNS -> shortedTurns(f, w);
            default -> throw f.unlisted();
        };
    }

    /** A break changes nothing of what it and the primary are rated for, where that follows from its ohms. */
    private static Circuit open(Failing<Transformer> f, Winding w) {
        Transformer t = f.now();
        Transformer rated = with(t, rated(t, t.primary()), t.magnetics());
        Winding broken = winding(rated(t, w), w.volts(), f.exactly(Unit.OHM));
        return f.replacedBy(with(rated, broken, t.magnetics()));
    }

    private static Winding rated(Transformer t, Winding w) {
        return new Winding(w.name(), w.nets(), w.volts(), w.ohms(), new Quantity(t.ratedAmps(w), Unit.AMPERE));
    }

    private static Circuit shortedTurns(Failing<Transformer> f, Winding w) {
        Transformer t = f.now();
        double left = f.amountSi();
        boolean primary = w.name().equals(t.primary().name());
        Winding rest = winding(w, times(w.volts(), left), w.ohms().times(left));
        Transformer fewer = with(t, rest, primary ? magnetising(t.magnetics(), 1 / left) : t.magnetics());
        // a secondary's volts are those at rated load, the primary's those of its turns
        double loaded = primary ? 1 / (1 + t.magnetics().regulation().si()) : 1;
        Net end = last(w);
        Net start = new Net(f.label() + "~");
        Winding dead = new Winding(
                w.name() + "~shorted",
                List.of(start, end),
                times(w.volts(), (1 - left) * loaded),
                w.ohms().times(1 - left),
                w.ratedAmps());
        List<Winding> secondaries = new ArrayList<>(fewer.secondaries());
        secondaries.add(dead);
        Circuit circuit =
                f.replacedBy(new Transformer(t.name(), fewer.primary(), secondaries, fewer.magnetics(), t.about()));
        return Rewiring.across(circuit, f.label(), start, end, WELD_OHMS);
    }

    private static Winding winding(Transformer t, String name) {
        return t.windings().stream()
                .filter(w -> w.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static Net last(Winding w) {
        return w.nets().get(w.nets().size() - 1);
    }

    private static Quantity times(Quantity q, double factor) {
        return new Quantity(q.si() * factor, q.unit());
    }

    private static Winding winding(Winding w, Quantity volts, Toleranced ohms) {
        return new Winding(w.name(), w.nets(), volts, ohms, w.ratedAmps());
    }

    private static Magnetics magnetising(Magnetics m, double factor) {
        return new Magnetics(m.regulation(), times(m.magnetisingAmps(), factor), m.coreLossWatts(), m.leakage());
    }

    private static Transformer with(Transformer t, Winding changed, Magnetics magnetics) {
        List<Winding> secondaries = t.secondaries().stream()
                .map(w -> w.name().equals(changed.name()) ? changed : w)
                .toList();
        Winding primary = t.primary().name().equals(changed.name()) ? changed : t.primary();
        return new Transformer(t.name(), primary, secondaries, magnetics, t.about());
    }
}
