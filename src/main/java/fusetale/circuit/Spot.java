package fusetale.circuit;

/**
 * Where in a file the reader is, and what it has at hand there.
 *
 * @param name the name of the innermost named thing: {@code R204}
 * @param path for messages: {@code T1 windings sec}
 * @param place where the innermost named thing begins
 * @param findings where problems go
 * @param library part models by name
 */
record Spot(String name, String path, Place place, Findings findings, PartLibrary library) {
    static Spot top(Place place, Findings findings, PartLibrary library) {
        return new Spot("", "", place, findings, library);
    }

    /** One key deeper; the name stays. */
    Spot under(String key) {
        return new Spot(name, joined(key), place, findings, library);
    }

    /** Into a thing with a name of its own. */
    Spot into(Located.Text key) {
        return new Spot(key.text(), joined(key.shown()), key.place(), findings, library);
    }

    /** As {@link #into}, and messages leave out what is around it: parts are known by their name alone. */
    Spot intoAlone(Located.Text key) {
        return new Spot(key.text(), key.shown(), key.place(), findings, library);
    }

    private String joined(String key) {
        return path.isEmpty() ? key : path + " " + key;
    }

    void error(Place at, String found) {
        findings.error(at, path, found);
    }

    void error(Place at, String found, String allowed, String nearest) {
        findings.error(at, path, found, allowed, nearest);
    }
}
