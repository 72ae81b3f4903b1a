package fusetale.circuit;

/**
 * Something in a file that a repairer has to change, or should look at.
 *
 * @param severity whether the file can be used in spite of it
 * @param file the file as it was named, with forward slashes
 * @param line line of the file, 1-based; 0 where the file as a whole is meant
 * @param key what it concerns: {@code R204}, {@code T1 primary volts}; may be empty
 * @param found what stands there, as a clause
 * @param allowed what may stand there; may be empty
 * @param nearest the right spelling that comes closest to what stands there; may be empty
 */
public record Problem(
        Severity severity, String file, int line, String key, String found, String allowed, String nearest) {
    /** Whether a file can be used in spite of a problem. */
    public enum Severity {
        /** The file cannot be used. */
        ERROR,
        /** The file can be used; something looks odd. */
        WARNING
    }

    /** Whether the file cannot be used. */
    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** Without the place: {@code R204: key 'toleranse' is not known here; nearest: 'tolerance'. Allowed: …}. */
    public String sentence() {
        StringBuilder words = new StringBuilder();
        if (!key.isEmpty()) {
            words.append(key).append(": ");
        }
        words.append(found);
        if (!nearest.isEmpty()) {
            words.append("; nearest: '").append(nearest).append('\'');
        }
        if (words.charAt(words.length() - 1) != '?') {
            words.append('.');
        }
        if (!allowed.isEmpty()) {
            words.append(" Allowed: ").append(allowed).append('.');
        }
        return words.toString();
    }

    /** The place, then the sentence: {@code circuits/night-ferry.yaml:42: R204: …}. */
    @Override
    public String toString() {
        String place = line > 0 ? file + ":" + line : file;
        String warning = isError() ? "" : "warning: ";
        return place + ": " + warning + sentence();
    }
}
