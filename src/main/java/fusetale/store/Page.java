package fusetale.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * One of the program's own files as a table of keys: texts, rows of texts, rows of tables of texts. Plain YAML 1.2 that a person
 * can read and mend. Of a damaged file the part above the damage is read.
 */
final class Page {
    private static final int MOST_BYTES = 8_000_000;
    private static final int MOST_ALIASES = 0;

    private final String file;
    private final Map<?, ?> entries;
    private final List<String> lost;

    private Page(String file, Map<?, ?> entries, List<String> lost) {
        this.file = file;
        this.entries = entries;
        this.lost = lost;
    }

    /** Reads a file; nothing where there is none. */
    static Optional<Page> read(Path file) {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        List<String> lost = new ArrayList<>();
        String text = "";
        try {
            if (Files.size(file) > MOST_BYTES) {
                lost.add(file + ": the file is far larger than anything this program writes; it is not read");
            } else {
                text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
            }
        } catch (IOException e) {
            lost.add(file + ": cannot be read: " + e.getMessage());
        }
        if (!saysSomething(text) && lost.isEmpty()) {
            lost.add(file + ": nothing stands in the file");
        }
        Map<?, ?> table = table(text, file.toString(), lost);
        end(text, file.toString(), lost);
        return Optional.of(new Page(file.toString(), table, lost));
    }

    /** Whether there is more than blanks, remarks and the marks that begin and end a document. */
    private static boolean saysSomething(String text) {
        return text.lines()
                .map(String::strip)
                .anyMatch(l -> !l.isEmpty() && !l.startsWith("#") && !l.equals("---") && !l.equals("..."));
    }

    private static Map<?, ?> table(String text, String file, List<String> lost) {
        String rest = text;
        while (saysSomething(rest)) {
            try {
                Object root = new Load(LoadSettings.builder()
                                .setLabel(file)
                                .setMaxAliasesForCollections(MOST_ALIASES)
                                .setCodePointLimit(MOST_BYTES)
                                .setSchema(new TextsAlone())
                                .build())
                        .loadFromString(rest);
                if (root instanceof Map<?, ?> table) {
                    return table;
                }
                lost.add(file + ": no table of keys stands in it");
                return Map.of();
            } catch (MarkedYamlEngineException e) {
                int line = e.getProblemMark().map(m -> m.getLine() + 1).orElse(1);
                if (lost.isEmpty()) {
                    lost.add(file + ":" + line + ": not readable from here on: " + e.getProblem());
                }
                rest = above(rest, line);
            } catch (YamlEngineException e) {
                lost.add(file + ": not readable: " + e.getMessage());
                return Map.of();
            }
        }
        return Map.of();
    }

    /** What stands above a line; at least the last line less than there was, so that this ends. */
    private static String above(String text, int line) {
        List<String> lines = text.lines().toList();
        int count = Math.min(Math.max(0, line - 1), lines.size() - 1);
        return String.join("\n", lines.subList(0, count));
    }

    /** Tells where the last line of a file does not end it: something may have been cut off. */
    private static void end(String text, String file, List<String> lost) {
        if (lost.isEmpty() && !text.stripTrailing().endsWith("\n" + Written.END)) {
            lost.add(file + ": the last line is not '" + Written.END + "': something may be missing");
        }
    }

    /** What could not be read so far. */
    List<String> lost() {
        return List.copyOf(lost);
    }

    /** Tells that a key's value is of no use. */
    void lose(String key, String why) {
        lost.add(file + ": " + key + ": " + why);
    }

    /** The text of a key, or nothing. */
    Optional<String> text(String key) {
        Object value = entries.get(key);
        if (value == null) {
            return Optional.empty();
        }
        if (value instanceof String text) {
            return Optional.of(text);
        }
        lose(key, "a text belongs here");
        return Optional.empty();
    }

    /** The texts of a key. */
    List<String> texts(String key) {
        List<String> texts = new ArrayList<>();
        for (Object item : row(key)) {
            if (item instanceof String text) {
                texts.add(text);
            } else {
                lose(key, "an item is no text");
            }
        }
        return texts;
    }

    /** The tables of a key, each a map of texts. */
    List<Map<String, String>> tables(String key) {
        List<Map<String, String>> tables = new ArrayList<>();
        for (Object item : row(key)) {
            if (!(item instanceof Map<?, ?> map)) {
                lose(key, "an item is no table of keys");
                continue;
            }
            Map<String, String> table = new LinkedHashMap<>();
            map.forEach((name, value) -> table.put(String.valueOf(name), String.valueOf(value)));
            tables.add(table);
        }
        return tables;
    }

    private List<?> row(String key) {
        Object value = entries.get(key);
        if (value == null) {
            return List.of();
        }
        if (value instanceof List<?> row) {
            return row;
        }
        lose(key, "a list belongs here");
        return List.of();
    }

    /** Tells of keys that this program does not write: they would be lost with the next writing. */
    void knowsOnly(List<String> keys) {
        for (Object key : entries.keySet()) {
            if (!(key instanceof String text) || !keys.contains(text)) {
                lose(String.valueOf(key), "this key is not known here");
            }
        }
    }
}
