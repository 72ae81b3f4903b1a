package fusetale.circuit;

/**
 * What a circuit file says about a part beyond its electrical values.
 *
 * @param note where it sits, what to look out for; may be empty
 * @param mounting {@code on chassis}, {@code standing clear}, {@code free air}; may be empty
 * @param line line of the file, 1-based; 0 where a part was made by a supposition or an arrangement
 */
public record About(String note, String mounting, int line) {
    /** Nothing said. */
    public static final About NOTHING = new About("", "", 0);
}
