package fusetale.circuit;

/**
 * Where a part's heat goes, the one table of it.
 *
 * <p>The chassis: a plate of aluminium, 2 mm, 200 x 200 mm, both faces free, 5 W/(m²·K) by convection and radiation
 * (handbook value for still air inside a cabinet), so 1/(5 · 0.08) = 2.5 K/W; 3 K/W with what is lost towards its corners
 * (common practice says 2 to 4). Its heat capacity is 216 g times 0.90 J/(g·K). Several parts on one plate share it. Between
 * case and plate 0.4 K/W, mica with compound (common practice, 0.3 to 0.5). A part that stands clear of the board, and one of
 * which nothing is said, cools as its data sheet says for free air; what stands close above a board is no cooler than that.
 */
public enum Mounting {
    /** Screwed to the chassis plate. */
    ON_CHASSIS("on chassis", 0.4, 3.0, 216 * 0.90),
    /** Some millimetres above its board, air around it. */
    STANDING_CLEAR("standing clear", 0, Double.POSITIVE_INFINITY, 0),
    /** On its leads in still air, no heat sink. */
    FREE_AIR("free air", 0, Double.POSITIVE_INFINITY, 0);

    private final String words;
    private final double interfaceKelvinPerWatt;
    private final double sinkKelvinPerWatt;
    private final double sinkJoulesPerKelvin;

    Mounting(String words, double interfaceKelvinPerWatt, double sinkKelvinPerWatt, double sinkJoulesPerKelvin) {
        this.words = words;
        this.interfaceKelvinPerWatt = interfaceKelvinPerWatt;
        this.sinkKelvinPerWatt = sinkKelvinPerWatt;
        this.sinkJoulesPerKelvin = sinkJoulesPerKelvin;
    }

    /** What a circuit file says of a part; free air where it says nothing. */
    public static Mounting of(About about) {
        for (Mounting each : values()) {
            if (each.words.equals(about.mounting())) {
                return each;
            }
        }
        return FREE_AIR;
    }

    /** As written in circuit files. */
    public String words() {
        return words;
    }

    /** Whether there is a plate that takes the heat. */
    public boolean sunk() {
        return Double.isFinite(sinkKelvinPerWatt);
    }

    /** From case to plate; 0 where there is no plate. */
    public double interfaceKelvinPerWatt() {
        return interfaceKelvinPerWatt;
    }

    /** From the plate to the air; infinite where there is no plate. */
    public double sinkKelvinPerWatt() {
        return sinkKelvinPerWatt;
    }

    /** Heat capacity of the plate; 0 where there is none. */
    public double sinkJoulesPerKelvin() {
        return sinkJoulesPerKelvin;
    }

    /**
     * From a case to the air, plate and the case's own surface side by side, once everything is warm.
     *
     * @param freeKelvinPerWatt of the case alone, {@link Thermal#caseToAirKelvinPerWatt}
     */
    public double caseToAirKelvinPerWatt(double freeKelvinPerWatt) {
        return sunk()
                ? 1 / (1 / freeKelvinPerWatt + 1 / (interfaceKelvinPerWatt + sinkKelvinPerWatt))
                : freeKelvinPerWatt;
    }
}
