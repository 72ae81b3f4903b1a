package fusetale.match;

import fusetale.bench.Observation;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How what is seen compares with what should be seen. */
final class Seeing {
    /** What is seen is what there is (judgement). */
    private static final double RIGHT = 0.985;

    /** The same of the link and the cap of a fuse, which are there to be read (judgement). */
    private static final double PLAIN = 0.995;

    /** Sights of one aspect that lie next to each other are mistaken for each other sooner (judgement). */
    private static final double NEXT = 0.08;

    /** Of what there is to see, so much is changed by a fault that is not in the list (judgement). */
    private static final double UNLISTED = 0.03;

    /** What a cap says is changed by a wrong fuse alone, and that is in the list (judgement). */
    private static final double UNLISTED_RATING = 0.003;

    /** A coil with a switch at the end of its stroke holds or lets go and comes in again, as its holding current is just enough or not. */
    private static final Set<Observation.Sight> BY_A_HAIR =
            EnumSet.of(Observation.Sight.HOLDS, Observation.Sight.CHATTERS);

    /** Sights in their order, by their place in it. */
    private static final Map<Observation.Sight, Integer> PLACES = places();

    /** How many sights an aspect has. */
    private static final Map<Observation.Aspect, Long> COUNTS = Arrays.stream(Observation.Sight.values())
            .collect(Collectors.groupingBy(
                    Observation.Sight::aspect, () -> new EnumMap<>(Observation.Aspect.class), Collectors.counting()));

    private Seeing() {}

    private static Map<Observation.Sight, Integer> places() {
        Map<Observation.Sight, Integer> places = new EnumMap<>(Observation.Sight.class);
        for (Observation.Sight sight : Observation.Sight.values()) {
            places.put(sight, places.size());
        }
        return places;
    }

    /** Probability of a sight, where another is expected. */
    static double probability(Shown.Seen seen, Observation expected) {
        Observation.Sight is = expected.sight();
        if (seen.sight() == is) {
            return seen.sight() == Observation.Sight.STOPS && !sameCount(seen, expected) ? NEXT / 2 : right(is);
        }
        double others = others(is);
        boolean next = neighbours(seen.sight(), is) && soft(is) && soft(seen.sight());
        return next ? NEXT : (1 - right(is)) / Math.max(1, others);
    }

    private static double right(Observation.Sight of) {
        return soft(of) ? RIGHT : PLAIN;
    }

    /** That a fault outside the list changed a sight, against a wrong look at it; how many other sights there are falls out. */
    static double unlistedOdds(Shown.Seen seen) {
        return Hypotheses.SOMETHING_ELSE * unlisted(seen) / (1 - right(seen.sight()));
    }

    private static double unlisted(Shown.Seen seen) {
        return seen.sight().aspect() == Observation.Aspect.RATING ? UNLISTED_RATING : UNLISTED;
    }

    /** Whether somebody must have looked wrong who tells of it where another is expected: it does not lie next to it. */
    static boolean isMistaken(Shown.Seen seen, Observation expected) {
        return seen.sight() != expected.sight() && probability(seen, expected) < NEXT;
    }

    /**
     * What a sight tells of a fault that is not in the list: it leaves most of a machine as it is.
     *
     * @param healthy what the healthy machine shows there; null where that is not known
     */
    static double broad(Shown.Seen seen, @Nullable Observation healthy) {
        double others = others(seen.sight());
        if (healthy == null) {
            return 1 / (others + 1);
        }
        boolean same = seen.sight() == healthy.sight()
                && (seen.sight() != Observation.Sight.STOPS || sameCount(seen, healthy));
        return same ? 1 - unlisted(seen) : unlisted(seen) / Math.max(1, others);
    }

    private static double others(Observation.Sight of) {
        return COUNTS.getOrDefault(of.aspect(), 1L) - 1.0;
    }

    private static boolean neighbours(Observation.Sight one, Observation.Sight other) {
        return Math.abs(PLACES.getOrDefault(one, 0) - PLACES.getOrDefault(other, 0)) == 1
                || (BY_A_HAIR.contains(one) && BY_A_HAIR.contains(other));
    }

    /** The link and cap of a fuse are plain to see; brightness, pull, heat and hum are matters of degree. */
    private static boolean soft(Observation.Sight sight) {
        return sight.aspect() != Observation.Aspect.FUSE && sight.aspect() != Observation.Aspect.RATING;
    }

    /** {@code at 2 of 4}. */
    private static boolean sameCount(Shown.Seen seen, Observation expected) {
        return seen.counted() < 0 || expected.detail().startsWith("at " + seen.counted() + " ");
    }
}
