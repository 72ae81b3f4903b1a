package fusetale.circuit;

/**
 * A conductor of copper by its dimensions.
 *
 * @param shape wire or board trace
 * @param squareMillimetres cross-section
 * @param metres length
 * @param surfaceMillimetres what air touches of its circumference
 */
public record Conductor(Shape shape, double squareMillimetres, double metres, double surfaceMillimetres) {
    /** Rise [K] above the air at which its steady current is stated, of wires (as of connectors) and of traces. */
    public static final double WIRE_RISE_KELVIN = 30;

    /** Rise [K] at which the steady current of a board trace is stated. */
    public static final double TRACE_RISE_KELVIN = 20;

    /** What a wire gives off in still air by convection and radiation [W/(m²·K)], thin wires (handbook, 10 to 15). */
    private static final double WATTS_PER_SQUARE_METRE_KELVIN = 12;

    private static final double MILS_PER_MILLIMETRE = 1 / 0.0254;

    /** Kinds of conductors. */
    public enum Shape {
        /** Round wire in still air. */
        WIRE,
        /** Foil on the face of a board. */
        TRACE
    }

    /** A round wire of a cross-section [mm²] and a length [m]. */
    public static Conductor wire(double squareMillimetres, double metres) {
        double diameter = Math.sqrt(4 * squareMillimetres / Math.PI);
        return new Conductor(Shape.WIRE, squareMillimetres, metres, Math.PI * diameter);
    }

    /** Foil on the face of a board, width and thickness in mm, length in m. */
    public static Conductor trace(double width, double thickness, double metres) {
        return new Conductor(Shape.TRACE, width * thickness, metres, width);
    }

    /** Diameter of a solid wire of an American gauge, 0.127 mm · 92^((36 − n)/39) (ASTM B258). */
    public static double gaugeMillimetres(int gauge) {
        return 0.127 * Math.pow(92, (36 - gauge) / 39.0);
    }

    /** Cross-section of a solid wire of an American gauge. */
    public static double gaugeSquareMillimetres(int gauge) {
        double diameter = gaugeMillimetres(gauge);
        return Math.PI / 4 * diameter * diameter;
    }

    /** Resistance from end to end at a temperature [°C], by the resistivity of IEC 60028. */
    public double ohms(double celsius) {
        double cold = Copper.OHM_SQUARE_MILLIMETRES_PER_METRE * metres / squareMillimetres;
        return cold * Copper.ratio(20, celsius);
    }

    /** Mass of its copper. */
    public double copperGrams() {
        return Copper.GRAMS_PER_CUBIC_CENTIMETRE * squareMillimetres * metres;
    }

    /**
     * Steady current it stands: of a trace I = 0.048·ΔT^0.44·A^0.725, A in square mils, an outer layer at a rise of 20 K
     * (IPC-2221); of a wire what warms it by 30 K, I = √(h·π·d·ΔT·A/ρ) with h = 12 W/(m²·K) over the bare copper.
     */
    public double ratedAmps() {
        if (shape == Shape.TRACE) {
            double squareMils = squareMillimetres * MILS_PER_MILLIMETRE * MILS_PER_MILLIMETRE;
            return 0.048 * Math.pow(TRACE_RISE_KELVIN, 0.44) * Math.pow(squareMils, 0.725);
        }
        double wattsPerMetre = WATTS_PER_SQUARE_METRE_KELVIN * surfaceMillimetres * 1e-3 * WIRE_RISE_KELVIN;
        double warmOhmsPerMetre = ohms(25 + WIRE_RISE_KELVIN) / metres;
        return Math.sqrt(wattsPerMetre / warmOhmsPerMetre);
    }
}
