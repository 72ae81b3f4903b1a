package fusetale.aftermath;

/**
 * One figure of one part against what the part is rated for.
 *
 * @param part designator
 * @param place winding, pin; empty for the whole part
 * @param strain what is compared
 * @param value what it is, in the strain's unit
 * @param limit rating, in the same unit; finite and above 0
 */
public record Stress(String part, String place, Strain strain, double value, double limit) {
    /** Refuses ratings nothing can be compared with. */
    public Stress {
        if (!(limit > 0 && limit < Double.POSITIVE_INFINITY) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(part + ": " + strain + " " + value + " against " + limit);
        }
    }

    /** Air around the parts where temperatures are held against ratings [°C]: a warm cabinet (common practice). */
    public static final double AIR_CELSIUS = 40;

    /** Value over limit, of temperatures rise over permitted rise: above 1 it is past the rating. */
    public double ratio() {
        return strain == Strain.TEMPERATURE ? (value - AIR_CELSIUS) / (limit - AIR_CELSIUS) : value / limit;
    }

    /** Whether the rating is passed. */
    public boolean over() {
        return ratio() > 1;
    }
}
