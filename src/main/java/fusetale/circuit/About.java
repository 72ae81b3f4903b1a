package fusetale.circuit;

/**
 * What a circuit file says about a part beyond its electrical values. It goes along when a supposition rewrites the part.
 *
 * @param note where it sits, what to look out for; may be empty
 * @param mounting {@code on chassis}, {@code standing clear}, {@code free air}; may be empty; see {@link Mounting#of}
 * @param line line of the file, 1-based; 0 where a part was made by a supposition or an arrangement
 * @param make what it is made of
 */
public record About(String note, String mounting, int line, Make make) {
    /** Nothing said. */
    public static final About NOTHING = new About("", "", 0);

    /** Nothing said of what it is made of. */
    public About(String note, String mounting, int line) {
        this(note, mounting, line, Make.NOT_SAID);
    }

    /** The same, made of this. */
    public About of(Make other) {
        return new About(note, mounting, line, other);
    }

    /** The winding of a name, or this where none is known. */
    Wound wound(String winding, Wound usual) {
        return make instanceof Make.Windings windings ? windings.byName().getOrDefault(winding, usual) : usual;
    }

    /** What a winding's resistance, as it is, is multiplied by for that at 25 °C: below 1 where its copper is hot. */
    double statedRatio() {
        return make instanceof Make.Windings windings ? Copper.ratio(windings.celsius(), Copper.STATED_CELSIUS) : 1;
    }
}
