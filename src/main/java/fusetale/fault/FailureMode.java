package fusetale.fault;

/** The failure words of the vocabulary. */
public enum FailureMode {
    /** Current passes where it should not. */
    SHORT("short", "is shorted"),
    /** Nothing passes. */
    OPEN("open", "is open"),
    /** A bit passes that should not. */
    LEAKY("leaky", "is leaky"),
    /** Works, with another value. */
    DRIFTED("drifted", "has drifted"),
    /** Electrolytic: low capacitance, high ESR. */
    DRIED_OUT("dried-out", "is dried out"),
    /** Fuse: melted. */
    BLOWN("blown", "is blown"),
    /** Fuse: not in its clips. */
    MISSING("missing", "is missing"),
    /** Another link than the marking asks for. */
    WRONG_RATING("wrong-rating", "holds a wrong fuse"),
    /** Clip or pin that hardly touches. */
    LOOSE("loose", "is loose"),
    /** Contact gone resistive by heat. */
    BURNT("burnt", "is burnt"),
    /** Solder that looks whole and is not. */
    CRACKED_JOINT("cracked-joint", "has a cracked joint"),
    /** Fitted the wrong way round. */
    REVERSED("reversed", "is reversed"),
    /** Winding with turns shorted. */
    SHORTED_TURNS("shorted-turns", "has shorted turns"),
    /** Cannot be switched off. */
    STUCK_ON("stuck-on", "is stuck on"),
    /** Cannot be switched on. */
    STUCK_OFF("stuck-off", "is stuck off"),
    /** Less of what it should give: gain, output, charge. */
    WEAK("weak", "is weak");

    private final String compact;
    private final String words;

    FailureMode(String compact, String words) {
        this.compact = compact;
        this.words = words;
    }

    /** As in {@code D1=short}. */
    public String compact() {
        return compact;
    }

    /** As in "D1 is shorted", without an amount. */
    public String words() {
        return words;
    }
}
