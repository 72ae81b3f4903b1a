package fusetale.circuit;

import fusetale.quantity.Quantity;

/**
 * The mains at the machine's inlet, between the nets {@code line} and {@code neutral}.
 *
 * @param volts nominal, r.m.s.
 * @param lowestVolts low end of what a healthy supply gives
 * @param highestVolts high end
 * @param hertz frequency
 * @param sourceOhms resistance of house wiring and lead
 */
public record Mains(Quantity volts, Quantity lowestVolts, Quantity highestVolts, Quantity hertz, Quantity sourceOhms) {
    /** Net of the live conductor. */
    public static final Net LINE = new Net("line");

    /** Net of the neutral conductor. */
    public static final Net NEUTRAL = new Net("neutral");
}
