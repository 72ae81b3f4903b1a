package fusetale.bench;

import fusetale.quantity.Spelling;
import java.util.Collection;

/** An arrangement that does not fit its circuit; the message tells all that is wrong and what would fit. */
public final class UnfitArrangement extends Exception {
    private static final long serialVersionUID = 1;

    /** With a message for the person who asked. */
    public UnfitArrangement(String message) {
        super(message);
    }

    /** "; did you mean F201?", or "; there is F201, F202" where nothing comes near, or "; there is none". */
    static String advice(String written, Collection<String> known) {
        return Spelling.nearest(written, known)
                .map(name -> "; did you mean " + name + "?")
                .orElseGet(() -> known.isEmpty() ? "; there is none" : "; there is " + String.join(", ", known));
    }
}
