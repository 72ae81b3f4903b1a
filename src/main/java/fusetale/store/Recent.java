package fusetale.store;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The repairs opened last: pinned ones first, then the newest; {@value #MOST} at most. Whose file is missing stays listed.
 *
 * @param entries in the order to show them
 */
public record Recent(List<Entry> entries) {
    /** So many are listed. */
    public static final int MOST = 12;

    /** None yet. */
    public static final Recent NONE = new Recent(List.of());

    /**
     * One of them.
     *
     * @param file its file, absolute
     * @param name what it is called
     * @param pinned whether it stays at the top
     * @param opened when it was opened last
     */
    public record Entry(Path file, String name, boolean pinned, Instant opened) {
        /** Makes the path absolute. */
        public Entry {
            file = file.toAbsolutePath().normalize();
        }

        /** Whether its file is not there now. */
        public boolean missing() {
            return !Files.isRegularFile(file);
        }
    }

    /** Puts them in order and leaves out those too many. */
    public Recent {
        List<Entry> ordered = new ArrayList<>(entries);
        ordered.sort(Comparator.comparing((Entry e) -> !e.pinned())
                .thenComparing(Entry::opened, Comparator.reverseOrder())
                .thenComparing(e -> e.file().toString()));
        entries = List.copyOf(ordered.subList(0, Math.min(MOST, ordered.size())));
    }

    /** The list after a repair was opened, or renamed. */
    public Recent opened(Path file, String name, Instant now) {
        boolean pinned = find(file).map(Entry::pinned).orElse(false);
        return with(new Entry(file, name, pinned, now));
    }

    /** The list with a repair pinned to its top, or not any more. One place is left for what is opened next. */
    public Recent pinned(Path file, boolean pinned) {
        long already = entries.stream().filter(Entry::pinned).count();
        return find(file)
                .filter(e -> !pinned || already < MOST - 1)
                .map(e -> with(new Entry(e.file(), e.name(), pinned, e.opened())))
                .orElse(this);
    }

    /** The list without a repair; its file stays. */
    public Recent forgotten(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        return new Recent(
                entries.stream().filter(e -> !e.file().equals(absolute)).toList());
    }

    /** The list after a missing file was found elsewhere. */
    public Recent moved(Path from, Path to) {
        return find(from)
                .map(e -> forgotten(from).with(new Entry(to, e.name(), e.pinned(), e.opened())))
                .orElse(this);
    }

    /** The entry of a file. */
    public Optional<Entry> find(Path file) {
        Path absolute = file.toAbsolutePath().normalize();
        return entries.stream().filter(e -> e.file().equals(absolute)).findFirst();
    }

    private Recent with(Entry entry) {
        List<Entry> all = new ArrayList<>(forgotten(entry.file()).entries());
        all.add(entry);
        // the one just opened is newest; who is too many is the oldest that is not pinned
        return new Recent(all);
    }

    String text() {
        List<Map<String, String>> tables = new ArrayList<>();
        for (Entry entry : entries) {
            Map<String, String> table = new LinkedHashMap<>();
            table.put("file", entry.file().toString());
            table.put("name", entry.name());
            table.put("pinned", entry.pinned() ? "yes" : "no");
            table.put("opened", entry.opened().toString());
            tables.add(table);
        }
        return new Written("Repairs opened last, kept by Fusetale.")
                .withTables("repairs", tables)
                .toString();
    }

    static Kept<Recent> read(Path file) {
        return Page.read(file)
                .map(page -> {
                    page.knowsOnly(List.of("repairs"));
                    List<Entry> entries = new ArrayList<>();
                    for (Map<String, String> table : page.tables("repairs")) {
                        entry(table, page).ifPresent(entries::add);
                    }
                    return new Kept<>(new Recent(entries), page.lost());
                })
                .orElse(new Kept<>(NONE, List.of()));
    }

    private static Optional<Entry> entry(Map<String, String> table, Page page) {
        String file = table.getOrDefault("file", "");
        try {
            if (file.isBlank()) {
                page.lose("repairs", "an item names no file");
                return Optional.empty();
            }
            return Optional.of(new Entry(
                    Path.of(file),
                    table.getOrDefault("name", ""),
                    table.getOrDefault("pinned", "no").equals("yes"),
                    Instant.parse(table.getOrDefault("opened", ""))));
        } catch (InvalidPathException | DateTimeParseException e) {
            page.lose("repairs", "an item cannot be read: " + e.getMessage());
            return Optional.empty();
        }
    }
}
