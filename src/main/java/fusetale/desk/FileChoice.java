package fusetale.desk;

import fusetale.desk.export.Ending;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** Asks which file; empty where somebody thinks better of it. */
interface FileChoice {
    /**
     * One that is there.
     *
     * @param kind what is looked for, in words
     * @param endings what its name may end in, without the point
     */
    Optional<Path> toOpen(String kind, List<String> endings);

    /**
     * One to write to.
     *
     * @param name what to call it where nobody says otherwise
     * @param ending what its name ends in, without the point
     */
    Optional<Path> toSave(String name, String ending);

    /**
     * Asks for a file, and once more where its whole name is taken: of what is written over the system warns by the name as it was
     * typed, and that had no ending.
     *
     * @param proposed what to call it
     * @param asks asks once, with something proposed
     */
    static Optional<Path> asked(Path proposed, String ending, Function<Path, Optional<Path>> asks) {
        Optional<Path> typed = asks.apply(proposed);
        while (typed.isPresent()) {
            Path whole = Ending.of(typed.get(), ending);
            if (whole.equals(typed.get()) || !Files.exists(whole)) {
                return Optional.of(whole);
            }
            typed = asks.apply(whole);
        }
        return typed;
    }

    /** The system's own. */
    static FileChoice ofSystem(Stage owner) {
        return new FileChoice() {
            @Override
            public Optional<Path> toOpen(String kind, List<String> endings) {
                FileChooser chooser = chooser(kind, endings);
                return Optional.ofNullable(chooser.showOpenDialog(owner)).map(File::toPath);
            }

            @Override
            public Optional<Path> toSave(String name, String ending) {
                return asked(Path.of(name), ending, proposed -> {
                    FileChooser chooser = chooser(ending, List.of(ending));
                    chooser.setInitialFileName(String.valueOf(proposed.getFileName()));
                    Path folder = proposed.getParent();
                    if (folder != null) {
                        chooser.setInitialDirectory(folder.toFile());
                    }
                    return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
                });
            }

            private FileChooser chooser(String kind, List<String> endings) {
                FileChooser chooser = new FileChooser();
                chooser.getExtensionFilters()
                        .add(new FileChooser.ExtensionFilter(
                                kind, endings.stream().map(e -> "*." + e).toList()));
                return chooser;
            }
        };
    }
}
