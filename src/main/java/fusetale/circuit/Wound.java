package fusetale.circuit;

import fusetale.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * What a winding is made of, as far as it decides how hot it gets and when its insulation goes.
 *
 * <p>Where a machine file does not say, {@link #ofSolenoid}, {@link #ofRelay} and {@link #ofTransformer} estimate.
 *
 * @param copperGrams mass of its copper
 * @param insulation thermal class of its enamel and wrapping
 */
public record Wound(double copperGrams, InsulationClass insulation) {
    private static final InsulationClass USUAL = InsulationClass.CLASS_130;

    /**
     * Of a solenoid's winding. Judgement: bobbins of the trade have one size and are wound full whatever the gauge, so the
     * mass does not follow from the resistance; 60 g.
     */
    static Wound ofSolenoid() {
        return new Wound(60, USUAL);
    }

    /** Of the holding winding that shares a bobbin with a strong one. Judgement: a third of what that has, 20 g. */
    static Wound ofHolding() {
        return new Wound(20, USUAL);
    }

    /** Of a relay on a board. Judgement: 12 g. */
    static Wound ofRelay() {
        return new Wound(12, USUAL);
    }

    /**
     * Of a transformer's winding, from its resistance and rated current: cross-section by 3 A/mm² (common practice for small
     * mains transformers, 2.5 to 3.5), length by the resistance, mass by the density; 200 g where no current is known
     * (judgement).
     */
    static Wound ofTransformer(Transformer.Winding winding) {
        Quantity amps = winding.ratedAmps();
        return new Wound(amps == null ? 200 : grams(winding.ohms().si(), amps.si() / 3), USUAL);
    }

    /** Mass of copper [g] of a resistance [Ω] made of wire of a cross-section [mm²]. */
    static double grams(double ohms, double squareMillimetres) {
        double metres = ohms * squareMillimetres / Copper.OHM_SQUARE_MILLIMETRES_PER_METRE;
        return Copper.GRAMS_PER_CUBIC_CENTIMETRE * metres * squareMillimetres;
    }

    /** Heat capacity of its copper. */
    public double joulesPerKelvin() {
        return copperGrams * Copper.JOULES_PER_GRAM_KELVIN;
    }

    /** With what a file says, or else this. */
    Wound or(@Nullable Quantity copper, @Nullable InsulationClass said) {
        return new Wound(copper == null ? copperGrams : copper.si(), said == null ? insulation : said);
    }
}
