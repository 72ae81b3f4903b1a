package fusetale.desk.consequence;

import fusetale.desk.state.DeskModel;
import fusetale.desk.state.DeskModel.Freshness;
import fusetale.desk.state.Shown;
import fusetale.explore.Compared;
import fusetale.explore.Doubt;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the line under the sentence says, made from the outcome alone.
 *
 * @param danger whether "Do not power up" stands before it
 * @param sentences what it says, the most important first
 * @param old whether it belongs to another sentence
 */
public record Consequence(boolean danger, List<String> sentences, boolean old) {
    private static final Words WORDS = Words.of(Consequence.class);

    /** Copies the list. */
    public Consequence {
        sentences = List.copyOf(sentences);
    }

    /** What to say of what the model shows. */
    public static Consequence of(DeskModel model) {
        Optional<Shown> shown = model.shownProperty().get();
        boolean old = model.freshness() != Freshness.FRESH;
        List<String> said = new ArrayList<>();
        model.refusalProperty().get().ifPresent(r -> said.add(r.text()));
        model.forwardProperty().get().ifPresent(f -> said.add(WORDS.say("after", f.words())));
        if (shown.isEmpty()) {
            if (said.isEmpty()) {
                said.add(WORDS.say("working"));
            }
            return new Consequence(false, said, old);
        }
        if (!said.isEmpty() && model.refusalProperty().get().isPresent()) {
            said.add(WORDS.say("kept"));
        }
        Outcome outcome = shown.get().outcome();
        Optional<Outcome> powered = powered(model, shown.get());
        boolean danger = powered.map(Outcome::doNotPowerUp).orElse(false);
        powered.filter(o -> !outcome.question().arrangement().powerOn())
                .ifPresent(o -> o.doubts().stream()
                        .filter(d -> d.severity() == Doubt.Severity.DANGER)
                        .forEach(d -> said.add(d.text())));
        outcome.doubts().stream()
                .filter(d -> d.severity() != Doubt.Severity.CAUTION)
                .forEach(d -> said.add(d.text()));
        if (said.isEmpty()) {
            said.add(moved(outcome));
        }
        if (!shown.get().whole() && !old) {
            said.add(WORDS.say(model.workingProperty().get().busy() ? "first-look" : "first-look.stopped"));
        }
        return new Consequence(danger, said, old);
    }

    /** The outcome that tells about powering up: with the power off that of the same bench with the plug in. */
    private static Optional<Outcome> powered(DeskModel model, Shown shown) {
        if (shown.outcome().question().arrangement().powerOn()) {
            return Optional.of(shown.outcome());
        }
        return model.otherPowerProperty()
                .get()
                .filter(o -> o.sentence().supposition().equals(shown.sentence().supposition()))
                .map(Shown::outcome);
    }

    private static String moved(Outcome outcome) {
        if (outcome.question().supposition().isNothing()) {
            return WORDS.say("nothing");
        }
        if (outcome.moved().isEmpty()) {
            return WORDS.say("none-moved");
        }
        Compared first = outcome.moved().get(0);
        return WORDS.say(
                "furthest",
                first.check().from(),
                first.check().function().words(),
                first.asSupposed().shows(),
                first.asBuilt().shows());
    }

    /** The same behind something else; a danger stays before it. */
    public Consequence after(String first) {
        List<String> all = new ArrayList<>(sentences);
        all.add(0, first);
        return new Consequence(danger, all, old);
    }

    /** All of it in one line, as a screen reader says it. */
    public String spoken() {
        String all = String.join(" ", sentences);
        return danger ? WORDS.say("danger") + ". " + all : all;
    }
}
