package fusetale.desk.help;

/**
 * One key and what it does.
 *
 * @param keys what to press, as printed on the keys: {@code S}, {@code Ctrl+Z}
 * @param label what it does, in a few words
 */
public record KeyLine(String keys, String label) {}
