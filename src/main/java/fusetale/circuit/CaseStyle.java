package fusetale.circuit;

/**
 * The cases that semiconductors come in, with the thermal figures that are common to everything in such a case. They stand
 * in for what a part model does not say itself.
 *
 * <p>Heat capacity of the case: its mass times the specific heat of what it is made of. Masses are from memory of data
 * sheets; specific heats in J/(g·K): copper 0.385, iron and steel 0.46, aluminium 0.90, glass 0.84, epoxy moulding compound
 * 1.0 (handbook values, rounded). Heat capacity of the junction: the chip's volume times 1.63 J/(cm³·K) of silicon (0.70
 * J/(g·K) times 2.33 g/cm³), chip sizes from memory. Thermal resistances: data sheet classes where said, else from memory.
 */
public enum CaseStyle {
    /** Small glass diode, 0.13 g, half of it glass; chip 0.5 x 0.5 x 0.2 mm. Highest 175 °C; 240 K/W to 4 mm of lead. */
    DO_35("DO-35", 175, 240, 350, silicon(0.5, 0.5, 0.2), mass(0.065, Matter.GLASS) + mass(0.065, Matter.STEEL)),
    /** Plastic diode of 1 A or zener of 1 W, 0.34 g, half of it copper; chip 1.3 x 1.3 x 0.3 mm; 25 K/W to the lead. */
    DO_41("DO-41", 150, 25, 50, silicon(1.3, 1.3, 0.3), mass(0.17, Matter.COPPER) + mass(0.17, Matter.EPOXY)),
    /** Plastic diode of 3 A, 1.1 g, two thirds copper; chip 2.5 x 2.5 x 0.3 mm; 10 K/W to the lead. */
    DO_201("DO-201", 150, 10, 20, silicon(2.5, 2.5, 0.3), mass(0.75, Matter.COPPER) + mass(0.35, Matter.EPOXY)),
    /** Lamp diode of 5 mm, 0.3 g, mostly epoxy; chip 0.3 x 0.3 x 0.25 mm. */
    LED("LED", 100, 200, 350, silicon(0.3, 0.3, 0.25), mass(0.2, Matter.EPOXY) + mass(0.1, Matter.STEEL)),
    /** Small plastic transistor, 0.2 g, a third of it copper; chip 0.6 x 0.6 x 0.25 mm; 83.3 and 200 K/W (data sheets). */
    TO_92("TO-92", 150, 83.3, 200, silicon(0.6, 0.6, 0.25), mass(0.07, Matter.COPPER) + mass(0.13, Matter.EPOXY)),
    /** Small metal can (TO-39), 1.0 g of steel; chip 1.2 x 1.2 x 0.25 mm. */
    TO_205("TO-205", 200, 35, 175, silicon(1.2, 1.2, 0.25), mass(1.0, Matter.STEEL)),
    /** Plastic case with a tab, 1.9 g, 1.2 g of it copper; chip 4 x 4 x 0.35 mm; 1.67 and 62.5 K/W (data sheets). */
    TO_220("TO-220", 150, 1.67, 62.5, silicon(4, 4, 0.35), mass(1.2, Matter.COPPER) + mass(0.7, Matter.EPOXY)),
    /** Large metal can, 14 g of steel; chip 5 x 5 x 0.35 mm; 1.5 K/W, and 35 K/W without heat sink (data sheets). */
    TO_3("TO-3", 200, 1.5, 35, silicon(5, 5, 0.35), mass(14, Matter.STEEL)),
    /** Bridge with four pins in a row, 7 g, mostly epoxy; the chip and junction to case are one leg's. */
    BRIDGE_IN_LINE(
            "in-line bridge", 150, 3.1, 22, silicon(2.8, 2.8, 0.3), mass(1.5, Matter.COPPER) + mass(5.5, Matter.EPOXY)),
    /** Square bridge with a hole, 15 g, a third of it the aluminium base; the chip and junction to case are one leg's. */
    BRIDGE_SQUARE(
            "square bridge", 150, 1.9, 20, silicon(4, 4, 0.3), mass(5, Matter.ALUMINIUM) + mass(10, Matter.EPOXY));

    private final String words;
    private final double highestCelsius;
    private final double junctionToCaseKelvinPerWatt;
    private final double junctionToAirKelvinPerWatt;
    private final double junctionJoulesPerKelvin;
    private final double caseJoulesPerKelvin;

    CaseStyle(
            String words,
            double highestCelsius,
            double junctionToCase,
            double junctionToAir,
            double junctionJoulesPerKelvin,
            double caseJoulesPerKelvin) {
        this.words = words;
        this.highestCelsius = highestCelsius;
        this.junctionToCaseKelvinPerWatt = junctionToCase;
        this.junctionToAirKelvinPerWatt = junctionToAir;
        this.junctionJoulesPerKelvin = junctionJoulesPerKelvin;
        this.caseJoulesPerKelvin = caseJoulesPerKelvin;
    }

    /** As written in part files. */
    public String words() {
        return words;
    }

    /** Highest junction temperature [°C] of silicon in such a case. */
    public double highestCelsius() {
        return highestCelsius;
    }

    /** From the junction to the case, or to the lead of a part without a flange. */
    public double junctionToCaseKelvinPerWatt() {
        return junctionToCaseKelvinPerWatt;
    }

    /** From the junction to free air, without heat sink. */
    public double junctionToAirKelvinPerWatt() {
        return junctionToAirKelvinPerWatt;
    }

    /** Heat capacity of the chip. */
    public double junctionJoulesPerKelvin() {
        return junctionJoulesPerKelvin;
    }

    /** Heat capacity of the case. */
    public double caseJoulesPerKelvin() {
        return caseJoulesPerKelvin;
    }

    /** The case whose junction-to-air resistance comes nearest, on a scale of ratios; TO-220 where it is not known. */
    static CaseStyle nearest(double junctionToAirKelvinPerWatt) {
        CaseStyle best = TO_220;
        if (!Double.isFinite(junctionToAirKelvinPerWatt)) {
            return best;
        }
        for (CaseStyle each : values()) {
            if (distance(each, junctionToAirKelvinPerWatt) < distance(best, junctionToAirKelvinPerWatt)) {
                best = each;
            }
        }
        return best;
    }

    private static double distance(CaseStyle style, double kelvinPerWatt) {
        return Math.abs(Math.log(style.junctionToAirKelvinPerWatt / kelvinPerWatt));
    }

    /** Heat capacity [J/K] of a chip of silicon, edges in mm. */
    private static double silicon(double length, double width, double thickness) {
        return length * width * thickness * 1e-3 * 1.63;
    }

    /** Heat capacity [J/K] of a mass [g]. */
    private static double mass(double grams, Matter matter) {
        return grams * matter.joulesPerGramKelvin;
    }

    /** What cases are made of. */
    private enum Matter {
        COPPER(0.385),
        STEEL(0.46),
        ALUMINIUM(0.90),
        GLASS(0.84),
        EPOXY(1.0);

        private final double joulesPerGramKelvin;

        Matter(double joulesPerGramKelvin) {
            this.joulesPerGramKelvin = joulesPerGramKelvin;
        }
    }
}
