package fusetale.sentence;

/**
 * Where the meter's leads are held.
 *
 * @param red name of the point under the red lead: a test point, a net or {@code PART.pin}
 * @param black name of the point under the black lead
 */
public record Leads(String red, String black) {
    /** The same two points with the leads exchanged. */
    public Leads turned() {
        return new Leads(/* red= */ black, /* black= */ red);
    }
}
