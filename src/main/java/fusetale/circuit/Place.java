package fusetale.circuit;

/**
 * Where something stands.
 *
 * @param file the file as it was named, with forward slashes
 * @param line 1-based; 0 for the file as a whole
 * @param filledIn where a parameter of a shared block put this text here: {@code circuits/a.yaml:12}; may be empty
 */
record Place(String file, int line, String filledIn) {
    static Place of(String file, int line) {
        return new Place(file, line, "");
    }

    Place filledInBy(Place include) {
        return new Place(file, line, include.toString());
    }

    @Override
    public String toString() {
        return line > 0 ? file + ":" + line : file;
    }
}
