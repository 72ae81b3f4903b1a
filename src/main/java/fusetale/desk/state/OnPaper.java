package fusetale.desk.state;

import fusetale.desk.state.DeskModel.Freshness;
import fusetale.explore.Doubt;
import fusetale.explore.Outcome;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What may leave the window: whole answers to one question alone. A first look knows nothing of what overheats slowly, and paper
 * is read where nobody sees the window.
 *
 * @param shown what is shown
 * @param other the same with the plug out where it is in, and in where it is out; empty where there is none (yet)
 * @param old whether it answers another question than the one that stands now
 */
public record OnPaper(Shown shown, Optional<Shown> other, boolean old) {
    /** What the model has for paper; empty while there is a first look only, or nothing. */
    public static Optional<OnPaper> of(DeskModel model) {
        return model.shownProperty()
                .get()
                .filter(Shown::whole)
                .map(shown -> new OnPaper(
                        shown,
                        model.otherPowerProperty().get().filter(Shown::whole).filter(o -> o.isOtherPowerOf(shown)),
                        model.freshness() != Freshness.FRESH));
    }

    /** The outcome that is shown. */
    public Outcome outcome() {
        return shown.outcome();
    }

    /** With the power off; empty while that is being worked out. */
    public Optional<Outcome> off() {
        return with(false);
    }

    /** With the power on; empty while that is being worked out. */
    public Optional<Outcome> on() {
        return with(true);
    }

    private Optional<Outcome> with(boolean power) {
        return Stream.concat(Stream.of(shown), other.stream())
                .map(Shown::outcome)
                .filter(o -> o.question().arrangement().powerOn() == power)
                .findFirst();
    }

    /** Why not to power up, as far as is known; empty where nothing speaks against it. */
    public String danger() {
        return on().stream()
                .flatMap(o -> o.doubts().stream())
                .filter(d -> d.severity() == Doubt.Severity.DANGER)
                .map(Doubt::text)
                .findFirst()
                .orElse("");
    }
}
