package fusetale.sentence;

import fusetale.circuit.Circuit;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.fault.Swap;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Writes suppositions, as a sentence and compactly. {@link SentenceParser} reads back exactly what was written. Immutable.
 */
public final class SentencePrinter {
    private final Circuit circuit;

    /** A printer for the parts of one circuit. */
    public SentencePrinter(Circuit circuit) {
        this.circuit = circuit;
    }

    /**
     * "Suppose BR201 leg 1 is shorted and F201 holds a 25 A fuse." Swaps come first, as they are made first.
     *
     * @throws UnfitSupposition where a fault is none that the circuit can have
     */
    public String sentence(Supposition supposition) throws UnfitSupposition {
        return supposition.isNothing()
                ? "Suppose nothing."
                : "Suppose " + String.join(" and ", clauses(supposition)) + ".";
    }

    /**
     * Its clauses, swaps first.
     *
     * @throws UnfitSupposition where a fault is none that the circuit can have
     */
    public List<String> clauses(Supposition supposition) throws UnfitSupposition {
        List<String> clauses = new ArrayList<>();
        for (Swap swap : supposition.swaps()) {
            clauses.add(SwapWords.clause(swap));
        }
        for (Fault fault : supposition.faults()) {
            clauses.add(clause(fault));
        }
        return clauses;
    }

    /**
     * "BR201 leg 1 is shorted".
     *
     * @throws UnfitSupposition where the circuit cannot have this fault
     */
    public String clause(Fault fault) throws UnfitSupposition {
        FaultForm form = form(fault);
        Quantity amount = fault.amount();
        return clause(
                form,
                amount == null
                        ? form.phrase().plain()
                        : form.phrase().measured().replace("{}", said(amount)));
    }

    private static String clause(FaultForm form, String says) {
        return form.placeWords().isEmpty()
                ? form.named() + " " + says
                : form.named() + " " + form.placeWords() + " " + says;
    }

    /**
     * Its clauses as somebody says them who concludes rather than measures: amounts that do not matter are left out, others are
     * given with two digits: {@code R2 is open}, {@code R2 has drifted, about × 1.6}.
     *
     * @throws UnfitSupposition where a fault is none that the circuit can have
     */
    public List<String> roughly(Supposition supposition) throws UnfitSupposition {
        List<String> clauses = new ArrayList<>();
        for (Swap swap : supposition.swaps()) {
            clauses.add(SwapWords.clause(swap));
        }
        for (Fault fault : supposition.faults()) {
            clauses.add(clause(form(fault), Roughly.said(form(fault), fault)));
        }
        return clauses;
    }

    /** What a swapped part can have is checked against the part that was swapped in, not here. */
    private FaultForm form(Fault fault) throws UnfitSupposition {
        for (FaultForm form : Catalogue.possible(circuit, fault.part())) {
            if (form.covers(fault)) {
                return form;
            }
        }
        return Catalogue.form(circuit, fault);
    }

    /** {@code BR201.leg1=short F201=wrong-rating:25A}; empty where nothing is supposed. */
    public static String compact(Supposition supposition) {
        return String.join(" ", compactClauses(supposition));
    }

    /** Each swap, then each fault, in short form. */
    public static List<String> compactClauses(Supposition supposition) {
        return Stream.concat(
                        supposition.swaps().stream().map(SwapWords::compact),
                        supposition.faults().stream().map(SentencePrinter::compact))
                .toList();
    }

    /** {@code F201=wrong-rating:25A}. */
    public static String compact(Fault fault) {
        Quantity amount = fault.amount();
        String written = fault.target() + "=" + fault.mode().compact();
        return amount == null ? written : written + ":" + Notation.typed(amount).replace(" ", "");
    }

    /** Ohms are spelt out in a sentence. */
    static String said(Quantity amount) {
        return amount.unit() == Unit.OHM ? Notation.typed(amount) : Notation.format(amount);
    }
}
