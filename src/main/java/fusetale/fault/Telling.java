package fusetale.fault;

/**
 * What to tell a repairer of a failure. The texts stand in the package's {@code words.properties}, one place for each kind
 * of part: under kind, place and failure ({@code transistor.ce.short}), or where all places share them under kind and
 * failure ({@code bridge.short}).
 *
 * @param kind the part's kind, as circuit files write it: {@code dual coil}
 * @param key where its texts stand
 * @param detail what the place is, where its words do not say it: {@code ac1 to plus}; may be empty
 */
public record Telling(String kind, String key, String detail) {
    private static final String HAPPENED = ".happened";
    private static final String CONFIRM = ".confirm";

    /** The texts of a failure at a place, or at a class of places. */
    static Telling of(String kind, String place, FailureMode mode, String detail) {
        String whole = Texts.key(kind) + "." + mode.compact();
        String key = place.isEmpty()
                ? whole
                : Texts.first(HAPPENED, Texts.key(kind) + "." + place + "." + mode.compact(), whole);
        return new Telling(kind, key, detail);
    }

    /** The same with what the place is. */
    Telling detailed(String other) {
        return new Telling(kind, key, other);
    }

    /** What happened inside the part, and what that does to the circuit. */
    public String happened() {
        return Texts.say(key + HAPPENED);
    }

    /** How the trade makes sure: which meter function, in which state, what to lift. */
    public String confirmation() {
        return Texts.say(key + CONFIRM);
    }
}
