package fusetale.desk.preferences;

import static org.assertj.core.api.Assertions.assertThat;

import fusetale.store.Preferences;
import fusetale.store.Store;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PreferencesModelTest {
    @TempDir
    Path folder;

    private Store store;

    @BeforeEach
    void store() {
        store = new Store(folder.resolve("data"), folder.resolve("settings"));
    }

    private PreferencesModel model() {
        return new PreferencesModel(store, () -> List.of("true rms 4000-count", "basic 3½ digit"));
    }

    @Test
    void aChangeHoldsAtOnceAndTheNextTime() {
        PreferencesModel model = model();

        model.change(p -> p.withPaper(Preferences.Paper.LETTER));
        model.textPerCent(500);

        assertThat(model.preferences().textPerCent()).isEqualTo(200);
        assertThat(model().preferences()).isEqualTo(model.preferences());
        assertThat(model().preferences().paper()).isEqualTo(Preferences.Paper.LETTER);
    }

    @Test
    void aMeterThatIsNotKnownAnyMoreGivesWayToTheUsualOne() {
        PreferencesModel model = model();

        model.change(p -> p.withMeter("a meter of old"));
        assertThat(model.meter()).isEqualTo("true rms 4000-count");
        model.change(p -> p.withMeter("basic 3½ digit"));
        assertThat(model.meter()).isEqualTo("basic 3½ digit");
    }

    @Test
    void aFolderThatIsNotThereIsRefusedInWords() throws IOException {
        PreferencesModel model = model();
        Path repairs = Files.createDirectory(folder.resolve("mine"));

        model.repairsFolder(folder.resolve("nowhere").toString());
        assertThat(model.saidProperty().get()).contains("nowhere");
        assertThat(model.folder()).isEqualTo(store.repairs().toString());

        model.repairsFolder(repairs.toString());
        assertThat(model.saidProperty().get()).isEmpty();
        assertThat(model.folder()).isEqualTo(repairs.toString());

        model.repairsFolder(" ");
        assertThat(model.folder()).isEqualTo(store.repairs().toString());
    }

    @Test
    void whatCannotBeKeptHoldsUntilTheEndAndThatIsSaid() throws IOException {
        Files.writeString(folder.resolve("settings"), "a file where the folder belongs");
        PreferencesModel model = model();

        model.change(p -> p.withSingleLetters(false));

        assertThat(model.preferences().singleLetters()).isFalse();
        assertThat(model.saidProperty().get()).isNotEmpty();
    }
}
