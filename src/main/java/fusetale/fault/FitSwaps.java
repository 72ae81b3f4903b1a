package fusetale.fault;

import fusetale.circuit.Circuit;
import fusetale.circuit.OpAmp;
import fusetale.circuit.Part;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.List;

/** Whether swaps fit a circuit, and what to say where they do not. */
final class FitSwaps {
    private static final double LEAST_FARADS = 1e-12;
    private static final double MOST_FARADS = 10;
    private static final double LEAST_OHMS = 1e-3;
    private static final double MOST_OHMS = 100e6;
    private static final double LEAST_AMPS = 0.02;
    private static final double MOST_AMPS = 100;

    private FitSwaps() {}

    /** Throws where a swap fits nothing, two of them cannot both hold, or a fault says otherwise. */
    static void check(Circuit circuit, Supposition supposition) throws UnfitSupposition {
        List<Swap> swaps = supposition.swaps();
        for (Swap swap : swaps) {
            fits(circuit, swap);
            for (Fault fault : supposition.faults()) {
                if (saysOtherwise(swap, fault)) {
                    throw new UnfitSupposition(said(swap) + " and " + fault.target() + "="
                            + fault.mode().compact() + " contradict each other; keep one of them");
                }
            }
        }
        for (int i = 0; i < swaps.size(); i++) {
            for (int j = i + 1; j < swaps.size(); j++) {
                together(swaps.get(i), swaps.get(j));
            }
        }
    }

    /** Which link is in the clips is said once. */
    private static boolean saysOtherwise(Swap swap, Fault fault) {
        return swap.part().equals(fault.part())
                && swap.fitting() instanceof Fitting.Link
                && (fault.mode() == FailureMode.WRONG_RATING || fault.mode() == FailureMode.MISSING);
    }

    private static void together(Swap a, Swap b) throws UnfitSupposition {
        if (!a.part().equals(b.part()) || !a.fitting().sameAspect(b.fitting())) {
            return;
        }
        throw new UnfitSupposition(
                a.equals(b)
                        ? said(a) + " is said twice; say it once"
                        : said(a) + " and " + said(b) + " contradict each other; keep one of them");
    }

    private static void fits(Circuit circuit, Swap swap) throws UnfitSupposition {
        String part = swap.part();
        if (circuit.part(part).isEmpty()) {
            throw new UnfitSupposition(
                    "no part '" + part + "' in " + circuit.name() + Fit.nearest(part, Catalogue.designators(circuit)));
        }
        Replacements may = Replacements.of(circuit, part)
                .orElseThrow(() -> new UnfitSupposition("nothing can be fitted in place of " + part));
        Fitting fitting = swap.fitting();
        if (fitting instanceof Fitting.Model model) {
            model(circuit, may, model.name());
            room(circuit, swap);
        } else if (fitting instanceof Fitting.Mounted mounted) {
            demand(may.mounted(), part, Replacements.compact(mounted.mounting()), may);
        } else if (fitting instanceof Fitting.Value value) {
            Quantity rating = value.rating();
            demand(value.value().unit() == may.value(), part, value.value().toString(), may);
            demand(rating == null || rating.unit() == may.rating(), part, String.valueOf(rating), may);
            boolean farads = value.value().unit() == Unit.FARAD;
            within(part, value.value(), farads ? LEAST_FARADS : LEAST_OHMS, farads ? MOST_FARADS : MOST_OHMS);
        } else if (fitting instanceof Fitting.Link link) {
            demand(may.link(), part, link.amps().toString(), may);
            within(part, link.amps(), LEAST_AMPS, MOST_AMPS);
        }
    }

    private static void model(Circuit circuit, Replacements may, String name) throws UnfitSupposition {
        if (may.models().contains(name)) {
            return;
        }
        String part = may.part();
        String other = Replacements.kindOfModel(name).orElse("");
        String own = Replacements.kindOfPart(circuit, part).orElse("");
        String why = other.isEmpty()
                ? "there is no part model '" + name + "'" + Fit.nearest(name, may.models())
                : name + " is a " + other + (own.isEmpty() ? "" : ", and " + part + " is a " + own);
        throw new UnfitSupposition(why + ". Allowed: " + String.join(", ", may.words()));
    }

    /** An operational amplifier wants some of what lies between its rails for itself. */
    private static void room(Circuit circuit, Swap swap) throws UnfitSupposition {
        Part fitted = Swapping.done(circuit, List.of(swap)).part(swap.part()).orElseThrow();
        if (fitted instanceof OpAmp amplifier && !(amplifier.lowestVolts() < amplifier.highestVolts())) {
            throw new UnfitSupposition(said(swap) + ": its output has no room between the rails of " + swap.part()
                    + "; choose one that comes closer to them");
        }
    }

    private static void demand(boolean fits, String part, String what, Replacements may) throws UnfitSupposition {
        if (!fits) {
            throw new UnfitSupposition(part + " cannot be '" + what + "'. Allowed: " + String.join(", ", may.words()));
        }
    }

    private static void within(String part, Quantity value, double low, double high) throws UnfitSupposition {
        if (!(value.si() >= low && value.si() <= high)) {
            throw new UnfitSupposition(part + " can be " + Notation.format(new Quantity(low, value.unit())) + " to "
                    + Notation.format(new Quantity(high, value.unit())) + ", not " + value);
        }
    }

    private static String said(Swap swap) {
        Fitting fitting = swap.fitting();
        String what = "";
        if (fitting instanceof Fitting.Model model) {
            what = model.name();
        } else if (fitting instanceof Fitting.Mounted mounted) {
            what = Replacements.compact(mounted.mounting());
        } else if (fitting instanceof Fitting.Value value) {
            what = Notation.typed(value.value()).replace(" ", "");
        } else if (fitting instanceof Fitting.Link link) {
            what = Notation.typed(link.amps()).replace(" ", "");
        }
        return swap.part() + "=" + what;
    }
}
