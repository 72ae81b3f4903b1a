package fusetale.circuit;

/**
 * How a part's heat gets away, from the chip to the case and from the case to still air: two heat capacities, two
 * resistances. Every figure is known; what a part model leaves out is {@link CaseStyle}'s. Of a bridge, junction figures are
 * those of one leg, case figures those of the whole package.
 *
 * @param style its case
 * @param highestCelsius highest junction temperature it stands
 * @param junctionToCaseKelvinPerWatt from the junction to the case, or to the lead of a part without a flange
 * @param caseToAirKelvinPerWatt from the case to free air, without heat sink; above 0
 * @param junctionJoulesPerKelvin heat capacity of the chip
 * @param caseJoulesPerKelvin heat capacity of the case
 */
public record Thermal(
        CaseStyle style,
        double highestCelsius,
        double junctionToCaseKelvinPerWatt,
        double caseToAirKelvinPerWatt,
        double junctionJoulesPerKelvin,
        double caseJoulesPerKelvin) {
    /** What is usual in a case. */
    static Thermal of(CaseStyle style) {
        return new Thermal(
                style,
                style.highestCelsius(),
                style.junctionToCaseKelvinPerWatt(),
                style.junctionToAirKelvinPerWatt() - style.junctionToCaseKelvinPerWatt(),
                style.junctionJoulesPerKelvin(),
                style.caseJoulesPerKelvin());
    }

    /** What is usual at a junction-to-air resistance, infinite where it is not known. */
    static Thermal usual(double junctionToAirKelvinPerWatt) {
        Thermal usual = of(CaseStyle.nearest(junctionToAirKelvinPerWatt));
        return Double.isFinite(junctionToAirKelvinPerWatt)
                ? usual.withJunctionToAir(junctionToAirKelvinPerWatt)
                : usual;
    }

    /** The same with a junction-to-air resistance, of which junction to case keeps its part, two thirds at most. */
    Thermal withJunctionToAir(double kelvinPerWatt) {
        double toCase = Math.min(junctionToCaseKelvinPerWatt, kelvinPerWatt * 2 / 3);
        return new Thermal(
                style, highestCelsius, toCase, kelvinPerWatt - toCase, junctionJoulesPerKelvin, caseJoulesPerKelvin);
    }

    /** From the junction to free air, without heat sink. */
    public double junctionToAirKelvinPerWatt() {
        return junctionToCaseKelvinPerWatt + caseToAirKelvinPerWatt;
    }
}
