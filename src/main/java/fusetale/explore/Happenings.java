package fusetale.explore;

import fusetale.aftermath.Event;
import fusetale.circuit.Circuit;
import fusetale.fault.Catalogue;
import fusetale.fault.FaultForm;

/** Says what happens to a part. */
public final class Happenings {
    private static final Words WORDS = Words.of(Happenings.class);

    private Happenings() {}

    /** {@code T101 winding sol burns through its insulation: turns short}. */
    public static String words(Circuit circuit, Event event) {
        return subject(circuit, event) + " " + event.harm().words();
    }

    /** {@code T101 winding sol}. */
    public static String subject(Circuit circuit, Event event) {
        String place = place(circuit, event);
        return place.isEmpty() ? event.part() : event.part() + " " + place;
    }

    /** {@code winding sol}, in the words in which the failures of this place are told; empty for the whole part. */
    public static String place(Circuit circuit, Event event) {
        return Catalogue.possible(circuit, event.part()).stream()
                .filter(f -> f.place().equals(event.place()))
                .map(FaultForm::placeWords)
                .filter(words -> !words.isEmpty())
                .findFirst()
                .orElseGet(() -> event.place().replace("~shorted", WORDS.say("shorted-turns")));
    }
}
