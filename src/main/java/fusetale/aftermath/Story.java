package fusetale.aftermath;

import java.util.List;

/**
 * One order in which things happen that change the machine.
 *
 * @param steps what happens, in this order; empty where nothing changes
 * @param count how many machines go this way
 * @param end how it ends
 */
public record Story(List<Event> steps, int count, End end) {
    /** Copies the list. */
    public Story {
        steps = List.copyOf(steps);
    }

    /** How a story ends. */
    public enum End {
        /** Nothing more happens before the time is over. */
        RESTS,
        /** No steady reading was found for what is left of the machine: what follows is not known. */
        UNKNOWN,
        /** It went on for more steps than are followed. */
        CUT_OFF
    }
}
