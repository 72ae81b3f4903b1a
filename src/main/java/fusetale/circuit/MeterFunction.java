package fusetale.circuit;

import fusetale.quantity.Unit;

/** What a meter's switch is set to. */
public enum MeterFunction {
    /** Mean voltage. */
    DC_VOLTS("d.c. volts", Unit.VOLT, true),
    /** Alternating voltage. */
    AC_VOLTS("a.c. volts", Unit.VOLT, true),
    /** Resistance. */
    OHMS("ohms", Unit.OHM, false),
    /** Voltage across a junction at the meter's test current. */
    DIODE_TEST("diode test", Unit.VOLT, false);

    private final String words;
    private final Unit unit;
    private final boolean powered;

    MeterFunction(String words, Unit unit, boolean powered) {
        this.words = words;
        this.unit = unit;
        this.powered = powered;
    }

    /** As printed on the meter. */
    public String words() {
        return words;
    }

    /** Unit of its readings. */
    public Unit unit() {
        return unit;
    }

    /** Whether it is used with the power on; the others are refused then. */
    public boolean powered() {
        return powered;
    }
}
