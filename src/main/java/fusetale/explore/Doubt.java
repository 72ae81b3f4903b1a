package fusetale.explore;

/**
 * Something a reader must know before trusting an outcome.
 *
 * @param severity how much it matters
 * @param text one plain sentence
 */
public record Doubt(Severity severity, String text) {
    /** How much a doubt matters. */
    public enum Severity {
        /** Somebody could be hurt, or a part destroyed. */
        DANGER,
        /** Somebody could be hurt after switching off; powering up does no harm. */
        HAZARD,
        /** The figures may mislead. */
        DOUBTFUL,
        /** Good to know. */
        NOTE,
        /** To be minded on a healthy machine too. */
        CAUTION
    }

    /** Whether it is to be minded at work, whatever the figures say. */
    public boolean minded() {
        return severity == Severity.HAZARD || severity == Severity.CAUTION;
    }
}
