package fusetale.circuit;

import fusetale.quantity.Quantity;
import fusetale.quantity.Toleranced;
import fusetale.quantity.Unit;

/**
 * Resistance of copper over temperature: R(t2)/R(t1) = (234.5 + t2)/(234.5 + t1), t in °C (IEC 60034-1 and IEEE 112 for
 * windings; the same as 0.00393 per kelvin at 20 °C of IEC 60028 and IEC 60228, which is 1/(234.5 + 20)).
 */
public final class Copper {
    /** Temperature [°C] at which winding resistances are stated. */
    public static final double STATED_CELSIUS = 25;

    /** Resistivity of annealed copper at 20 °C (IEC 60028: 1/58 Ω·mm²/m). */
    public static final double OHM_SQUARE_MILLIMETRES_PER_METRE = 1 / 58.0;

    /** Density of annealed copper (IEC 60028). */
    public static final double GRAMS_PER_CUBIC_CENTIMETRE = 8.89;

    /** Specific heat of copper near room temperature (handbook value). */
    public static final double JOULES_PER_GRAM_KELVIN = 0.385;

    private static final double OFFSET_CELSIUS = 234.5;

    private Copper() {}

    /**
     * What a winding's resistance is multiplied by.
     *
     * @param fromCelsius temperature at which it is known [°C], above −234.5
     * @param toCelsius temperature at which it is wanted [°C], above −234.5
     */
    public static double ratio(double fromCelsius, double toCelsius) {
        return (OFFSET_CELSIUS + toCelsius) / (OFFSET_CELSIUS + fromCelsius);
    }

    /** A winding stated at 25 °C, at another temperature [°C]. */
    static Toleranced at(double celsius, Toleranced ohms) {
        double warm = ohms.si() * ratio(STATED_CELSIUS, celsius);
        return new Toleranced(new Quantity(warm, Unit.OHM), ohms.tolerance());
    }
}
