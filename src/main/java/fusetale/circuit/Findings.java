package fusetale.circuit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Gathers the problems of one reading. Belongs to one thread. */
final class Findings {
    /** Beyond so many a list helps nobody. */
    static final int MOST = 200;

    private final Set<Problem> problems = new LinkedHashSet<>();
    private final List<String> files = new ArrayList<>();
    private final Set<Path> read = new LinkedHashSet<>();
    private boolean more;

    /** Tells that a file was asked for, whether it is there or not. */
    void asked(Path file) {
        read.add(file);
    }

    /** The files asked for, in that order. */
    List<Path> files() {
        return List.copyOf(read);
    }

    void error(Place place, String key, String found) {
        error(place, key, found, "", "");
    }

    void error(Place place, String key, String found, String allowed, String nearest) {
        add(Problem.Severity.ERROR, place, key, found, allowed, nearest);
    }

    void warning(Place place, String key, String found) {
        add(Problem.Severity.WARNING, place, key, found, "", "");
    }

    /** Whether nothing more will be listed, so that looking for it is in vain. */
    boolean full() {
        return more;
    }

    private void add(Problem.Severity severity, Place place, String key, String found, String allowed, String nearest) {
        if (problems.size() >= MOST) {
            more = true;
            return;
        }
        if (!files.contains(place.file())) {
            files.add(place.file());
        }
        String said = place.filledIn().isEmpty() ? found : found + " (filled in by " + place.filledIn() + ")";
        problems.add(new Problem(severity, place.file(), place.line(), key, said, allowed, nearest));
    }

    boolean anyError() {
        return errors() > 0;
    }

    /** How many errors so far; tells whether a step found any. */
    int errors() {
        return (more ? 1 : 0) + (int) problems.stream().filter(Problem::isError).count();
    }

    /** All problems, file by file, each from top to bottom. */
    List<Problem> inOrder() {
        List<Problem> sorted = new ArrayList<>(problems);
        sorted.sort(
                Comparator.comparingInt((Problem p) -> files.indexOf(p.file())).thenComparingInt(Problem::line));
        if (more) {
            sorted.add(new Problem(
                    Problem.Severity.ERROR,
                    files.get(0),
                    0,
                    "",
                    "there are more than " + MOST + " problems; mend these first",
                    "",
                    ""));
        }
        return List.copyOf(sorted);
    }
}
