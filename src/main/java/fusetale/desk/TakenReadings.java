package fusetale.desk;

import fusetale.bench.Meter;
import fusetale.desk.state.DeskModel;
import fusetale.explore.Words;
import fusetale.match.ReadingsFile;
import java.nio.file.Path;
import java.util.List;

/** Puts what a file of readings says in the place of what was found so far; one step back takes it away again. */
final class TakenReadings {
    private static final Words WORDS = Words.of(TakenReadings.class);

    private TakenReadings() {}

    /**
     * Takes it.
     *
     * @param read without problems
     * @return what was taken, in words
     */
    static String take(DeskModel model, Path file, ReadingsFile read) {
        String name = String.valueOf(file.getFileName());
        int count = read.findings().size();
        if (count == 0) {
            return WORDS.say("readings.empty", name);
        }
        boolean instead = !model.state().found().isEmpty();
        List<Meter> meters = read.meters();
        Meter present = model.state().sentence().setting().meter();
        model.find(model.foundReader().of(read.findings()), meters.size() == 1 ? meters.get(0) : present);
        StringBuilder said = new StringBuilder(WORDS.say(instead ? "readings.taken.instead" : "readings.taken", name));
        if (read.unmeasured() > 0) {
            said.append(' ').append(WORDS.say("readings.unmeasured", read.unmeasured()));
        }
        if (meters.size() > 1) {
            said.append(' ').append(WORDS.say("readings.meters", present.name()));
        }
        return said.toString();
    }
}
