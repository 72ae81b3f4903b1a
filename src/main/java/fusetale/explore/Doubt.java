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
        /** The figures may mislead. */
        DOUBTFUL,
        /** Good to know. */
        NOTE,
        /** To be minded on a healthy machine too. */
        CAUTION
    }
}
