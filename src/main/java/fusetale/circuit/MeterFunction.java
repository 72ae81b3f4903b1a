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
    DIODE_TEST("diode test", Unit.VOLT, false),
    /** The buzzer that sounds below some resistance. */
    CONTINUITY("continuity", Unit.OHM, false),
    /** Mean current through the meter, which closes a gap in the circuit. */
    DC_AMPS("d.c. amps", Unit.AMPERE, true);

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

    /** Whether it reads a voltage that stands in the circuit. */
    public boolean ofVolts() {
        return this == DC_VOLTS || this == AC_VOLTS;
    }

    /** Whether a schematic promises such readings at its test points, and one takes them there unless told otherwise. */
    public boolean usual() {
        return this != CONTINUITY && this != DC_AMPS;
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
