package fusetale.bench;

/**
 * What one sees, hears or feels of a machine without a meter.
 *
 * @param part designator, or {@code J3.4}
 * @param sight what it does
 * @param detail what belongs to it: {@code at 2 of 4}, {@code 92 °C}; may be empty
 */
public record Observation(String part, Sight sight, String detail) {
    /** What is looked at, listened to or touched. */
    public enum Aspect {
        /** Through its glass. */
        FUSE("fuse"),
        /** What is stamped on its cap, beside what its holder asks for. */
        RATING("rating"),
        /** From across the room. */
        LAMP("lamp"),
        /** Its plunger or armature. */
        COIL("coil"),
        /** The controller's lamps while it starts. */
        START_UP("start-up"),
        /** With the back of a finger, power off. */
        HEAT("heat"),
        /** A rail's ripple, heard from whatever it feeds. */
        HUM("hum");

        private final String words;

        Aspect(String words) {
            this.words = words;
        }

        /** As written in tables and JSON. */
        public String words() {
            return words;
        }
    }

    /** What there is to notice. */
    public enum Sight {
        /** The link of a fuse is whole. */
        WIRE_WHOLE(Aspect.FUSE, "wire whole", false),
        /** The link of a fuse has melted. */
        WIRE_GONE(Aspect.FUSE, "wire gone", true),
        /** Nothing sits in the clips. */
        NO_FUSE(Aspect.FUSE, "no fuse in the clips", true),
        /** The fuse is the one its holder asks for. */
        RIGHT_RATING(Aspect.RATING, "as marked at its holder", false),
        /** It lets more through than it should. */
        OVER_RATED(Aspect.RATING, "over-rated", true),
        /** It melts too soon. */
        UNDER_RATED(Aspect.RATING, "under-rated", true),
        /** No glow. */
        DARK(Aspect.LAMP, "dark", false),
        /** Less than half of the rated light. */
        DIM(Aspect.LAMP, "dim", true),
        /** About the rated light. */
        LIT(Aspect.LAMP, "lit", true),
        /** More than one and a half times the rated light. */
        BRIGHT(Aspect.LAMP, "too bright", true),
        /** The plunger stays out. */
        STILL(Aspect.COIL, "does nothing", false),
        /** The plunger follows the mains. */
        BUZZES(Aspect.COIL, "buzzes", true),
        /** The plunger stays out, but would stay in. */
        TOO_WEAK(Aspect.COIL, "does not pull in, would hold", true),
        /** The plunger is in and stays in. */
        HOLDS(Aspect.COIL, "holds", true),
        /** The plunger goes in and stays in. */
        PULLS_IN(Aspect.COIL, "pulls in", true),
        /** The plunger goes in, is let go by its own switch, and goes in again. */
        CHATTERS(Aspect.COIL, "pulls in and lets go over and over", true),
        /** No supply to speak of. */
        DEAD(Aspect.START_UP, "dead", true),
        /** The supply dips below what it needs. */
        IN_RESET(Aspect.START_UP, "held in reset", true),
        /** A start-up check fails. */
        STOPS(Aspect.START_UP, "stops", true),
        /** All checks pass. */
        STARTS(Aspect.START_UP, "starts", true),
        /** Not so warm that a finger draws back. */
        NOT_HOT(Aspect.HEAT, "can be touched", false),
        /** Above {@link Warmth#BURN_CELSIUS}. */
        TOO_HOT(Aspect.HEAT, "too hot to touch", true),
        /** A rail as smooth as it should be. */
        QUIET(Aspect.HUM, "quiet", false),
        /** A rail with ripple to be heard. */
        HUMS(Aspect.HUM, "hums", true);

        private final Aspect aspect;
        private final String words;
        private final boolean notable;

        Sight(Aspect aspect, String words, boolean notable) {
            this.aspect = aspect;
            this.words = words;
            this.notable = notable;
        }

        /** What is looked at. */
        public Aspect aspect() {
            return aspect;
        }

        /** As written in tables and JSON. */
        public String words() {
            return words;
        }

        /** Whether it strikes anybody who looks at one machine alone. */
        public boolean notable() {
            return notable;
        }
    }

    /** {@code stops at 2 of 4}, {@code too hot to touch (92 °C)}. */
    public String words() {
        return detail.isEmpty() ? sight.words() : sight.words() + " " + detail;
    }
}
