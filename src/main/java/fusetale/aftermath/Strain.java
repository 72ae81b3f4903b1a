package fusetale.aftermath;

import fusetale.quantity.Unit;

/** What of a part is held against its rating. */
public enum Strain {
    /** Heating current of a winding. */
    WINDING_CURRENT("r.m.s. current of winding", Unit.AMPERE),
    /** Heating current of a fuse against the link that is fitted. */
    LINK_CURRENT("r.m.s. current of the link fitted", Unit.AMPERE),
    /** Heating current of a fuse against what the marking asks for. */
    MARKED_CURRENT("r.m.s. current against the marking", Unit.AMPERE),
    /** Mean forward current of a junction. */
    AVERAGE_CURRENT("mean forward current", Unit.AMPERE),
    /** Mean current of what switches: a transistor, a Darlington. */
    DRIVER_CURRENT("mean current", Unit.AMPERE),
    /** Highest current of a junction, or of what switches. */
    PEAK_CURRENT("peak current", Unit.AMPERE),
    /** Highest reverse, or blocking, voltage. */
    REVERSE_VOLTAGE("reverse voltage", Unit.VOLT),
    /** Highest voltage of a capacitor, or across what switches. */
    VOLTAGE("voltage", Unit.VOLT),
    /** Highest voltage at a regulator's input. */
    INPUT_VOLTAGE("input voltage", Unit.VOLT),
    /** Mean dissipation. */
    POWER("power", Unit.WATT),
    /** Heating current of a wire, a connector pin or a MOSFET's channel. */
    CONDUCTOR_CURRENT("r.m.s. current", Unit.AMPERE),
    /** Heating voltage of a lamp. */
    LAMP_VOLTAGE("r.m.s. voltage", Unit.VOLT),
    /** Hottest spot in the end, with {@link Stress#AIR_CELSIUS} around the part. */
    TEMPERATURE("temperature in the end", Unit.CELSIUS);

    private final String words;
    private final Unit unit;

    Strain(String words, Unit unit) {
        this.words = words;
        this.unit = unit;
    }

    /** As in a table's row. */
    public String words() {
        return words;
    }

    /** Unit of value and limit. */
    public Unit unit() {
        return unit;
    }
}
