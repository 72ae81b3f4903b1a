package fusetale.report;

import fusetale.aftermath.Strain;
import fusetale.aftermath.Stress;
import fusetale.circuit.Circuit;
import fusetale.explore.Outcome;
import fusetale.explore.Places;
import fusetale.explore.Words;
import fusetale.quantity.Unit;
import java.util.List;
import java.util.Locale;

/** Figures of parts beside their ratings, as plain text. */
final class StressTable {
    private static final Words WORDS = Words.of(StressTable.class);

    /** Hotter than this nothing stays what it was, and the figure means nothing [°C]. */
    private static final double MOST_CELSIUS = 600;

    private StressTable() {}

    /**
     * The rows in their order.
     *
     * @param outcome they are of
     */
    static List<String> lines(List<Stress> stresses, Outcome outcome, Emphasis emphasis) {
        boolean healthy = outcome.question().supposition().isNothing();
        TextTable table = new TextTable(
                TextTable.Column.left(WORDS.say("head.part")),
                TextTable.Column.left(WORDS.say("head.what")),
                TextTable.Column.right(WORDS.say(healthy ? "head.built" : "head.supposed")),
                TextTable.Column.right(WORDS.say("head.rating")),
                TextTable.Column.right(WORDS.say("head.times")));
        for (Stress stress : stresses) {
            table.row(
                    false,
                    stress.part(),
                    what(outcome.question().healthy(), stress),
                    figure(stress.value(), stress.strain().unit()),
                    rating(stress.limit(), stress.strain().unit()),
                    times(stress.ratio()));
        }
        return table.lines(emphasis);
    }

    private static String times(double ratio) {
        return String.format(Locale.ROOT, ratio < 0.995 ? "%.2f" : "%.1f", ratio);
    }

    private static String what(Circuit circuit, Stress stress) {
        if (stress.place().isEmpty()) {
            return stress.strain().words();
        }
        if (stress.strain() == Strain.WINDING_CURRENT) {
            return stress.strain().words() + " " + stress.place();
        }
        return stress.strain() == Strain.TEMPERATURE
                ? WORDS.say(
                        "stress.place", stress.strain().words(), Places.words(circuit, stress.part(), stress.place()))
                : WORDS.say("stress.pin", stress.strain().words(), stress.place());
    }

    private static String rating(double si, Unit unit) {
        return unit == Unit.CELSIUS ? figure(si, unit) : Tables.rating(si, unit);
    }

    /** Two digits, temperatures whole. */
    private static String figure(double si, Unit unit) {
        if (unit == Unit.CELSIUS) {
            return si > MOST_CELSIUS ? WORDS.say("stress.hotter", Math.round(MOST_CELSIUS)) : Math.round(si) + " °C";
        }
        return Tables.figure(si, unit);
    }
}
