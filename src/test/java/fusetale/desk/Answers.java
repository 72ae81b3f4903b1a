package fusetale.desk;

import fusetale.aftermath.Aftermath;
import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitReader;
import fusetale.explore.Answer;
import fusetale.explore.Explorer;
import fusetale.explore.Outcome;
import fusetale.explore.Progress;
import fusetale.explore.Question;
import fusetale.sentence.SentenceException;
import fusetale.sentence.SentenceParser;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;

/** Outcomes of shipped circuits, as the window would get them. */
public final class Answers {
    private static final Question.Options OPTIONS = new Question.Options(8, 1, 3, Aftermath.Settings.USUAL);

    private Answers() {}

    /** A shipped circuit. */
    public static Circuit circuit(String name) {
        return Objects.requireNonNull(CircuitReader.withShippedParts()
                .read(Path.of("circuits", name + ".yaml"))
                .circuit());
    }

    /** What follows with the power on or off. */
    public static Outcome outcome(Circuit circuit, boolean powered, String... faults) {
        try {
            Arrangement arrangement = powered ? Arrangement.powered(circuit) : Arrangement.unpowered();
            Question question = new Question(
                    circuit,
                    new SentenceParser(circuit).parse(List.of(faults)),
                    arrangement,
                    Meter.trueRms4000(),
                    Check.all(circuit, powered),
                    OPTIONS);
            return ((Answer.Answered) new Explorer(1).answer(question, Progress.SILENT, () -> false)).outcome();
        } catch (SentenceException e) {
            throw new IllegalArgumentException(e);
        }
    }

    /** First Light with its dropper open, power on and off; worked out once. */
    public static List<Outcome> dropperOpen() {
        return DropperOpen.OUTCOMES;
    }

    /** First Light with a leg shorted behind a link of 10 A, power on; worked out once. */
    public static Outcome shortedLeg() {
        return ShortedLeg.OUTCOME;
    }

    private static final class DropperOpen {
        private static final List<Outcome> OUTCOMES = List.of(
                outcome(circuit("first-light"), true, "R2=open"), outcome(circuit("first-light"), false, "R2=open"));
    }

    private static final class ShortedLeg {
        private static final Outcome OUTCOME =
                outcome(circuit("first-light"), true, "BR1.leg1=short", "F1=wrong-rating:10A");
    }
}
