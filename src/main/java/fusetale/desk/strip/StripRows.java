package fusetale.desk.strip;

import fusetale.circuit.Circuit;
import fusetale.explore.Compared;
import fusetale.explore.Outcome;
import fusetale.explore.Trace;
import fusetale.explore.Words;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The rows of the strip, over all settings of the meter, those that moved most first.
 *
 * @param rows ranked
 * @param clampOnly how many more figures are known that only a clamp meter reads: currents of closed circuits
 */
public record StripRows(List<StripRow> rows, int clampOnly) {
    /** Nothing to show. */
    public static final StripRows NONE = new StripRows(List.of(), 0);

    private static final Words WORDS = Words.of(StripRows.class);

    /** Copies the list. */
    public StripRows {
        rows = List.copyOf(rows);
    }

    /** Rows of some readings of one circuit; those alike in two figures stay in their order. */
    public static StripRows of(Circuit circuit, List<Compared> readings, int clampOnly) {
        return new StripRows(
                readings.stream()
                        .sorted(Comparator.comparingDouble(Compared::movedInTwoFigures)
                                .reversed())
                        .map(r -> StripRow.of(circuit, r))
                        .toList(),
                clampOnly);
    }

    /** Rows of the outcomes of one supposition: with the power on, with the power off. */
    public static StripRows of(List<Outcome> outcomes) {
        if (outcomes.isEmpty()) {
            return NONE;
        }
        List<Compared> readings = new ArrayList<>();
        outcomes.forEach(o -> readings.addAll(o.readings()));
        long clampOnly = outcomes.stream()
                .flatMap(o -> o.traces().stream())
                .filter(t -> t.unit() == Unit.AMPERE)
                .map(Trace::label)
                .distinct()
                .count();
        return of(outcomes.get(0).question().healthy(), readings, (int) clampOnly);
    }

    /** How many rows moved further than healthy machines stray; they are the first ones. */
    public int moved() {
        return (int) rows.stream().filter(r -> !r.tooCloseToTell()).count();
    }

    /** The furthest that any figure moved; 0 where there is none. */
    public double most() {
        return rows.isEmpty() ? 0 : rows.get(0).moved();
    }

    /**
     * What moved and is not shown below a page, in words, with what only a clamp meter reads: {@code 2 more, 1 more needs a clamp
     * meter}; empty where nothing is left out.
     *
     * @param end index after the last row shown
     */
    public String movedLeft(int end) {
        int below = Math.max(0, moved() - end);
        List<String> parts = new ArrayList<>();
        if (below > 0) {
            parts.add(WORDS.say("rest.moved", below));
        }
        if (clampOnly > 0) {
            parts.add(clampOnly == 1 ? WORDS.say("rest.clamp.one") : WORDS.say("rest.clamp", clampOnly));
        }
        return String.join(WORDS.say("rest.and"), parts);
    }

    /**
     * What cannot be told and is not shown below a page, in words: {@code 12 more too close to tell}; empty where there is none.
     *
     * @param end index after the last row shown
     */
    public String closeLeft(int end) {
        int moved = moved();
        int close = rows.size() - Math.max(end, moved);
        return close <= 0 ? "" : WORDS.say(end > moved ? "rest.close-more" : "rest.close", close);
    }
}
