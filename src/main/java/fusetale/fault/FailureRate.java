package fusetale.fault;

import java.util.Locale;

/**
 * Failures in 10⁶ hours from which the priors are made; only their ratios mean something. Handbook rates are generic
 * rates of MIL-HDBK-217F Notice 2 for ground fixed equipment times the quality factor of commercial parts. Those rates
 * know no wear-out, so kinds that age with the calendar are multiplied by {@link #AGE_RATIO}.
 */
enum FailureRate {
    /** Diode below 0.5 A: 0.0075 × 8. */
    SIGNAL_DIODE(0.06),
    /** Power rectifier: 0.022 × 8. */
    RECTIFIER(0.18),
    /** Zener regulator: 0.024 × 8. */
    ZENER(0.19),
    /** Bipolar transistor, small: 0.0011 × 8. */
    SMALL_TRANSISTOR(0.009),
    /** Bipolar transistor, power: 0.042 × 8. */
    POWER_TRANSISTOR(0.34),
    /** MOSFET, low frequency: 0.012 × 8 (from memory). */
    MOSFET(0.1),
    /** Thyristor: 0.0022 × 8 for 1 A, more with the current (from memory); rounded up. */
    THYRISTOR(0.04),
    /** Aluminium electrolytic: 0.061 to 0.081 × 10, and age. */
    ELECTROLYTIC(0.7 * FailureRate.AGE_RATIO),
    /** Ceramic capacitor: 0.0074 × 10; film capacitors taken alike. */
    CAPACITOR(0.07),
    /** Film resistor: 0.0027 × 10. */
    RESISTOR(0.027),
    /** Power wire-wound resistor: 0.031 × 10. */
    POWER_RESISTOR(0.31),
    /** Fuse: 0.020. */
    FUSE(0.02),
    /** One pin of a connector on a board's edge: 0.021 × 2 over about ten pins, and age. */
    CONNECTOR_PIN(0.0042 * FailureRate.AGE_RATIO),
    /** Solder joint made by hand: 0.0052, and age. */
    JOINT(0.0052 * FailureRate.AGE_RATIO),
    /** Lamp on alternating current: 7.8. */
    LAMP(7.8),
    /** Solenoid: no row at hand; judgement, as a power transistor, which dies with it. */
    COIL(0.34),
    /** Mains transformer: no row at hand; judgement, rarer than any semiconductor beside it. */
    TRANSFORMER(0.05),
    /** Linear regulator: no row at hand; judgement, as a power transistor. */
    REGULATOR(0.34),
    /** Operational amplifier: no row at hand; judgement, as a logic output. */
    OP_AMP(0.1),
    /** Logic output: no row at hand; judgement. */
    LOGIC(0.1),
    /** Switch contact: no row at hand; judgement, as a connector pin of the same age. */
    CONTACT(0.0042 * FailureRate.AGE_RATIO),
    /** Memory battery: judgement; a cell of that age is more often spent than not. */
    BATTERY(30),
    /** Mains at the machine's inlet: judgement; a worn plug, a lead broken at its bend, a brown-out. */
    MAINS(0.1),
    /** What hands do wrong (wrong fuse, part turned round): judgement. */
    HANDS(0.02);

    /** Forty to fifty years on: between 10 and 100 by engineering judgement; their geometric mean, rounded. */
    private static final double AGE_RATIO = 30;

    private final double perMillionHours;

    FailureRate(double perMillionHours) {
        this.perMillionHours = perMillionHours;
    }

    /** The share of the rate that one failure mode takes, from the source of the part's kind. */
    Prior share(double ratio) {
        return new Prior(perMillionHours, ratio, key(), "");
    }

    /** A share by judgement. */
    Prior judged(double ratio) {
        return new Prior(perMillionHours, ratio, key(), Prior.JUDGEMENT);
    }

    private String key() {
        return "rate." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
