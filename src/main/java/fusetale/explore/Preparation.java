package fusetale.explore;

/** What {@link Explorer#prepare} makes of a question. */
public sealed interface Preparation {
    /**
     * The healthy side is worked out.
     *
     * @param prepared ready for suppositions
     */
    record Ready(Prepared prepared) implements Preparation {}

    /**
     * It cannot be.
     *
     * @param reason why
     */
    record None(Answer.Unanswered reason) implements Preparation {}
}
