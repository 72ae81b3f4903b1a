package fusetale.match;

import fusetale.bench.Observation.Aspect;
import fusetale.bench.Observation.Sight;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What people write of what they see, hear and feel: the words of {@link Sight}, and everyday ones. */
final class SightWords {
    private static final Map<String, Aspect> ASPECTS = aspects();
    private static final Map<Sight, List<String>> ALSO = Map.ofEntries(
            Map.entry(Sight.WIRE_WHOLE, List.of("whole", "good", "ok", "intact")),
            Map.entry(Sight.WIRE_GONE, List.of("blown", "gone", "melted", "open", "burnt")),
            Map.entry(Sight.NO_FUSE, List.of("missing", "no fuse", "none", "out", "empty clips")),
            Map.entry(Sight.RIGHT_RATING, List.of("right", "as marked", "ok")),
            Map.entry(Sight.OVER_RATED, List.of("over rated", "too big", "more")),
            Map.entry(Sight.UNDER_RATED, List.of("under rated", "too small", "less")),
            Map.entry(Sight.DARK, List.of("off", "out", "no light")),
            Map.entry(Sight.DIM, List.of("weak", "faint")),
            Map.entry(Sight.LIT, List.of("on", "glows", "normal", "ok")),
            Map.entry(Sight.BRIGHT, List.of("bright")),
            Map.entry(Sight.STILL, List.of("nothing", "dead", "still")),
            Map.entry(Sight.BUZZES, List.of("buzz", "hums")),
            Map.entry(Sight.TOO_WEAK, List.of("weak", "does not pull in", "would hold")),
            Map.entry(Sight.HOLDS, List.of("in", "stays in")),
            Map.entry(Sight.PULLS_IN, List.of("works", "kicks", "ok")),
            Map.entry(Sight.CHATTERS, List.of("chatters")),
            Map.entry(Sight.DEAD, List.of("nothing", "dark")),
            Map.entry(Sight.IN_RESET, List.of("reset", "in reset")),
            Map.entry(Sight.STOPS, List.of("stuck", "hangs")),
            Map.entry(Sight.STARTS, List.of("plays", "works", "ok")),
            Map.entry(Sight.NOT_HOT, List.of("cold", "cool", "warm", "ok")),
            Map.entry(Sight.TOO_HOT, List.of("hot", "too hot")),
            Map.entry(Sight.QUIET, List.of("no hum", "silent", "ok")),
            Map.entry(Sight.HUMS, List.of("hum", "loud")));

    private SightWords() {}

    private static Map<String, Aspect> aspects() {
        Map<String, Aspect> words = new LinkedHashMap<>();
        for (Aspect aspect : Aspect.values()) {
            words.put(plain(aspect.words()), aspect);
        }
        words.put("lamps", Aspect.LAMP);
        words.put("plunger", Aspect.COIL);
        words.put("startup", Aspect.START_UP);
        words.put("touch", Aspect.HEAT);
        return Map.copyOf(words);
    }

    /** What is looked at. */
    static Optional<Aspect> aspect(String text) {
        return Optional.ofNullable(ASPECTS.get(plain(text)));
    }

    /** What was seen; what belongs to it is not looked at. */
    static Optional<Sight> sight(Aspect aspect, String text) {
        String plain = plain(text);
        return Arrays.stream(Sight.values())
                .filter(s -> s.aspect() == aspect)
                .filter(s -> plain(s.words()).equals(plain)
                        || ALSO.getOrDefault(s, List.of()).contains(plain))
                .findFirst();
    }

    /** All that may be written of an aspect, the program's own word first. */
    static List<String> allowed(Aspect aspect) {
        return Arrays.stream(Sight.values())
                .filter(s -> s.aspect() == aspect)
                .flatMap(s -> Stream.concat(Stream.of(s.words()), ALSO.getOrDefault(s, List.of()).stream()))
                .distinct()
                .toList();
    }

    /** Small letters, one blank between words, no hyphens. */
    static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    }
}
