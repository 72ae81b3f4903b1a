package fusetale.circuit;

import fusetale.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/**
 * The mains at the machine's inlet, between the nets {@code line} and {@code neutral}.
 *
 * @param volts nominal, r.m.s.
 * @param lowestVolts low end of what a healthy supply gives
 * @param highestVolts high end
 * @param hertz frequency now
 * @param sourceOhms resistance of house wiring and lead
 * @param presentVolts what the socket gives whatever the bench is set to, r.m.s.; null where the bench decides
 * @param ratedHertz frequency for which the machine's transformers are made
 */
public record Mains(
        Quantity volts,
        Quantity lowestVolts,
        Quantity highestVolts,
        Quantity hertz,
        Quantity sourceOhms,
        @Nullable Quantity presentVolts,
        Quantity ratedHertz) {
    /** What a sentence calls the mains; no part is called so. */
    public static final String NAME = "mains";

    /** Lowest frequency a bench may set [Hz]: below it a period holds more than this program's steps resolve. */
    public static final double LOWEST_HERTZ = 1;

    /** Highest frequency a bench may set [Hz]: above it stray capacitances count that no file holds. */
    public static final double HIGHEST_HERTZ = 1e6;

    /** Net of the live conductor. */
    public static final Net LINE = new Net("line");

    /** Net of the neutral conductor. */
    public static final Net NEUTRAL = new Net("neutral");

    /** Sound mains, which give what the bench is set to. */
    public Mains(Quantity volts, Quantity lowestVolts, Quantity highestVolts, Quantity hertz, Quantity sourceOhms) {
        this(volts, lowestVolts, highestVolts, hertz, sourceOhms, null, hertz);
    }

    /** The same behind another resistance. */
    public Mains behind(Quantity ohms) {
        return new Mains(volts, lowestVolts, highestVolts, hertz, ohms, presentVolts, ratedHertz);
    }

    /** The same at another frequency. */
    public Mains at(Quantity otherHertz) {
        return new Mains(volts, lowestVolts, highestVolts, otherHertz, sourceOhms, presentVolts, ratedHertz);
    }

    /** The same at a socket that gives this voltage, r.m.s., whatever the bench is set to. */
    public Mains giving(Quantity present) {
        return new Mains(volts, lowestVolts, highestVolts, hertz, sourceOhms, present, ratedHertz);
    }
}
