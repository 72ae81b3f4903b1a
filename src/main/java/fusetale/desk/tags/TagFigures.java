package fusetale.desk.tags;

import fusetale.bench.Check;

/**
 * What one tag says.
 *
 * @param check what is measured
 * @param name the point, or both where the leads are held
 * @param place what the point is
 * @param state how to show it
 * @param shows what the meter would say, as supposed; empty where that is not known
 * @param healthy what it says on a healthy machine; empty where that is not known
 * @param read what was read; empty where nothing was
 * @param moved how far it moved, a pure number
 * @param spoken all of it, as a screen reader says it
 */
public record TagFigures(
        Check check,
        String name,
        String place,
        State state,
        String shows,
        String healthy,
        String read,
        double moved,
        String spoken) {
    /** How a tag is shown. */
    public enum State {
        /** Nothing is supposed that moves it, or nothing at all. */
        AS_HEALTHY,
        /** A meter could tell. */
        MOVED,
        /** It moved, but less than parts and meter may vary. */
        TOO_CLOSE,
        /** The repairer cannot get there. */
        OUT_OF_REACH,
        /** No answer yet. */
        WORKING,
        /** The answer is to another question. */
        OUT_OF_DATE,
        /** There is no answer. */
        UNKNOWN
    }

    /** The same, said like this. */
    TagFigures saying(String words) {
        return new TagFigures(check, name, place, state, shows, healthy, read, moved, words);
    }

    /** Whether it belongs among the large ones: it moved or was read. */
    public boolean stands() {
        return !read.isEmpty() || (moved >= 1 && state != State.OUT_OF_REACH);
    }
}
