package fusetale.desk.card;

import fusetale.circuit.Circuit;
import fusetale.circuit.Part;
import fusetale.explore.Words;
import fusetale.fault.Catalogue;
import fusetale.fault.Fault;
import fusetale.fault.FaultForm;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.sentence.SentencePrinter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * What a card says of a part, a connector or the mains.
 *
 * @param name designator
 * @param kind what it is, in a word
 * @param about what such a part is, in a sentence or two
 * @param here what it does here; may be empty
 * @param ways how it fails, the most common first
 */
public record PartCard(String name, String kind, String about, String here, List<Way> ways) {
    private static final Words WORDS = Words.of(PartCard.class);

    /** Copies the list. */
    public PartCard {
        ways = List.copyOf(ways);
    }

    /**
     * One way to fail.
     *
     * @param form which
     * @param line what to type to suppose it
     * @param words how the sentence says it
     * @param happened what happened inside the part
     * @param confirm how the trade makes sure
     * @param supposed whether it is supposed already
     */
    public record Way(FaultForm form, String line, String words, String happened, String confirm, boolean supposed) {}

    /**
     * The card of a designator, or of a connector's pin, {@code J1.3}.
     *
     * @param place where it stands and what is marked on it, as the drawing's text twin says it
     */
    public static PartCard of(Circuit board, String name, String place, Supposition supposed) {
        List<FaultForm> forms = new ArrayList<>(forms(board, name));
        forms.sort(Comparator.comparingDouble(FaultForm::priorRatio).reversed());
        List<Way> ways = new ArrayList<>();
        for (FaultForm form : forms) {
            ways.add(new Way(
                    form,
                    SentencePrinter.compact(form.usual()),
                    clause(board, form.usual()),
                    form.telling().happened(),
                    form.telling().confirmation(),
                    supposed.faults().stream().anyMatch(form::covers)));
        }
        String kind = forms.isEmpty() ? "" : forms.get(0).telling().kind();
        String note =
                sentence(board.part(name).map(Part::about).map(a -> a.note()).orElse(""));
        String here = note.isEmpty() ? place : place.isEmpty() ? note : WORDS.say("here", place, note);
        return new PartCard(name, kind, about(kind), here, ways);
    }

    /** Failures of a part, or of one pin of a connector. */
    private static List<FaultForm> forms(Circuit board, String name) {
        int dot = name.indexOf('.');
        if (dot < 0) {
            return Catalogue.possible(board, name);
        }
        String pin = name.substring(dot + 1);
        return Catalogue.possible(board, name.substring(0, dot)).stream()
                .filter(f -> f.place().equals(pin))
                .toList();
    }

    private static String clause(Circuit board, Fault fault) {
        try {
            return new SentencePrinter(board).clause(fault);
        } catch (UnfitSupposition e) {
            throw new IllegalStateException("the catalogue offers what does not fit", e);
        }
    }

    /** A note of a circuit file begins as its writer liked. */
    private static String sentence(String note) {
        return note.isEmpty() ? note : note.substring(0, 1).toUpperCase(Locale.ROOT) + note.substring(1);
    }

    private static String about(String kind) {
        String key = "kind." + kind.replace(' ', '-');
        return WORDS.bundle().containsKey(key) ? WORDS.say(key) : "";
    }
}
