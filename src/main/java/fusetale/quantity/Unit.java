package fusetale.quantity;

/** The units a repairer writes; every {@link Quantity} is held in the SI unit of its kind. */
public enum Unit {
    /** Electric potential. */
    VOLT("V"),
    /** Electric current. */
    AMPERE("A"),
    /** Resistance. */
    OHM("ohm"),
    /** Capacitance. */
    FARAD("F"),
    /** Inductance. */
    HENRY("H"),
    /** Power. */
    WATT("W"),
    /** Frequency. */
    HERTZ("Hz"),
    /** Time. */
    SECOND("s"),
    /** Temperature on the Celsius scale, the one exception to SI: workshops speak of degrees Celsius. */
    CELSIUS("°C"),
    /** Thermal resistance. */
    KELVIN_PER_WATT("K/W"),
    /** Pulse let-through of a fuse or a junction. */
    AMPERE_SQUARED_SECOND("A²s"),
    /** A pure number; written as a per cent or as × k. */
    RATIO("");

    private final String symbol;

    Unit(String symbol) {
        this.symbol = symbol;
    }

    /** The symbol as printed behind a number, without prefix. */
    public String symbol() {
        return symbol;
    }
}
