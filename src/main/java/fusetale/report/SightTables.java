package fusetale.report;

import fusetale.bench.Observation;
import fusetale.explore.ComesAndGoes;
import fusetale.explore.Noticed;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What one sees without a meter, and what comes and goes, as plain text. */
final class SightTables {
    private static final Words WORDS = Words.of(SightTables.class);

    private final Outcome outcome;
    private final Emphasis emphasis;
    private final List<String> lines = new ArrayList<>();

    private SightTables(Outcome outcome, Emphasis emphasis) {
        this.outcome = outcome;
        this.emphasis = emphasis;
    }

    /**
     * Both, with their headings; nothing where there is nothing to tell.
     *
     * @param everything whether to tell all there is to see; else of a healthy machine what strikes, of a supposition where
     *     the two differ
     */
    static List<String> lines(Outcome outcome, Emphasis emphasis, boolean everything) {
        SightTables tables = new SightTables(outcome, emphasis);
        tables.comesAndGoes();
        if (outcome.question().supposition().isNothing()) {
            tables.healthy(everything);
        } else {
            tables.supposed(everything);
        }
        return tables.lines;
    }

    private void comesAndGoes() {
        if (outcome.comingAndGoing().isEmpty()) {
            return;
        }
        heading("table.comes");
        TextTable table = new TextTable(
                TextTable.Column.left(WORDS.say("head.point")),
                TextTable.Column.left(WORDS.say("head.function")),
                TextTable.Column.left(WORDS.say("head.comes")));
        for (ComesAndGoes each : outcome.comingAndGoing()) {
            table.row(
                    false,
                    Pairs.name(outcome.question().healthy(), each.check()),
                    each.check().function().words(),
                    WORDS.say("comes", each.good().shows(), each.bad().shows()));
        }
        lines.addAll(table.lines(emphasis));
    }

    /** Parts of which there is the same to say. */
    private record Said(Observation.Aspect what, String asBuilt, String asSupposed) {}

    private Map<Said, List<String>> gathered(boolean everything, boolean alone) {
        Map<Said, List<String>> gathered = new LinkedHashMap<>();
        for (Noticed each : outcome.observations()) {
            if (everything || (alone ? each.notable() : each.differs())) {
                gathered.computeIfAbsent(
                                new Said(each.what(), each.asBuilt(), each.asSupposed()), k -> new ArrayList<>())
                        .add(each.part());
            }
        }
        return gathered;
    }

    private void healthy(boolean everything) {
        Map<Said, List<String>> gathered = gathered(everything, true);
        if (gathered.isEmpty()) {
            return;
        }
        heading("table.seen");
        TextTable table = new TextTable(
                TextTable.Column.left(WORDS.say("head.what")),
                TextTable.Column.left(WORDS.say("head.seen")),
                TextTable.Column.left(WORDS.say("head.parts")));
        gathered.forEach(
                (said, parts) -> table.row(false, said.what().words(), said.asBuilt(), String.join(", ", parts)));
        lines.addAll(table.lines(emphasis));
    }

    private void supposed(boolean everything) {
        Map<Said, List<String>> gathered = gathered(everything, false);
        if (gathered.isEmpty()) {
            return;
        }
        heading("table.seen");
        TextTable table = new TextTable(
                TextTable.Column.left(WORDS.say("head.what")),
                TextTable.Column.left(WORDS.say("head.built")),
                TextTable.Column.left(WORDS.say("head.supposed")),
                TextTable.Column.left(WORDS.say("head.parts")));
        gathered.forEach((said, parts) -> table.row(
                !said.asBuilt().equals(said.asSupposed()),
                said.what().words(),
                said.asBuilt(),
                said.asSupposed(),
                String.join(", ", parts)));
        lines.addAll(table.lines(emphasis));
    }

    private void heading(String key) {
        lines.add("");
        lines.add(emphasis.strong(WORDS.say(key)));
    }
}
