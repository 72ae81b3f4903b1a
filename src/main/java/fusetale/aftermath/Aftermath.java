package fusetale.aftermath;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What follows if nobody switches off. Heat paths, limits and melting times are known as ranges only, so a number of machines is drawn
 * from them and each is played forward by itself: the times of an event are those from its first to its last machine, and where
 * the order of events is open the machines part into several stories.
 *
 * @param settings what was asked
 * @param events everything that happened to any machine, by the time at which half of them had come to it
 * @param stories the orders of what changes the machine, those of most machines first
 */
public record Aftermath(Settings settings, List<Event> events, List<Story> stories) {
    /** One machine in so many is worth a warning. */
    private static final int NOTED_SHARE = 50;

    /** Copies the lists. */
    public Aftermath {
        events = List.copyOf(events);
        stories = List.copyOf(stories);
    }

    /**
     * What to play.
     *
     * @param machines how many to draw, 1 or more
     * @param seed of the draws: the same seed draws the same machines
     * @param horizonSeconds how long [s]
     * @param leastAirCelsius coolest air in the cabinet [°C]
     * @param mostAirCelsius warmest air in the cabinet [°C]
     */
    public record Settings(
            int machines, long seed, double horizonSeconds, double leastAirCelsius, double mostAirCelsius) {
        /** An evening of eight hours, a cabinet from room temperature to a warm one (common practice). */
        public static final Settings USUAL = new Settings(64, 1, 8 * 3600, 25, 40);

        /** Refuses to play nothing. */
        public Settings {
            if (machines < 1 || !(horizonSeconds > 0) || !(leastAirCelsius <= mostAirCelsius)) {
                throw new IllegalArgumentException(machines + " machines for " + horizonSeconds + " s at "
                        + leastAirCelsius + " to " + mostAirCelsius + " °C");
            }
        }
    }

    /** Plays a board forward. */
    public static Aftermath of(Board board, Settings settings) {
        States states = new States(board);
        int noted = (settings.machines() + NOTED_SHARE - 1) / NOTED_SHARE;
        Gathered everything = new Gathered(noted);
        Map<String, Gathered> byStory = new LinkedHashMap<>();
        for (int machine = 0; machine < settings.machines(); machine++) {
            Play.Course course = new Play(states, new Draw(settings.seed(), machine), settings).course();
            List<Play.Happening> changes = course.happenings().stream()
                    .filter(h -> h.what().consequence() != null)
                    .toList();
            // places of one part that meet the same end in a row are one step
            String key = course.end() + ": "
                    + changes.stream()
                            .map(h -> h.what().part() + " " + h.what().harm())
                            .distinct()
                            .collect(Collectors.joining(", "));
            everything.add(course.happenings(), course.end());
            byStory.computeIfAbsent(key, k -> new Gathered(noted)).add(changes, course.end());
        }
        List<Event> events = everything.events();
        List<Story> stories = byStory.values().stream()
                .map(g -> new Story(g.events(), g.machines, g.end))
                .sorted(Comparator.comparingInt(Story::count).reversed())
                .toList();
        return new Aftermath(settings, events, stories);
    }

    /** Events that take a part past its damage limit in at least one of fifty machines within some time [s], soonest first. */
    public List<Event> damageWithin(double seconds) {
        return events.stream()
                .filter(e -> e.harm().gravity() == Harm.Gravity.DAMAGE)
                .filter(e -> e.notedSeconds() <= seconds)
                .sorted(Comparator.comparingDouble(Event::leastSeconds))
                .toList();
    }

    /** Happenings of several machines, those alike together. */
    private static final class Gathered {
        private final Map<String, List<Play.Happening>> alike = new LinkedHashMap<>();
        private final int noted;
        private int machines;
        private Story.End end = Story.End.RESTS;

        /**
         * None yet.
         *
         * @param noted how many machines are worth a warning
         */
        Gathered(int noted) {
            this.noted = noted;
        }

        void add(List<Play.Happening> happenings, Story.End how) {
            machines++;
            end = how;
            for (Play.Happening h : happenings) {
                alike.computeIfAbsent(key(h.what()), k -> new ArrayList<>()).add(h);
            }
        }

        static String key(Event e) {
            return e.target() + " " + e.harm();
        }

        List<Event> events() {
            return alike.values().stream()
                    .map(this::event)
                    .sorted(Comparator.comparingDouble(Event::middleSeconds))
                    .toList();
        }

        private Event event(List<Play.Happening> happenings) {
            double[] seconds = happenings.stream()
                    .mapToDouble(Play.Happening::seconds)
                    .sorted()
                    .toArray();
            Event e = happenings.get(0).what();
            return new Event(
                    e.part(),
                    e.place(),
                    e.harm(),
                    e.consequence(),
                    seconds[0],
                    seconds[seconds.length / 2],
                    seconds[seconds.length - 1],
                    seconds.length,
                    seconds.length < noted ? Double.POSITIVE_INFINITY : seconds[noted - 1],
                    e.source());
        }
    }
}
