package fusetale.desk;

import fusetale.desk.kit.Hands;
import fusetale.desk.state.DeskModel;
import fusetale.store.Preferences;
import fusetale.store.Store;
import fusetale.store.UnwritableFile;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.testfx.api.FxToolkit;
import org.testfx.framework.junit5.ApplicationTest;
import org.testfx.util.WaitForAsyncUtils;

/** The whole window on the teaching board, with its own data folder, and the hands of whoever sits before it. */
abstract class WindowFlow extends ApplicationTest {
    private @Nullable Program begun;

    @BeforeAll
    static void ownData() throws IOException {
        System.setProperty(
                Store.PROPERTY, Files.createTempDirectory("fusetale-flow").toString());
    }

    @AfterAll
    static void gone() throws TimeoutException {
        System.clearProperty(Store.PROPERTY);
        FxToolkit.cleanupStages();
    }

    @Override
    public void start(Stage stage) throws UnwritableFile {
        Store.here().keep(Preferences.USUAL);
        Program program = made(stage);
        begun = program;
        program.begin(List.of("circuits/first-light.yaml"));
        stage.setWidth(1280);
        stage.setHeight(720);
    }

    @BeforeEach
    void opened() {
        until(() -> program().opened().isPresent());
    }

    /** The program that is tried. */
    abstract Program made(Stage stage);

    boolean hasBegun() {
        return begun != null;
    }

    Program program() {
        return Objects.requireNonNull(begun);
    }

    OpenRepair repair() {
        return program().opened().orElseThrow();
    }

    DeskModel model() {
        return repair().model();
    }

    void until(Callable<Boolean> holds) {
        try {
            WaitForAsyncUtils.waitFor(
                    90, TimeUnit.SECONDS, () -> WaitForAsyncUtils.asyncFx(holds).get());
        } catch (TimeoutException e) {
            throw new AssertionError("waited in vain", e);
        }
        WaitForAsyncUtils.waitForFxEvents();
    }

    void key(KeyCode... codes) {
        Hands.push(this, codes);
    }

    void keys(String text) {
        Hands.type(this, text);
    }
}
