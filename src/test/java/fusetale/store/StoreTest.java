package fusetale.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Folders: XDG Base Directory Specification 0.8 (defaults, and that a relative path is to be ignored); macOS: Apple's File System
 * Programming Guide, "Application Support"; Windows: CSIDL_APPDATA, "%APPDATA%".
 */
class StoreTest {
    private static final Path HOME = Path.of("/home/ann");

    @TempDir
    Path folder;

    private static Store store(String system, Map<String, String> environment) {
        return Store.of(system, environment::get, HOME);
    }

    @Test
    void onLinuxDataAndSettingsAreWhereTheXdgSpecificationPutsThem() {
        Store store = store("Linux", Map.of());

        assertThat(store.data()).isEqualTo(Path.of("/home/ann/.local/share/fusetale"));
        assertThat(store.settings()).isEqualTo(Path.of("/home/ann/.config/fusetale"));
    }

    @Test
    void onLinuxTheEnvironmentMovesThem() {
        Store store = store("Linux", Map.of("XDG_DATA_HOME", "/srv/data", "XDG_CONFIG_HOME", "/srv/config"));

        assertThat(store.data()).isEqualTo(Path.of("/srv/data/fusetale"));
        assertThat(store.settings()).isEqualTo(Path.of("/srv/config/fusetale"));
    }

    @Test
    void aRelativePathInTheEnvironmentIsIgnored() {
        assertThat(store("Linux", Map.of("XDG_DATA_HOME", "data")).data())
                .isEqualTo(Path.of("/home/ann/.local/share/fusetale"));
    }

    @Test
    void onMacOsBothAreInApplicationSupport() {
        Store store = store("Mac OS X", Map.of());

        assertThat(store.data()).isEqualTo(Path.of("/home/ann/Library/Application Support/Fusetale"));
        assertThat(store.settings()).isEqualTo(store.data());
    }

    @Test
    void onWindowsBothAreInAppData() {
        // a path of this system stands for C:\Users\ann\AppData\Roaming
        Store store = store("Windows 11", Map.of("APPDATA", "/users/ann/roaming"));

        assertThat(store.data()).isEqualTo(Path.of("/users/ann/roaming/Fusetale"));
        assertThat(store.settings()).isEqualTo(store.data());
    }

    @Test
    void nothingIsWrittenBeforeItIsNeeded() throws IOException {
        Store store = new Store(folder.resolve("data"), folder.resolve("settings"));

        store.preferences();
        store.recent();

        assertThat(folder).isEmptyDirectory();
        store.keep(Preferences.USUAL);
        assertThat(store.preferencesFile()).isRegularFile();
        assertThat(store.data()).doesNotExist();
        assertThat(Files.readString(store.preferencesFile())).startsWith("# Preferences");
    }

    @Test
    void aFreshRepairStandsInNobodysWay() throws IOException {
        Path first = Store.freshRepair(folder, "Night Ferry: blows F201?");
        Files.createFile(first);

        assertThat(first.getFileName()).hasToString("night-ferry-blows-f201.repair.yaml");
        assertThat(Store.freshRepair(folder, "Night Ferry: blows F201?").getFileName())
                .hasToString("night-ferry-blows-f201-2.repair.yaml");
        assertThat(Store.freshRepair(folder, " ../.. ").getFileName()).hasToString("repair.repair.yaml");
    }
}
