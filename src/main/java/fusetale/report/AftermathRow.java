package fusetale.report;

import fusetale.aftermath.Aftermath;
import fusetale.aftermath.Event;
import fusetale.aftermath.Harm;
import fusetale.circuit.Circuit;
import fusetale.explore.Happenings;
import fusetale.explore.Words;
import java.util.ArrayList;
import java.util.List;

/**
 * One row of a timeline: an event, or the same event at several places of one part at about the same time.
 *
 * @param words what happens
 * @param gravity how grave it is
 * @param leastSeconds soonest [s]
 * @param middleSeconds by then half of the machines have come to it [s]
 * @param mostSeconds latest [s]
 * @param count in how many machines
 */
record AftermathRow(
        String words, Harm.Gravity gravity, double leastSeconds, double middleSeconds, double mostSeconds, int count) {
    private static final Words WORDS = Words.of(AftermathRow.class);

    /** Times that differ by less are told as one. */
    private static final double ALIKE_RATIO = 1.25;

    /** All rows, by the time at which half of the machines have come to it. */
    static List<AftermathRow> of(Circuit circuit, Aftermath aftermath) {
        List<AftermathRow> rows = new ArrayList<>();
        List<Event> left = new ArrayList<>(aftermath.events());
        while (!left.isEmpty()) {
            Event first = left.get(0);
            List<Event> alike = left.stream().filter(e -> alike(first, e)).toList();
            left.removeAll(alike);
            rows.add(row(circuit, alike));
        }
        return rows;
    }

    private static boolean alike(Event one, Event other) {
        return one.part().equals(other.part())
                && one.harm() == other.harm()
                && near(one.leastSeconds(), other.leastSeconds())
                && near(one.middleSeconds(), other.middleSeconds())
                && near(one.mostSeconds(), other.mostSeconds());
    }

    private static boolean near(double one, double other) {
        return Math.max(one, other) < ALIKE_RATIO * Math.min(one, other);
    }

    private static AftermathRow row(Circuit circuit, List<Event> alike) {
        Event first = alike.get(0);
        String subject = Happenings.subject(circuit, first);
        for (Event more : alike.subList(1, alike.size())) {
            subject += WORDS.say("timeline.and") + Happenings.place(circuit, more);
        }
        return new AftermathRow(
                subject + " " + first.harm().words(),
                first.harm().gravity(),
                alike.stream().mapToDouble(Event::leastSeconds).min().orElseThrow(),
                first.middleSeconds(),
                alike.stream().mapToDouble(Event::mostSeconds).max().orElseThrow(),
                alike.stream().mapToInt(Event::count).max().orElseThrow());
    }

    /** In how many of the machines: all, or so many of a hundred in steps of five. */
    static String share(int count, int machines) {
        if (count == machines) {
            return WORDS.say("timeline.all");
        }
        double percent = 100.0 * count / machines;
        long rounded = percent > 10 && percent < 90 ? Math.round(percent / 5) * 5 : Math.round(percent);
        return rounded < 1 ? WORDS.say("timeline.under-one") : WORDS.say("timeline.of-hundred", Math.min(99, rounded));
    }
}
