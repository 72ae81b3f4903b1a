package fusetale.cli;

import fusetale.circuit.Circuit;
import fusetale.circuit.CircuitFile;
import fusetale.circuit.CircuitReader;
import fusetale.circuit.Problem;
import fusetale.explore.Words;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** Circuit files as commands take them. */
final class CircuitFiles {
    private static final Words WORDS = Words.of(CircuitFiles.class);

    private CircuitFiles() {}

    /**
     * The circuit of a file; warnings go to the error stream.
     *
     * @throws Refused with every problem of the file where it cannot be used
     */
    static Circuit read(String file, Console console) throws Refused {
        CircuitFile read = CircuitReader.withShippedParts().read(path(file));
        Circuit circuit = read.circuit();
        if (circuit == null) {
            throw new Refused(ExitCodes.UNUSABLE, lines(read.problems()));
        }
        read.warnings().forEach(w -> console.err().print(w + "\n"));
        return circuit;
    }

    /**
     * A path.
     *
     * @throws Refused where nothing is named, or this system has no such paths
     */
    static Path path(String file) throws Refused {
        if (file.isBlank()) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("no-file-name"));
        }
        try {
            return Path.of(file);
        } catch (InvalidPathException e) {
            throw new Refused(ExitCodes.UNUSABLE, file + ": " + e.getReason());
        }
    }

    /** Problems, one a line. */
    static String lines(List<Problem> problems) {
        return problems.stream().map(Problem::toString).collect(Collectors.joining("\n"));
    }
}
