package fusetale.store;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A case being worked on, as its file holds it: texts only, understood elsewhere.
 *
 * @param name what whoever works on it calls it
 * @param circuit the circuit file, absolute or from the repair's own folder; empty where none is chosen
 * @param sentence the whole question as one line
 * @param undo earlier sentences, the oldest first; the last {@value #MOST_UNDO} are kept
 * @param readings what was measured, each as a line that reads back to it, in that order
 * @param outOfReach points that cannot be reached on this machine
 * @param updated when it last changed
 */
public record Repair(
        String name,
        String circuit,
        String sentence,
        List<String> undo,
        List<String> readings,
        List<String> outOfReach,
        Instant updated) {
    /** Earlier sentences kept in a file. */
    public static final int MOST_UNDO = 200;

    private static final String FORMAT = "1";

    /** Copies the lists; of earlier sentences the newest ones stay. */
    public Repair {
        undo = List.copyOf(undo.subList(Math.max(0, undo.size() - MOST_UNDO), undo.size()));
        readings = List.copyOf(readings);
        outOfReach = List.copyOf(outOfReach);
    }

    /** One on which every point can be reached. */
    public Repair(
            String name, String circuit, String sentence, List<String> undo, List<String> readings, Instant updated) {
        this(name, circuit, sentence, undo, readings, List.of(), updated);
    }

    /** One in which nothing was done yet. */
    public static Repair begun(String name, String circuit, Instant now) {
        return new Repair(name, circuit, "", List.of(), List.of(), now);
    }

    /** The same, changed at another time. */
    public Repair at(Instant time) {
        return new Repair(name, circuit, sentence, undo, readings, outOfReach, time);
    }

    /** The text of its file. */
    public String text() {
        return new Written("A repair, kept by Fusetale.")
                .with("format", FORMAT)
                .with("name", name)
                .with("circuit", circuit)
                .with("updated", updated.toString())
                .with("sentence", sentence)
                .with("readings", readings)
                .with("undo", undo)
                .with("out of reach", outOfReach)
                .toString();
    }

    /**
     * What stands in a file; nothing where there is no such file. Of a damaged file as much as could be read comes back, with
     * what was lost; such a file must not be written over ({@link Autosave} does not).
     */
    public static Optional<Kept<Repair>> read(Path file) {
        return Page.read(file).map(page -> {
            page.knowsOnly(
                    List.of("format", "name", "circuit", "updated", "sentence", "readings", "undo", "out of reach"));
            if (!page.text("format").orElse("").equals(FORMAT)) {
                page.lose("format", "only " + FORMAT + " is known here; a newer program may have written the file");
            }
            Repair repair = new Repair(
                    page.text("name").orElse(""),
                    page.text("circuit").orElse(""),
                    page.text("sentence").orElseGet(() -> {
                        page.lose("sentence", "is missing");
                        return "";
                    }),
                    page.texts("undo"),
                    page.texts("readings"),
                    page.texts("out of reach"),
                    time(page));
            return new Kept<>(repair, new ArrayList<>(page.lost()));
        });
    }

    private static Instant time(Page page) {
        String written = page.text("updated").orElse("");
        try {
            return Instant.parse(written);
        } catch (DateTimeParseException e) {
            page.lose("updated", "'" + written + "' is no time as 2026-11-25T07:31:00Z");
            return Instant.EPOCH;
        }
    }

    /**
     * The circuit's file.
     *
     * @param file where the repair itself lies
     * @return nothing where none is chosen, or it is not a path on this system
     */
    public Optional<Path> circuitFile(Path file) {
        if (circuit.isBlank()) {
            return Optional.empty();
        }
        try {
            return Optional.of(file.toAbsolutePath().resolveSibling(circuit).normalize());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }
}
