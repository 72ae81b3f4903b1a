package fusetale.desk.aftermath;

import fusetale.aftermath.Aftermath;
import fusetale.explore.Happening;
import fusetale.explore.Outcome;
import fusetale.explore.Question;
import fusetale.explore.Times;
import fusetale.report.AftermathTable;
import java.util.List;
import java.util.SortedMap;

/**
 * An aftermath ready to be shown: rows over a logarithmic axis of times, and stories to walk.
 *
 * @param settings what was played
 * @param rows everything that happens, in order
 * @param stories the orders it happens in, those of most machines first
 * @param leastSeconds left end of the axis [s]
 * @param mostSeconds right end of the axis [s]
 */
public record AftermathModel(
        Aftermath.Settings settings,
        List<TimeRow> rows,
        List<StoryRow> stories,
        double leastSeconds,
        double mostSeconds) {
    private static final double DECADE_BEFORE = 3;
    private static final double LEAST_SECONDS = 1e-3;

    /** So that the last mark is not cut. */
    private static final double ROOM = 1.2;

    /** Copies the lists. */
    public AftermathModel {
        rows = List.copyOf(rows);
        stories = List.copyOf(stories);
    }

    /** The aftermath of a question. */
    public static AftermathModel of(Question question, Aftermath aftermath) {
        int machines = aftermath.settings().machines();
        List<TimeRow> rows = Happening.of(question.healthy(), aftermath.events()).stream()
                .map(h -> TimeRow.of(h, machines))
                .toList();
        double horizon = aftermath.settings().horizonSeconds();
        double soonest = rows.stream()
                .mapToDouble(r -> r.happening().leastSeconds())
                .min()
                .orElse(horizon / 1000);
        List<StoryRow> stories = aftermath.stories().stream()
                .map(s -> StoryRow.of(question, s, machines))
                .toList();
        return new AftermathModel(
                aftermath.settings(), rows, stories, Math.max(LEAST_SECONDS, soonest / DECADE_BEFORE), ROOM * horizon);
    }

    /** The aftermath of an outcome that has one. */
    public static AftermathModel of(Outcome outcome, Aftermath aftermath) {
        return of(outcome.question(), aftermath);
    }

    /** What was played, in words. */
    public String setting() {
        return AftermathTable.setting(settings);
    }

    /** Where a time [s] stands on the axis, 0 to 1 of its width. */
    public double share(double seconds) {
        double within = Math.max(leastSeconds, Math.min(mostSeconds, seconds));
        return Math.log(within / leastSeconds) / Math.log(mostSeconds / leastSeconds);
    }

    /** Times [s] marked on the axis, and what they are called. */
    public SortedMap<Double, String> marks() {
        return Times.marks(leastSeconds, mostSeconds);
    }
}
