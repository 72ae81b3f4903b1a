package fusetale.fault;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The failures of one part while its kind lists them. */
final class FormList {
    private final String part;
    private final List<FaultForm> forms = new ArrayList<>();

    FormList(String part) {
        this.part = part;
    }

    /** One more failure of the whole part. */
    FormList whole(FailureMode mode, @Nullable AmountRange amount, double prior) {
        return at("", "", mode, amount, prior);
    }

    /** One more failure at a place. */
    FormList at(String place, String words, FailureMode mode, @Nullable AmountRange amount, double prior) {
        forms.add(new FaultForm(part, place, words, mode, mode.phrase(), amount, prior));
        return this;
    }

    /** The last failure said in other words. */
    FormList said(String plain, String measured) {
        FaultForm f = forms.remove(forms.size() - 1);
        forms.add(new FaultForm(
                f.part(),
                f.place(),
                f.placeWords(),
                f.mode(),
                new Phrase(plain, measured),
                f.amount(),
                f.priorRatio()));
        return this;
    }

    /** All of them, in the order given. */
    List<FaultForm> list() {
        return List.copyOf(forms);
    }
}
