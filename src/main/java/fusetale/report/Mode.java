package fusetale.report;

import fusetale.circuit.Circuit;
import fusetale.fault.AmountRange;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.UnfitSupposition;
import fusetale.quantity.Notation;
import fusetale.quantity.NotationException;
import fusetale.quantity.Quantity;
import fusetale.quantity.Shares;
import fusetale.sentence.SentencePrinter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One way a part can fail, with what a list shows of it.
 *
 * @param form what the catalogue says
 * @param sentence how a sentence says it: {@code BR201 leg 1 is shorted}
 * @param shareRatio how likely it is among the failures of its part, 0 to 1
 */
public record Mode(FaultForm form, String sentence, double shareRatio) {
    /** All failures of a part, the likeliest first; alike in the order of the catalogue. */
    public static List<Mode> of(Circuit circuit, String part) {
        List<FaultForm> forms = Catalogue.possible(circuit, part);
        double all = forms.stream().mapToDouble(FaultForm::priorRatio).sum();
        SentencePrinter printer = new SentencePrinter(circuit);
        List<Mode> modes = new ArrayList<>();
        for (FaultForm form : forms) {
            try {
                modes.add(new Mode(form, printer.clause(form.usual()), form.priorRatio() / all));
            } catch (UnfitSupposition e) {
                throw new IllegalStateException("a failure that is listed does not fit its part", e);
            }
        }
        modes.sort(Comparator.comparingDouble(Mode::shareRatio).reversed());
        return modes;
    }

    /** The short form, as it is typed. */
    public String typed() {
        return SentencePrinter.compact(form.usual());
    }

    /** How likely it is, in words: "20 of 100". */
    public String likely() {
        return Shares.said(shareRatio);
    }

    /** The short form with its usual amount, in two figures where those lie within the bounds. */
    String typedWithAmount(AmountRange range) {
        Fault fault = form.of(usual(range));
        return SentencePrinter.compact(fault);
    }

    private static Quantity usual(AmountRange range) {
        Quantity exact = new Quantity(range.usualSi(), range.unit());
        try {
            Quantity rounded = Notation.parse(Notation.format(exact, 2), range.unit());
            return range.holds(rounded) ? rounded : exact;
        } catch (NotationException e) {
            return exact;
        }
    }
}
