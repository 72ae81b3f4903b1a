package fusetale.explore;

import fusetale.quantity.Unit;

/** A figure of a part that a swap may change. */
public enum SwapFigure {
    /** Mean current out of a rectifier or a regulator. */
    DC_OUTPUT("d.c. output current", Unit.AMPERE),
    /** Mean current of a junction; of a bridge, of the leg that carries most. */
    MEAN_CURRENT("mean current", Unit.AMPERE),
    /** Heating current of the same. */
    RMS_CURRENT("r.m.s. current", Unit.AMPERE),
    /** Highest current of the same in every cycle. */
    PEAK_CURRENT("peak current", Unit.AMPERE),
    /** How much of the cycle it conducts, in degrees. */
    CONDUCTION_ANGLE("conduction angle", Unit.RATIO),
    /** Highest current after switching on. */
    SURGE_CURRENT("surge at switch-on", Unit.AMPERE),
    /** Largest I²t of half a cycle after switching on. */
    SURGE_HEAT("I²t at switch-on", Unit.AMPERE_SQUARED_SECOND),
    /** Mean dissipation of the whole part. */
    DISSIPATION("dissipation", Unit.WATT),
    /** Of the hottest junction, once everything is warm. */
    JUNCTION_TEMPERATURE("junction temperature", Unit.CELSIUS),
    /** What it may deliver for good. */
    SAFE_CURRENT("safe d.c. current", Unit.AMPERE),
    /** Highest less lowest voltage of a capacitor. */
    RIPPLE("peak-to-peak ripple", Unit.VOLT),
    /** Heating current of a capacitor. */
    RIPPLE_CURRENT("r.m.s. ripple current", Unit.AMPERE),
    /** Highest voltage of a capacitor, or across what switches. */
    HIGHEST_VOLTAGE("highest voltage", Unit.VOLT),
    /** Highest voltage at a regulator's input. */
    INPUT_VOLTAGE("highest input voltage", Unit.VOLT),
    /** Highest reverse voltage of a rectifier; of a bridge, of the leg that sees most. */
    REVERSE_VOLTAGE("reverse voltage", Unit.VOLT);

    private final String words;
    private final Unit unit;

    SwapFigure(String words, Unit unit) {
        this.words = words;
        this.unit = unit;
    }

    /** Whether it is a voltage that a part stands or not, which goes up with the mains. */
    boolean voltage() {
        return this == HIGHEST_VOLTAGE || this == INPUT_VOLTAGE || this == REVERSE_VOLTAGE;
    }

    /** As in a table's row. */
    public String words() {
        return words;
    }

    /** Its unit; a pure number for degrees of an angle. */
    public Unit unit() {
        return unit;
    }

    /** Its unit as written behind a number. */
    public String symbol() {
        return this == CONDUCTION_ANGLE ? "°" : unit.symbol();
    }
}
