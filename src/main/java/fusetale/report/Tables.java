package fusetale.report;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Stress;
import fusetale.circuit.FuseLink;
import fusetale.explore.Compared;
import fusetale.explore.Doubt;
import fusetale.explore.FuseFate;
import fusetale.explore.Outcome;
import fusetale.explore.Times;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Outcomes as plain text of at most 100 columns. */
public final class Tables {
    private static final Words WORDS = Words.of(Tables.class);
    private static final String MOVED = "◆";
    private static final String CLOSE = "◇";
    private static final int MOST_STRESSES = 10;

    /** Less past a rating than this is within what the mains alone does. */
    private static final double WORTH_TELLING = 1.05;

    private final Outcome outcome;
    private final Emphasis emphasis;
    private final More more;
    private final List<String> lines = new ArrayList<>();

    private Tables(Outcome outcome, Emphasis emphasis, More more) {
        this.outcome = outcome;
        this.emphasis = emphasis;
        this.more = more;
    }

    /**
     * What to tell beyond the usual.
     *
     * @param everySight all there is to see without a meter, not only what strikes, or where the two differ
     * @param stress every figure that has a rating
     * @param aftermath what follows if nobody switches off
     */
    public record More(boolean everySight, boolean stress, boolean aftermath) {
        /** Nothing. */
        public static final More NOTHING = new More(false, false, false);
    }

    /**
     * What a healthy machine shows, with its spread.
     *
     * @param more what to tell beyond the usual
     */
    public static List<String> readings(Outcome outcome, Emphasis emphasis, More more) {
        Tables tables = new Tables(outcome, emphasis, more);
        tables.paragraph(Settings.words(outcome.question()));
        tables.danger();
        tables.healthyTable();
        tables.rest();
        return tables.lines;
    }

    /**
     * As built beside as supposed.
     *
     * @param sentence what is supposed and how the bench is set, as one line
     * @param more what to tell beyond the usual
     */
    public static List<String> suppose(Outcome outcome, String sentence, Emphasis emphasis, More more) {
        Tables tables = new Tables(outcome, emphasis, more);
        tables.danger();
        tables.paragraph(sentence);
        tables.paragraph(Settings.besideSentence(outcome.question()));
        tables.comparedTable();
        tables.lines.addAll(SwapTable.lines(outcome.swaps(), emphasis));
        tables.rest();
        return tables.lines;
    }

    /** Why it must not be powered up, lines of at most 100 columns; none where it may be. */
    public static List<String> dangers(Outcome outcome) {
        return outcome.doubts().stream()
                .filter(d -> d.severity() == Doubt.Severity.DANGER)
                .flatMap(d -> Paragraph.hanging(WORDS.say("danger") + " ", d.text(), TextTable.WIDTH).stream())
                .toList();
    }

    private void rest() {
        lines.addAll(BenchLines.of(outcome, emphasis));
        fuses();
        stresses();
        if (more.stress()) {
            heading("table.strains");
            lines.addAll(StressTable.lines(outcome.strains(), outcome, emphasis));
            paragraph(WORDS.say("table.strains-rest-on", Figures.plain(Stress.AIR_CELSIUS)));
        }
        Aftermath aftermath = outcome.aftermath();
        if (aftermath != null && more.aftermath()) {
            lines.addAll(AftermathTable.lines(outcome.question().healthy(), aftermath, emphasis));
        } else if (more.aftermath() && !outcome.question().arrangement().powerOn()) {
            heading("table.aftermath");
            paragraph(WORDS.say("table.aftermath-off"));
        }
        notes();
        lines.addAll(SightTables.lines(outcome, emphasis, more.everySight()));
        heading("table.cautions");
        outcome.doubts().stream().filter(Doubt::minded).forEach(d -> paragraph(d.text()));
        boolean on = outcome.question().arrangement().powerOn();
        paragraph(WORDS.say(on ? "caution.on" : "caution.off"));
        paragraph(WORDS.say("caution.estimates"));
    }

    /** The line that must not be missed comes first. */
    private void danger() {
        dangers(outcome).forEach(line -> lines.add(emphasis.strong(line)));
        if (outcome.doNotPowerUp()) {
            lines.add("");
        }
    }

    private void healthyTable() {
        heading("table.healthy");
        TextTable table = new TextTable(
                        TextTable.Column.left(WORDS.say("head.point")),
                        TextTable.Column.left(WORDS.say("head.function")),
                        TextTable.Column.right(WORDS.say("head.shows")),
                        TextTable.Column.right(WORDS.say("head.range")),
                        TextTable.Column.left(WORDS.say("head.where")))
                .cuttingLast();
        for (Compared row : outcome.readings()) {
            table.row(
                    false,
                    point(row),
                    row.check().function().words(),
                    Figures.display(row.asBuilt()),
                    Figures.range(row),
                    outcome.label(row));
        }
        lines.addAll(table.lines(emphasis));
        climbing();
    }

