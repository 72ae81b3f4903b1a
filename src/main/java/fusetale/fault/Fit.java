package fusetale.fault;

import fusetale.circuit.Circuit;
import fusetale.quantity.Quantity;
import fusetale.quantity.Spelling;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** Whether a supposition fits a circuit, and what to say where it does not. */
final class Fit {
    private Fit() {}

    /** Throws where a fault fits nothing, or two of them cannot both hold. */
    static void check(Circuit drawn, Supposition supposition) throws UnfitSupposition {
        List<Fault> faults = supposition.faults();
        FitSwaps.check(drawn, supposition);
        Circuit circuit = Swapping.done(drawn, supposition.swaps());
        for (Fault fault : faults) {
            form(circuit, fault);
        }
        for (int i = 0; i < faults.size(); i++) {
            for (int j = i + 1; j < faults.size(); j++) {
                together(circuit, faults.get(i), faults.get(j));
            }
        }
    }

    private static void together(Circuit circuit, Fault a, Fault b) throws UnfitSupposition {
        if (!a.part().equals(b.part())) {
            return;
        }
        FaultForm formA = form(circuit, a);
        if (formA.covers(b)) {
            throw new UnfitSupposition(said(formA) + " is said twice; say it once");
        }
        Failures<?> failures = Subject.find(circuit, a.part()).orElseThrow().failures();
        if (failures.clash(a, b) || failures.clash(b, a)) {
            throw new UnfitSupposition(
                    said(formA) + " and " + said(form(circuit, b)) + " contradict each other; keep one of them");
        }
    }

    /** The form of a fault, its amount checked. */
    static FaultForm form(Circuit circuit, Fault fault) throws UnfitSupposition {
        Optional<Subject<?>> subject = Subject.find(circuit, fault.part());
        if (subject.isEmpty()) {
            throw new UnfitSupposition("no part '" + fault.part() + "' in " + circuit.name()
                    + nearest(fault.part(), Catalogue.designators(circuit)));
        }
        List<FaultForm> forms = subject.get().forms();
        for (FaultForm form : forms) {
            if (form.covers(fault)) {
                checkAmount(form, fault);
                return form;
            }
        }
        throw unknownForm(fault, forms);
    }

    private static UnfitSupposition unknownForm(Fault fault, List<FaultForm> forms) {
        List<FaultForm> there =
                forms.stream().filter(f -> f.place().equals(fault.place())).toList();
        if (there.isEmpty() && !fault.place().isEmpty()) {
            List<String> places = forms.stream()
                    .map(FaultForm::place)
                    .filter(p -> !p.isEmpty())
                    .distinct()
                    .toList();
            return new UnfitSupposition(
                    places.isEmpty()
                            ? fault.part() + " has no places; write " + fault.part() + "="
                                    + fault.mode().compact()
                            : fault.part() + " has no '" + fault.place() + "'" + nearest(fault.place(), places)
                                    + ". Allowed: " + String.join(", ", places));
        }
        List<String> elsewhere = forms.stream()
                .filter(f -> f.mode() == fault.mode())
                .map(FaultForm::target)
                .toList();
        if (!elsewhere.isEmpty()) {
            return new UnfitSupposition(fault.target() + " cannot be '"
                    + fault.mode().compact() + "'; " + String.join(", ", elsewhere) + " can");
        }
        List<String> modes = (there.isEmpty() ? forms : there)
                .stream().map(f -> f.mode().compact()).distinct().toList();
        return new UnfitSupposition(
                fault.target() + " cannot be '" + fault.mode().compact() + "'"
                        + nearest(fault.mode().compact(), modes) + ". Allowed: " + String.join(", ", modes));
    }

    private static void checkAmount(FaultForm form, Fault fault) throws UnfitSupposition {
        Quantity amount = fault.amount();
        AmountRange range = form.amount();
        if (amount == null) {
            return;
        }
        String what = fault.target() + "=" + fault.mode().compact();
        if (range == null) {
            throw new UnfitSupposition(what + " takes no amount, not " + amount);
        }
        if (!range.holds(amount)) {
            throw new UnfitSupposition(what + " says what there is now: " + new Quantity(range.lowSi(), range.unit())
                    + " to " + new Quantity(range.highSi(), range.unit()) + ", not " + amount);
        }
    }

    /** The amount of a fault that fits, SI: its own, else the usual one, else 0. */
    static double amount(Circuit circuit, Fault fault) throws UnfitSupposition {
        AmountRange range = form(circuit, fault).amount();
        Quantity said = fault.amount();
        if (said != null) {
            return said.si();
        }
        return range == null ? 0 : range.usualSi();
    }

    private static String said(FaultForm form) {
        return form.named() + (form.placeWords().isEmpty() ? "" : " " + form.placeWords()) + " "
                + form.phrase().plain();
    }

    static String nearest(String found, Collection<String> allowed) {
        return Spelling.nearest(found, allowed)
                .map(word -> "; nearest: '" + word + "'")
                .orElse("");
    }
}
