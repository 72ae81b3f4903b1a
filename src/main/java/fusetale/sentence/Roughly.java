package fusetale.sentence;

import fusetale.fault.FailureMode;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.EnumSet;
import java.util.Set;

/** What a fault's amount comes to where it was concluded, not measured: one stands for a range of them. */
final class Roughly {
    private static final MathContext TWO_DIGITS = new MathContext(2, RoundingMode.HALF_UP);

    /** Of these a repairer wants to know how many ohms; of what is shorted, open, leaky or burnt the word says it all. */
    private static final Set<FailureMode> BY_OHMS = EnumSet.of(FailureMode.HIGH_ESR, FailureMode.PARTLY_OPEN);

    private Roughly() {}

    /** {@code is open}, {@code has drifted, about × 1.6}, {@code is dried out to about 30 % left}, {@code has high ESR, about 2 ohm}. */
    static String said(FaultForm form, Fault fault) {
        Quantity amount = fault.amount();
        String plain = form.phrase().plain();
        if (amount == null || (amount.unit() == Unit.OHM && !BY_OHMS.contains(fault.mode()))) {
            return plain;
        }
        if (fault.mode() == FailureMode.WRONG_RATING) {
            // read off its cap
            return form.phrase().measured().replace("{}", SentencePrinter.said(amount));
        }
        String about = "about " + SentencePrinter.said(rounded(amount));
        return fault.mode() == FailureMode.DRIFTED
                ? plain + ", " + about
                : form.phrase().measured().replace("{}", about);
    }

    private static Quantity rounded(Quantity amount) {
        return new Quantity(BigDecimal.valueOf(amount.si()).round(TWO_DIGITS).doubleValue(), amount.unit());
    }
}
