package fusetale.explore;

import fusetale.aftermath.Event;
import fusetale.aftermath.Harm;
import fusetale.circuit.Circuit;
import java.util.ArrayList;
import java.util.List;

/**
 * Something that happens, in words: an event, or the same event at several places of one part at about the same time.
 *
 * @param words what happens: {@code T101 winding sol: insulation burnt through, turns short}
 * @param gravity how grave it is
 * @param leastSeconds soonest [s]
 * @param middleSeconds by then half of the machines have come to it [s]
 * @param mostSeconds latest [s]
 * @param count in how many machines
 */
public record Happening(
        String words, Harm.Gravity gravity, double leastSeconds, double middleSeconds, double mostSeconds, int count) {
    private static final Words WORDS = Words.of(Happening.class);

    /** Times that differ by less are told as one. */
    private static final double ALIKE_RATIO = 1.5;

    /** Events in their order, those alike told as one at the place of the first. */
    public static List<Happening> of(Circuit circuit, List<Event> events) {
        return alike(events).stream().map(e -> told(circuit, e)).toList();
    }

    /** Events in their order, those alike together at the place of the first. */
    static List<List<Event>> alike(List<Event> events) {
        List<List<Event>> groups = new ArrayList<>();
        List<Event> left = new ArrayList<>(events);
        while (!left.isEmpty()) {
            Event first = left.get(0);
            List<Event> alike = left.stream().filter(e -> alike(first, e)).toList();
            left.removeAll(alike);
            groups.add(alike);
        }
        return groups;
    }

    private static boolean alike(Event one, Event other) {
        return one.part().equals(other.part())
                && one.harm() == other.harm()
                && near(one.leastSeconds(), other.leastSeconds())
                && near(one.mostSeconds(), other.mostSeconds());
    }

    private static boolean near(double one, double other) {
        return Math.max(one, other) <= ALIKE_RATIO * Math.min(one, other);
    }

    /** Events alike told as one. */
    static Happening told(Circuit circuit, List<Event> alike) {
        Event first = alike.get(0);
        StringBuilder subject = new StringBuilder(first.part());
        for (int k = 0; k < alike.size(); k++) {
            String place =
                    Places.words(circuit, alike.get(k).part(), alike.get(k).place());
            if (!place.isEmpty()) {
                subject.append(k == 0 ? " " : WORDS.say("happening.and")).append(place);
            }
        }
        return new Happening(
                WORDS.say("happening", subject, first.harm().words()),
                first.harm().gravity(),
                alike.stream().mapToDouble(Event::leastSeconds).min().orElseThrow(),
                first.middleSeconds(),
                alike.stream().mapToDouble(Event::mostSeconds).max().orElseThrow(),
                alike.stream().mapToInt(Event::count).max().orElseThrow());
    }

    /** {@code 20 to 60 s}. */
    public String when() {
        return Times.between(leastSeconds, mostSeconds);
    }

    /** In how many of the machines drawn: all, or so many of a hundred in steps of five. */
    public static String share(int count, int machines) {
        if (count == machines) {
            return WORDS.say("happening.all");
        }
        double percent = 100.0 * count / machines;
        long rounded = percent > 10 && percent < 90 ? Math.round(percent / 5) * 5 : Math.round(percent);
        return rounded < 1
                ? WORDS.say("happening.under-one")
                : WORDS.say("happening.of-hundred", Math.min(99, rounded));
    }
}
