package fusetale.sentence;

import fusetale.circuit.Circuit;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

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
     * "Suppose BR201 leg 1 is shorted and F201 holds a 25 A fuse."
     *
     * @throws UnfitSupposition where a fault is none that the circuit can have
     */
    public String sentence(Supposition supposition) throws UnfitSupposition {
        if (supposition.faults().isEmpty()) {
            return "Suppose nothing.";
        }
        List<String> clauses = new ArrayList<>();
        for (Fault fault : supposition.faults()) {
            clauses.add(clause(fault));
        }
        return "Suppose " + String.join(" and ", clauses) + ".";
    }

    /**
     * "BR201 leg 1 is shorted".
     *
     * @throws UnfitSupposition where the circuit cannot have this fault
     */
    public String clause(Fault fault) throws UnfitSupposition {
        FaultForm form = Catalogue.form(circuit, fault);
        Quantity amount = fault.amount();
        String says = amount == null
                ? form.phrase().plain()
                : form.phrase().measured().replace("{}", said(amount));
        return form.placeWords().isEmpty()
                ? form.named() + " " + says
                : form.named() + " " + form.placeWords() + " " + says;
    }

    /** {@code BR201.leg1=short F201=wrong-rating:25A}; empty where nothing is supposed. */
    public static String compact(Supposition supposition) {
        return supposition.faults().stream().map(SentencePrinter::compact).collect(Collectors.joining(" "));
    }

    /** {@code F201=wrong-rating:25A}. */
    public static String compact(Fault fault) {
        Quantity amount = fault.amount();
        String written = fault.target() + "=" + fault.mode().compact();
        return amount == null ? written : written + ":" + Notation.typed(amount).replace(" ", "");
    }

    /** Ohms are spelt out in a sentence. */
    private static String said(Quantity amount) {
        return amount.unit() == Unit.OHM ? Notation.typed(amount) : Notation.format(amount);
    }
}
