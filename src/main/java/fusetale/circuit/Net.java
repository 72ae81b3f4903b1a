package fusetale.circuit;

/**
 * A set of pins joined by copper.
 *
 * @param name as on the schematic; unique in a circuit
 */
public record Net(String name) implements Comparable<Net> {
    @Override
    public int compareTo(Net other) {
        return name.compareTo(other.name);
    }

    @Override
    public String toString() {
        return name;
    }
}
