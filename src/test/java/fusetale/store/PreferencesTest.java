package fusetale.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PreferencesTest {
    private static final Preferences OTHERS = new Preferences(
            50,
            "analogue 20 kΩ per V",
            Preferences.Symbols.IEEE_315,
            150,
            Preferences.Light.LAMP_OFF,
            false,
            Preferences.Paper.LETTER,
            "/srv/repairs");

    @TempDir
    Path folder;

    private Store store;

    @BeforeEach
    void store() {
        store = new Store(folder, folder);
    }

    @Test
    void withoutAFileTheyAreAsUsual() {
        assertThat(store.preferences().value()).isEqualTo(Preferences.USUAL);
        assertThat(store.preferences().whole()).isTrue();
    }

    @Test
    void whatIsKeptIsReadAgain() throws UnwritableFile {
        store.keep(OTHERS);

        assertThat(store.preferences().lost()).isEmpty();
        assertThat(store.preferences().value()).isEqualTo(OTHERS);
    }

    /** Who chose 100 % is not to be given 125 % in a wide window. */
    @Test
    void noSizeOfTextIsAnotherThanTheLeast() throws UnwritableFile {
        store.keep(Preferences.USUAL.withPaper(Preferences.Paper.LETTER));
        assertThat(store.preferences().value().textPerCent()).isEqualTo(Preferences.TEXT_AS_THE_WINDOW);
        store.keep(Preferences.USUAL.withTextPerCent(100));

        assertThat(store.preferences().lost()).isEmpty();
        assertThat(store.preferences().value().textPerCent()).isEqualTo(100);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "text per cent: \"large\"; text per cent",
                "text per cent: \"250\"; text per cent",
                "text per cent: \"0\"; text per cent",
                "light: \"dim\"; light",
                "mains hertz: \"400\"; mains hertz",
                "single letters: \"maybe\"; single letters",
                "repairs folder: \"repairs\"; repairs folder",
                "tune: \"loud\"; tune"
            })
    void aSpoiltPreferenceIsSaidAndTakesNoOtherAlong(String line, String key) throws IOException {
        Files.writeString(store.preferencesFile(), "format: \"1\"\npaper: \"Letter\"\n" + line + "\n...\n");

        Kept<Preferences> read = store.preferences();

        assertThat(read.lost()).singleElement().asString().contains("preferences.yaml", key);
        assertThat(read.value()).isEqualTo(Preferences.USUAL.withPaper(Preferences.Paper.LETTER));
    }

    /** Two of them were offered once and did nothing. */
    @Test
    void whatEarlierVersionsWroteIsNoLoss() throws IOException {
        Files.writeString(
                store.preferencesFile(),
                "format: \"1\"\nreduce motion: \"yes\"\ndecimal comma: \"yes\"\npaper: \"Letter\"\n...\n");

        assertThat(store.preferences().lost()).isEmpty();
        assertThat(store.preferences().value()).isEqualTo(Preferences.USUAL.withPaper(Preferences.Paper.LETTER));
    }

    @Test
    void aDamagedFileIsPutAsideAndNotWrittenOver() throws IOException {
        Files.writeString(store.preferencesFile(), "paper: \"Letter\"\nlight: \"lam");

        Kept<Preferences> read = store.preferences();
        store.keep(read.value());

        assertThat(read.value().paper()).isEqualTo(Preferences.Paper.LETTER);
        assertThat(read.lost()).singleElement().asString().contains("preferences.yaml:");
        assertThat(folder.resolve("preferences.yaml.unreadable")).hasContent("paper: \"Letter\"\nlight: \"lam");
        assertThat(store.preferences().whole()).isTrue();
    }
}
