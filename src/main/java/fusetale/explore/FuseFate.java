package fusetale.explore;

import fusetale.circuit.FuseLink;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of one fuse.
 *
 * @param part its designator
 * @param marked what schematic and marking ask for
 * @param fitted what sits in the clips
 * @param state what becomes of it
 * @param amps r.m.s. current it carries until it melts [A]; 0 where none is in the clips or it is blown already
 * @param seconds how long it takes to melt at that current; null where it never melts, is blown, or is not there
 */
public record FuseFate(
        String part,
        FuseLink marked,
        FuseLink fitted,
        State state,
        double amps,
        @Nullable Between seconds) {
    /**
     * A range of times.
     *
     * @param least soonest [s]
     * @param most latest [s]; infinite where it may hold for good
     */
    public record Between(double least, double most) {}

    /** What becomes of a fuse. */
    public enum State {
        /** Carries its current. */
        INTACT("intact"),
        /** Melts for certain within {@link FuseFate#CERTAIN_SECONDS}; the readings are those after it has. */
        MELTS("melts"),
        /** May melt, may hold: the readings are those while it holds. */
        MAY_MELT("may melt"),
        /** Blown by the supposition. */
        BLOWN("blown"),
        /** Missing by the supposition. */
        MISSING("missing"),
        /** Taken out by the arrangement. */
        PULLED("pulled");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** As written in tables and JSON. */
        public String words() {
            return words;
        }
    }

    /** A fuse that melts for certain within these ten minutes is taken as melted. */
    public static final double CERTAIN_SECONDS = 600;

    /** Whether another link than the marking asks for sits in the clips. */
    public boolean wrongLink() {
        return !marked.equals(fitted);
    }
}
