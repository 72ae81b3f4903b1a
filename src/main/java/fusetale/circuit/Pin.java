package fusetale.circuit;

/**
 * One terminal of a part.
 *
 * @param name within the part: {@code anode}, {@code ac1}, {@code sol.1}
 * @param net what it is soldered to
 */
public record Pin(String name, Net net) {}
