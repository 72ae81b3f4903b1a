package fusetale.explore;

import fusetale.circuit.Circuit;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;

/** Says what of a part is meant. */
public final class Places {
    private static final Words WORDS = Words.of(Places.class);

    private Places() {}

    /** {@code winding sol}, {@code pin 3}: the words in which failures of this place are told; empty for the whole part. */
    public static String words(Circuit circuit, String part, String place) {
        return Catalogue.possible(circuit, part).stream()
                .filter(f -> f.place().equals(place))
                .map(FaultForm::placeWords)
                .filter(words -> !words.isEmpty())
                .findFirst()
                .orElseGet(() -> place.replace("~shorted", WORDS.say("shorted-turns")));
    }
}
