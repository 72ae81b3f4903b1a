package fusetale.store;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes what {@link Page} reads: every text in double quotes, which YAML 1.2 and JSON have in common. */
final class Written {
    /** Ends a document in YAML 1.2; without it a file may have been cut off. */
    static final String END = "...";

    private final StringBuilder text = new StringBuilder();

    /** Begins with a line for whoever opens the file. */
    Written(String remark) {
        text.append("# ").append(remark).append('\n');
    }

    Written with(String key, String value) {
        text.append(key).append(": ").append(quoted(value)).append('\n');
        return this;
    }

    Written with(String key, List<String> values) {
        text.append(key).append(values.isEmpty() ? ": []\n" : ":\n");
        values.forEach(v -> text.append("  - ").append(quoted(v)).append('\n'));
        return this;
    }

    Written withTables(String key, List<Map<String, String>> tables) {
        text.append(key).append(tables.isEmpty() ? ": []\n" : ":\n");
        tables.forEach(t -> text.append("  - ")
                .append(t.entrySet().stream()
                        .map(e -> e.getKey() + ": " + quoted(e.getValue()))
                        .collect(Collectors.joining("\n    ")))
                .append('\n'));
        return this;
    }

    @Override
    public String toString() {
        return text + END + "\n";
    }

    private static String quoted(String value) {
        StringBuilder quoted = new StringBuilder("\"");
        value.codePoints().forEach(c -> {
            switch (c) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                case '\n' -> quoted.append("\\n");
                case '\r' -> quoted.append("\\r");
                case '\t' -> quoted.append("\\t");
                default -> {
                    if (c < 0x20 || (c >= 0x7F && c < 0xA0) || c == 0x2028 || c == 0x2029 || c == 0xFEFF || lone(c)) {
                        quoted.append(String.format("\\u%04X", c));
                    } else {
                        quoted.appendCodePoint(c);
                    }
                }
            }
        });
        return quoted.append('"').toString();
    }

    /** Half of a pair, or no sign at all: nothing that a file may hold as it is. */
    private static boolean lone(int c) {
        return (c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE) || c == 0xFFFE || c == 0xFFFF;
    }
}
