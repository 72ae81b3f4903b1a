package fusetale.report;

import fusetale.explore.Compared;
import fusetale.explore.Outcome;
import fusetale.explore.Question;
import fusetale.explore.SeriesLamp;
import fusetale.explore.StagedStart;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** A staged start-up as lines of text: the stages with their verdicts, then what to measure at each. */
public final class StageTables {
    private static final Words WORDS = Words.of(StageTables.class);
    /** Readings told of a stage; the others are in the JSON. */
    private static final int MOST_READINGS = 12;

    private final StagedStart start;
    private final boolean healthy;
    private final Emphasis emphasis;
    private final List<String> lines = new ArrayList<>();

    private StageTables(StagedStart start, boolean healthy, Emphasis emphasis) {
        this.start = start;
        this.healthy = healthy;
        this.emphasis = emphasis;
    }

    /**
     * The lines.
     *
     * @param question what was asked, with the arrangement of the last stage
     * @param sentence the supposition as a sentence; empty for a healthy machine
     */
    public static List<String> of(StagedStart start, Question question, String sentence, Emphasis emphasis) {
        boolean healthy = question.supposition().isNothing();
        StageTables all = new StageTables(start, healthy, emphasis);
        if (!healthy) {
            all.lines.addAll(Tables.wrapped(sentence));
        }
        all.lines.addAll(Tables.wrapped(Settings.words(question)));
        all.verdicts();
        for (int k = 0; k < start.stages().size(); k++) {
            all.stage(k + 1, start.stages().get(k));
        }
        all.lines.add("");
        all.lines.add(emphasis.strong(WORDS.say("table.cautions")));
        all.lines.addAll(Tables.wrapped(WORDS.say("caution.on")));
        all.lines.addAll(Tables.wrapped(WORDS.say("caution.estimates")));
        return all.lines;
    }

    private void verdicts() {
        lines.add("");
        lines.add(emphasis.strong(WORDS.say("stages")));
        lines.addAll(Tables.wrapped(WORDS.say("stages.plug-out")));
        boolean lamp = start.last().outcome().bench().seriesLamp() != null;
        List<TextTable.Column> columns = new ArrayList<>(List.of(
                TextTable.Column.right(""),
                TextTable.Column.left(WORDS.say("head.stage")),
                TextTable.Column.left(WORDS.say("head.in"))));
        if (lamp) {
            columns.add(TextTable.Column.left(WORDS.say("head.lamp")));
        }
        if (!healthy) {
            columns.add(TextTable.Column.right(WORDS.say("head.count")));
        }
        columns.add(TextTable.Column.left(WORDS.say("head.verdict")));
        TextTable table = new TextTable(columns.toArray(TextTable.Column[]::new));
        for (int k = 0; k < start.stages().size(); k++) {
            StagedStart.Stage stage = start.stages().get(k);
            Outcome outcome = stage.outcome();
            List<String> cells = new ArrayList<>(List.of(
                    String.valueOf(k + 1),
                    stage.name(),
                    stage.in().isEmpty() ? WORDS.say("stages.nothing-in") : String.join(", ", stage.in())));
            if (lamp) {
                cells.add(lamp(outcome.bench().seriesLamp()));
            }
            if (!healthy) {
                cells.add(String.valueOf(outcome.moved().size()));
            }
            cells.add(
                    stage.goOn()
                            ? WORDS.say("stages.go")
                            : WORDS.say("stages.stop", String.join("; ", stage.reasons())));
            table.row(!stage.goOn(), cells.toArray(String[]::new));
        }
        lines.addAll(table.lines(emphasis));
        if (!healthy) {
            lines.add(start.firstShown()
                    .map(k -> WORDS.say(
                            "stages.shown", k, start.stages().get(k - 1).name()))
                    .orElseGet(() -> WORDS.say("stages.not-shown")));
        }
    }

    private static String lamp(@Nullable SeriesLamp lamp) {
        if (lamp == null) {
            return WORDS.say("stages.nothing-in");
        }
        SeriesLamp.Glow glow = lamp.asSupposed();
        return glow.brightness().words() + ", " + BenchLines.share(glow.shareRatio());
    }

    private void stage(int number, StagedStart.Stage stage) {
        if (stage.telling().isEmpty()) {
            return;
        }
        lines.add("");
        lines.add(emphasis.strong(WORDS.say("stages.of", number, stage.name())));
        TextTable table = healthy
                ? new TextTable(
                        TextTable.Column.left(WORDS.say("head.point")),
                        TextTable.Column.left(WORDS.say("head.function")),
                        TextTable.Column.right(WORDS.say("head.shows")),
                        TextTable.Column.right(WORDS.say("head.range")),
                        TextTable.Column.left(WORDS.say("head.where")))
                : new TextTable(
                        TextTable.Column.left(WORDS.say("head.point")),
                        TextTable.Column.left(WORDS.say("head.function")),
                        TextTable.Column.right(WORDS.say("head.range")),
                        TextTable.Column.right(WORDS.say("head.built")),
                        TextTable.Column.right(WORDS.say("head.supposed")),
                        TextTable.Column.right(WORDS.say("head.moved")),
                        TextTable.Column.left(WORDS.say("head.where")));
        table.cuttingLast();
        stage.telling().stream().limit(MOST_READINGS).forEach(row -> row(table, stage.outcome(), row));
        lines.addAll(table.lines(emphasis));
        int left = stage.telling().size() - MOST_READINGS;
        if (left > 0) {
            lines.add(WORDS.say("stages.more", left));
        }
    }

    private void row(TextTable table, Outcome outcome, Compared row) {
        String point = Pairs.name(outcome.question().healthy(), row.check());
        String function = row.check().function().words();
        if (healthy) {
            table.row(false, point, function, row.asBuilt().shows(), Figures.range(row), outcome.label(row));
            return;
        }
        table.row(
                !row.tooCloseToTell(),
                point,
                function,
                Figures.range(row),
                row.asBuilt().shows(),
                row.asSupposed().shows(),
                row.moved() >= 10_000 ? WORDS.say("moved.over") : String.format(Locale.ROOT, "%.1f", row.moved()),
                outcome.label(row));
    }
}
