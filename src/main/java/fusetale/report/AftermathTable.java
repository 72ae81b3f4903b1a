package fusetale.report;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Harm;
import fusetale.aftermath.Story;
import fusetale.circuit.Circuit;
import fusetale.explore.Happening;
import fusetale.explore.Times;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** The aftermath as plain text: when what happens, in which orders, and what that rests on. */
public final class AftermathTable {
    private static final Words WORDS = Words.of(AftermathTable.class);
    private static final int MOST_ROWS = 16;
    private static final int MOST_STORIES = 5;

    private AftermathTable() {}

    static List<String> lines(Circuit circuit, Aftermath aftermath, Emphasis emphasis) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(emphasis.strong(WORDS.say("table.aftermath")));
        lines.addAll(Paragraph.lines(setting(aftermath.settings()), TextTable.WIDTH));
        List<Happening> rows = Happening.of(circuit, aftermath.events());
        if (rows.isEmpty()) {
            lines.add(
                    WORDS.say("timeline.nothing", Times.of(aftermath.settings().horizonSeconds())));
            return lines;
        }
        lines.addAll(events(rows, aftermath.settings().machines(), emphasis));
        if (rows.size() > MOST_ROWS) {
            lines.add(WORDS.say("table.more", rows.size() - MOST_ROWS));
        }
        lines.addAll(stories(circuit, aftermath));
        lines.addAll(sources(aftermath));
        return lines;
    }

    /** What was played, in words. */
    public static String setting(Aftermath.Settings s) {
        return WORDS.say(
                "timeline.setting",
                s.machines(),
                Times.of(s.horizonSeconds()),
                Figures.plain(s.leastAirCelsius()),
                Figures.plain(s.mostAirCelsius()));
    }

    private static List<String> events(List<Happening> rows, int machines, Emphasis emphasis) {
        TextTable table = new TextTable(
                TextTable.Column.left(WORDS.say("head.when")),
                TextTable.Column.left(""),
                TextTable.Column.right(WORDS.say("head.share")),
                TextTable.Column.left(WORDS.say("head.happens")));
        for (Happening row : rows.stream().limit(MOST_ROWS).toList()) {
            table.row(
                    row.gravity() == Harm.Gravity.DAMAGE,
                    row.when(),
                    WORDS.say("gravity." + row.gravity().name().toLowerCase(Locale.ROOT)),
                    Happening.share(row.count(), machines),
                    row.words());
        }
        return table.lines(emphasis);
    }

    private static List<String> stories(Circuit circuit, Aftermath aftermath) {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(WORDS.say("table.stories"));
        List<Story> told = aftermath.stories().stream().limit(MOST_STORIES).toList();
        int left = aftermath.settings().machines();
        for (Story story : told) {
            String share = Happening.share(story.count(), aftermath.settings().machines());
            lines.addAll(Paragraph.hanging(share + ": ", story(circuit, story), TextTable.WIDTH));
            left -= story.count();
        }
        if (left > 0) {
            lines.add(WORDS.say(
                    "timeline.other-orders",
                    Happening.share(left, aftermath.settings().machines())));
        }
        return lines;
    }

    private static String story(Circuit circuit, Story story) {
        List<String> steps = Happening.of(circuit, story.steps()).stream()
                .sorted(Comparator.comparingDouble(Happening::leastSeconds))
                .map(h -> WORDS.say("timeline.step", h.words(), h.when()))
                .toList();
        String end = WORDS.say("end." + story.end().name().toLowerCase(Locale.ROOT));
        if (steps.isEmpty()) {
            return WORDS.say("timeline.unchanged");
        }
        return String.join(WORDS.say("timeline.then"), steps) + WORDS.say("timeline.then") + end;
    }

    private static List<String> sources(Aftermath aftermath) {
        Set<String> sources = new LinkedHashSet<>();
        aftermath.events().forEach(e -> sources.add(e.source()));
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add(WORDS.say("table.rests-on"));
        for (String source : sources) {
            lines.addAll(Paragraph.hanging("- ", source + ".", TextTable.WIDTH));
        }
        lines.addAll(Paragraph.hanging("- ", WORDS.say("timeline.assumed"), TextTable.WIDTH));
        return lines;
    }
}
