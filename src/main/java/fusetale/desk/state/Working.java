package fusetale.desk.state;

/**
 * What is being worked out.
 *
 * @param busy whether anything is
 * @param step which step of it
 * @param done pieces done
 * @param of pieces in all; 0 where that is not known
 */
public record Working(boolean busy, Step step, int done, int of) {
    /** Nothing is. */
    public static final Working NOTHING = new Working(false, Step.ANSWER, 0, 0);

    /** Steps of working something out. */
    public enum Step {
        /** What healthy machines show. */
        HEALTHY,
        /** What this machine shows. */
        ANSWER,
        /** What follows if nobody switches off. */
        AFTERMATH
    }

    /** Busy with a step whose length is not known. */
    static Working at(Step step) {
        return new Working(true, step, 0, 0);
    }
}
