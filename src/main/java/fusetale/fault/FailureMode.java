package fusetale.fault;

/** The failure words of the vocabulary. */
public enum FailureMode {
    /** Current passes where it should not. */
    SHORT("short", "is shorted", "is shorted, {}"),
    /** Nothing passes. */
    OPEN("open", "is open", "is open, {}"),
    /** Winding that measures more than it should: its wire has all but parted. */
    PARTLY_OPEN("partly-open", "is partly open", "is partly open, {}"),
    /** A bit passes that should not. */
    LEAKY("leaky", "is leaky", "is leaky, {}"),
    /** Works, with another value. */
    DRIFTED("drifted", "has drifted", "has drifted to {} of nominal"),
    /** Electrolytic: low capacitance, high ESR. */
    DRIED_OUT("dried-out", "is dried out", "is dried out to {} left"),
    /** Electrolytic: full capacitance behind too much resistance. */
    HIGH_ESR("high-esr", "has high ESR", "has high ESR, {}"),
    /** Fuse: melted. */
    BLOWN("blown", "is blown", "is blown"),
    /** Fuse: not in its clips. */
    MISSING("missing", "is missing", "is missing"),
    /** Another link, or bulb, than the marking asks for. */
    WRONG_RATING("wrong-rating", "holds a wrong fuse", "holds a {} fuse"),
    /** Clip or pin that hardly touches. */
    LOOSE("loose", "is loose", "is loose, {}"),
    /** Contact gone resistive by heat. */
    BURNT("burnt", "is burnt", "is burnt, {}"),
    /** Solder that looks whole and is not. */
    CRACKED_JOINT("cracked-joint", "has a cracked joint", "has a cracked joint, {}"),
    /** Fitted the wrong way round. */
    REVERSED("reversed", "is reversed", "is reversed, {}"),
    /** Connector: its wire and that of the next pin sit in each other's place. */
    SWAPPED("swapped", "is swapped with the next pin", "is swapped with the next pin"),
    /** Winding with turns shorted. */
    SHORTED_TURNS("shorted-turns", "has shorted turns", "has shorted turns, {} left"),
    /** Cannot be switched off. */
    STUCK_ON("stuck-on", "is stuck on", "is stuck on"),
    /** Cannot be switched on. */
    STUCK_OFF("stuck-off", "is stuck off", "is stuck off"),
    /** Output that stands as high as it can. */
    STUCK_HIGH("stuck-high", "is stuck high", "is stuck high"),
    /** Output that stands as low as it can. */
    STUCK_LOW("stuck-low", "is stuck low", "is stuck low"),
    /** Thyristor: conducts only while its gate is driven. */
    NO_LATCH("no-latch", "does not latch", "does not latch"),
    /** Less of what it should give: gain, output, charge. */
    WEAK("weak", "is weak", "is weak, {} left"),
    /** Mains: less than it should ever be. */
    LOW_LINE("low-line", "is low", "is low, {}"),
    /** Mains: more than it should ever be. */
    HIGH_LINE("high-line", "is high", "is high, {}");

    private final String compact;
    private final String plain;
    private final String measured;

    FailureMode(String compact, String plain, String measured) {
        this.compact = compact;
        this.plain = plain;
        this.measured = measured;
    }

    /** As in {@code D1=short}. */
    public String compact() {
        return compact;
    }

    /** As in "D1 is shorted", without an amount. */
    public String words() {
        return plain;
    }

    /** How a sentence says it, where the part's kind has no word of its own. */
    public Phrase phrase() {
        return new Phrase(plain, measured);
    }
}
