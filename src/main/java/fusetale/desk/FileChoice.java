package fusetale.desk;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
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
                FileChooser chooser = chooser(ending, List.of(ending));
                chooser.setInitialFileName(name);
                return Optional.ofNullable(chooser.showSaveDialog(owner)).map(File::toPath);
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
