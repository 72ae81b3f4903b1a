package fusetale.fault;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The failures of one part while its kind lists them. */
final class FormList {
    private final String part;
    private final String kind;
    private final List<FaultForm> forms = new ArrayList<>();

    FormList(String part, String kind) {
        this.part = part;
        this.kind = kind;
    }

    /** One more failure of the whole part. */
    FormList whole(FailureMode mode, @Nullable AmountRange amount, Prior prior) {
        return at("", "", mode, amount, prior);
    }

    /** One more failure at a place. */
    FormList at(String place, String words, FailureMode mode, @Nullable AmountRange amount, Prior prior) {
        forms.add(new FaultForm(
                part,
                place,
                words,
                mode,
                mode.phrase(),
                amount,
                prior.within(kind, mode),
                Telling.of(kind, place, mode, "")));
        return this;
    }

    /** The last failure said in other words. */
    FormList said(String plain, String measured) {
        FaultForm f = last();
        return instead(f, new Phrase(plain, measured), f.telling());
    }

    /** The last failure told as one of a class of places that have texts of their own. */
    FormList told(String placeClass) {
        FaultForm f = last();
        return instead(
                f,
                f.phrase(),
                Telling.of(kind, placeClass, f.mode(), f.telling().detail()));
    }

    /** The last failure with what its place is, where the place's words do not say it. */
    FormList detailed(String detail) {
        FaultForm f = last();
        return instead(f, f.phrase(), f.telling().detailed(detail));
    }

    private FaultForm last() {
        return forms.get(forms.size() - 1);
    }

    private FormList instead(FaultForm f, Phrase phrase, Telling telling) {
        forms.set(
                forms.size() - 1,
                new FaultForm(f.part(), f.place(), f.placeWords(), f.mode(), phrase, f.amount(), f.prior(), telling));
        return this;
    }

    /** All of them, in the order given. */
    List<FaultForm> list() {
        return List.copyOf(forms);
    }
}