    private void comparedTable() {
        List<Compared> moved = outcome.moved();
        lines.add("");
        lines.add(emphasis.strong(
                WORDS.say("table.moved", moved.size(), outcome.readings().size())));
        TextTable table = new TextTable(
                        TextTable.Column.left(""),
                        TextTable.Column.left(WORDS.say("head.point")),
                        TextTable.Column.left(WORDS.say("head.function")),
                        TextTable.Column.right(WORDS.say("head.range")),
                        TextTable.Column.right(WORDS.say("head.built")),
                        TextTable.Column.right(WORDS.say("head.supposed")),
                        TextTable.Column.right(WORDS.say("head.moved")),
                        TextTable.Column.left(WORDS.say("head.where")))
                .cuttingLast();
        for (Compared row : outcome.readings()) {
            boolean tells = !row.tooCloseToTell();
            table.row(
                    tells,
                    tells ? MOVED : CLOSE,
                    point(row),
                    row.check().function().words(),
                    Figures.range(row),
                    Figures.display(row.asBuilt()),
                    Figures.display(row.asSupposed()),
                    moved(row),
                    outcome.label(row));
        }
        lines.addAll(table.lines(emphasis));
        paragraph(WORDS.say("table.signs", MOVED, CLOSE));
        climbing();
    }

    /** Tells the arrows of displays that still move, where there are any. */
    private void climbing() {
        boolean any = outcome.readings().stream()
                .anyMatch(r -> r.asBuilt().climbing() != null || r.asSupposed().climbing() != null);
        if (any) {
            paragraph(WORDS.say("table.climbing"));
        }
    }

    private void fuses() {
        if (outcome.fuses().isEmpty() || !outcome.question().arrangement().powerOn()) {
            return;
        }
        heading("table.fuses");
        TextTable table = new TextTable(
                TextTable.Column.left(WORDS.say("head.fuse")),
                TextTable.Column.left(WORDS.say("head.marked")),
                TextTable.Column.left(WORDS.say("head.fitted")),
                TextTable.Column.right(WORDS.say("head.carries")),
                TextTable.Column.left(WORDS.say("head.becomes")));
        for (FuseFate fuse : outcome.fuses()) {
            boolean there = isThere(fuse.state());
            table.row(
                    fuse.state() != FuseFate.State.INTACT,
                    fuse.part(),
                    link(fuse.marked()),
                    there ? fuse.wrongLink() ? link(fuse.fitted()) : WORDS.say("fuse.same") : "-",
                    there ? figure(fuse.amps(), Unit.AMPERE) : "-",
                    becomes(fuse));
        }
        lines.addAll(table.lines(emphasis));
    }

    private static boolean isThere(FuseFate.State state) {
        return switch (state) {
            case INTACT, MELTS, MAY_MELT -> true;
            case BLOWN, MISSING, PULLED -> false;
        };
    }

    private static String becomes(FuseFate fuse) {
        FuseFate.Between seconds = fuse.seconds();
        if (seconds == null) {
            return fuse.state().words();
        }
        return Double.isInfinite(seconds.most())
                ? WORDS.say("fuse.from", fuse.state().words(), Times.of(seconds.least()))
                : WORDS.say("fuse.in", fuse.state().words(), Times.between(seconds.least(), seconds.most()));
    }

    private void stresses() {
        List<Stress> told = outcome.stresses().stream()
                .filter(s -> s.ratio() >= WORTH_TELLING)
                .toList();
        if (told.isEmpty()) {
            return;
        }
        heading("table.stresses");
        lines.addAll(StressTable.lines(told.stream().limit(MOST_STRESSES).toList(), outcome, emphasis));
        int left = told.size() - MOST_STRESSES;
        if (left > 0) {
            lines.add(WORDS.say("table.more", left));
        }
    }

    private void notes() {
        List<Doubt> notes = outcome.doubts().stream()
                .filter(d -> d.severity() == Doubt.Severity.DOUBTFUL || d.severity() == Doubt.Severity.NOTE)
                .toList();
        if (notes.isEmpty()) {
            return;
        }
        heading("table.notes");
        for (Doubt note : notes) {
            String before = note.severity() == Doubt.Severity.DOUBTFUL ? "? " : "- ";
            lines.addAll(Paragraph.hanging(before, note.text(), TextTable.WIDTH));
        }
    }

    private void heading(String key) {
        lines.add("");
        lines.add(emphasis.strong(WORDS.say(key)));
    }

    /** A text broken into lines of at most 100 columns. */
    public static List<String> wrapped(String text) {
        return Paragraph.lines(text, TextTable.WIDTH);
    }

    private void paragraph(String text) {
        lines.addAll(wrapped(text));
    }

    private String point(Compared row) {
        return Pairs.name(outcome.question().healthy(), row.check());
    }

    /** Enough figures to rank by, not more than the spread deserves. */
    private static String moved(Compared row) {
        double moved = row.moved();
        if (moved >= 10_000) {
            return WORDS.say("moved.over");
        }
        return String.format(Locale.ROOT, moved < 10 ? "%.1f" : "%.0f", moved);
    }

    static String link(FuseLink link) {
        // in full: a rounded rating is one that nobody makes
        return Notation.format(link.ratedAmps()) + " "
                + WORDS.say(link.speed() == FuseLink.Speed.SLOW ? "fuse.slow" : "fuse.quick");
    }

    /** A rating: three digits, since those that are made have up to three, 3.15 A and 0.125 W. */
    static String rating(double si, Unit unit) {
        return Notation.format(new Quantity(si, unit), 3);
    }

    /** Two digits; less than half a milliampere through a fuse is nothing. */
    static String figure(double si, Unit unit) {
        if (unit == Unit.AMPERE && Math.abs(si) < 5e-4) {
            return "0 A";
        }
        return Notation.format(new Quantity(si, unit), 2);
    }
}
