package fusetale.match;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** A column of a file of readings. */
enum Column {
    /** How the bench is set. */
    ARRANGEMENT("arrangement"),
    /** What the meter is set to, or what is looked at. */
    FUNCTION("function"),
    /** The red lead, or the part. */
    FROM("from"),
    /** The black lead. */
    TO("to"),
    /** What was shown. */
    VALUE("value"),
    /** Its unit. */
    UNIT("unit"),
    /** Which meter. */
    METER("meter"),
    /** A remark. */
    NOTE("note");

    private final String words;

    Column(String words) {
        this.words = words;
    }

    /** As it heads the column. */
    String words() {
        return words;
    }

    /** What else people write above it. */
    private List<String> also() {
        return switch (this) {
            case FROM -> List.of("red", "red lead", "part");
            case TO -> List.of("black", "black lead");
            case VALUE -> List.of("reading");
            case NOTE -> List.of("notes", "remark");
            default -> List.of();
        };
    }

    /** Whether a file must have it. */
    boolean needed() {
        return this == FUNCTION || this == FROM || this == VALUE;
    }

    /** The column that a cell heads. */
    static Optional<Column> headed(String cell) {
        String plain = SightWords.plain(cell);
        return Arrays.stream(values())
                .filter(c -> c.words.equals(plain) || c.also().contains(plain))
                .findFirst();
    }

    /** All headings, in the order in which they are written. */
    static List<String> all() {
        return Arrays.stream(values()).map(Column::words).toList();
    }
}
