package fusetale.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Where the program keeps its own files, by the custom of the system: on Linux the folders of the XDG Base Directory
 * Specification 0.8, on macOS {@code Library/Application Support}, on Windows {@code %APPDATA%}. Folders are made when
 * something is first written into them.
 *
 * @param data repairs, earlier versions of them, boards that come with the program
 * @param settings preferences and the list of recent repairs
 */
public record Store(Path data, Path settings) {
    /** The system property that puts everything into one folder of its value. */
    public static final String PROPERTY = "fusetale.data";

    private static final String FOLDER = "fusetale";
    private static final String PROPER_NAME = "Fusetale";

    /** The folders of whoever is logged in, or the one that {@value #PROPERTY} names. */
    public static Store here() {
        String property = System.getProperty(PROPERTY, "");
        if (!property.isBlank()) {
            Path folder = Path.of(property);
            return new Store(folder, folder);
        }
        return of(System.getProperty("os.name", ""), System::getenv, Path.of(System.getProperty("user.home", "")));
    }

    /**
     * The folders on a system.
     *
     * @param system name of the operating system, as Java's {@code os.name}
     * @param environment gives the value of a variable, or null where it is not set
     * @param home the home folder
     */
    public static Store of(String system, UnaryOperator<@Nullable String> environment, Path home) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            Path roaming = absolute(environment.apply("APPDATA"))
                    .orElse(home.resolve("AppData").resolve("Roaming"));
            return both(roaming.resolve(PROPER_NAME));
        }
        if (name.startsWith("mac")) {
            return both(home.resolve("Library").resolve("Application Support").resolve(PROPER_NAME));
        }
        Path data = absolute(environment.apply("XDG_DATA_HOME"))
                .orElse(home.resolve(".local").resolve("share"));
        Path settings = absolute(environment.apply("XDG_CONFIG_HOME")).orElse(home.resolve(".config"));
        return new Store(data.resolve(FOLDER), settings.resolve(FOLDER));
    }

    private static Store both(Path folder) {
        return new Store(folder, folder);
    }

    /** A path of the environment; what is empty or relative counts as not set, as the XDG specification asks. */
    private static Optional<Path> absolute(@Nullable String text) {
        if (text == null || text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Path.of(text)).filter(Path::isAbsolute);
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /** Where repairs live unless the preferences name another folder. */
    public Path repairs() {
        return data.resolve("repairs");
    }

    /** Where boards that come with the program are copied to, so that they can be looked at and changed. */
    public Path circuits() {
        return data.resolve("circuits");
    }

    /** Where earlier versions of repairs are kept. */
    public Path versions() {
        return data.resolve("versions");
    }

    /** Where what matching has worked out about machines is kept; may be thrown away at any time. */
    public Path dictionaries() {
        return data.resolve("dictionaries");
    }

    /** The file of preferences. */
    public Path preferencesFile() {
        return settings.resolve("preferences.yaml");
    }

    /** The file that lists recent repairs. */
    public Path recentFile() {
        return settings.resolve("recent.yaml");
    }

    /** The preferences, with what was wrong with their file. */
    public Kept<Preferences> preferences() {
        return Preferences.read(preferencesFile());
    }

    /**
     * Keeps preferences.
     *
     * @throws UnwritableFile where that cannot be done
     */
    public void keep(Preferences preferences) throws UnwritableFile {
        folder(settings);
        try (Guarded guarded = Guarded.over(preferencesFile())) {
            aside(preferencesFile(), Preferences.read(preferencesFile()).whole());
            AtomicFile.write(guarded.file(), preferences.text());
        }
    }

    /** The recent repairs, with what was wrong with their file. */
    public Kept<Recent> recent() {
        return Recent.read(recentFile());
    }

    /**
     * Changes the list of recent repairs as it is on the disk at this moment, so that two windows do not lose each other's
     * entries.
     *
     * @return the list after the change
     * @throws UnwritableFile where it cannot be kept
     */
    public Recent changeRecent(UnaryOperator<Recent> change) throws UnwritableFile {
        folder(settings);
        try (Guarded guarded = Guarded.over(recentFile())) {
            Kept<Recent> found = Recent.read(recentFile());
            aside(recentFile(), found.whole());
            Recent changed = change.apply(found.value());
            AtomicFile.write(guarded.file(), changed.text());
            return changed;
        }
    }

    /** A damaged file is never written over: it stays beside under another name. */
    private static void aside(Path file, boolean whole) throws UnwritableFile {
        if (!whole) {
            FreeName.moveAside(file);
        }
    }

    /**
     * A file in the folder of repairs that does not exist yet.
     *
     * @param folder where repairs live
     * @param name what the repair is called; signs that no file name can hold are left out
     */
    public static Path freshRepair(Path folder, String name) {
        return FreeName.in(folder, FreeName.plain(name), ".repair.yaml");
    }

    /**
     * Makes a folder and those around it.
     *
     * @throws UnwritableFile where that cannot be done
     */
    public static void folder(Path folder) throws UnwritableFile {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UnwritableFile("cannot make the folder '" + folder + "': " + e.getMessage(), e);
        }
    }
}
