package fusetale.aftermath;

/**
 * When copper melts that has no time to lose heat: I = A·√(log10(1 + (Tm − Ta)/(234 + Ta))/(33·t)), A in circular mils, Tm
 * 1083 °C (I. M. Onderdonk, as quoted by E. R. Stauffacher, "Short-time current carrying capacity of copper wire", General
 * Electric Review 31, 1928).
 */
final class Onderdonk {
    /** Beyond this [s] a wire in air loses heat, and the equation melts it too soon. */
    static final double GOOD_TO_SECONDS = 10;

    private static final double MELTS_CELSIUS = 1083;
    private static final double SQUARE_MILLIMETRES_PER_CIRCULAR_MIL = Math.PI / 4 * 0.0254 * 0.0254;

    private Onderdonk() {}

    /**
     * Time to melt.
     *
     * @param squareMillimetres cross-section [mm²], above 0
     * @param amps r.m.s. current [A]
     * @param airCelsius where the copper starts from [°C]
     * @return seconds; infinite without current
     */
    static double seconds(double squareMillimetres, double amps, double airCelsius) {
        double circularMils = squareMillimetres / SQUARE_MILLIMETRES_PER_CIRCULAR_MIL;
        double rise = Math.log10(1 + (MELTS_CELSIUS - airCelsius) / (234 + airCelsius));
        double density = circularMils / amps;
        return rise * density * density / 33;
    }
}
