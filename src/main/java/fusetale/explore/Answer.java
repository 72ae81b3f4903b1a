package fusetale.explore;

import java.util.List;

/** What {@link Explorer} makes of a question. */
public sealed interface Answer {
    /**
     * It has an answer.
     *
     * @param outcome the answer
     */
    record Answered(Outcome outcome) implements Answer {}

    /**
     * It has none.
     *
     * @param why what kind of obstacle
     * @param text one or two plain sentences telling what to change
     * @param names nets and parts concerned
     */
    record Unanswered(Why why, String text, List<String> names) implements Answer {
        /** Copies the list. */
        public Unanswered {
            names = List.copyOf(names);
        }
    }

    /** Kinds of obstacle. */
    enum Why {
        /** The question does not fit the circuit, or the circuit is not one: somebody must change it. */
        UNUSABLE,
        /** No steady reading was found. */
        NOT_FOUND,
        /** The caller asked to stop. */
        STOPPED
    }
}
