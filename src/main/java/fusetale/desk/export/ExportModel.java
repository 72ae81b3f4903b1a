package fusetale.desk.export;

import fusetale.explore.Words;
import fusetale.store.AtomicFile;
import fusetale.store.UnwritableFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** Writes what is asked for into the file that is chosen, and says where it is. */
public final class ExportModel {
    private static final Words WORDS = Words.of(ExportModel.class);

    private final List<Offer> offers;
    private final Function<Offer, Optional<Path>> chosen;
    private final Executor work;
    private final Executor onTheWindow;
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper(this, "said", "");

    /**
     * A model.
     *
     * @param offers what can be written
     * @param chosen asks where to; nothing where it is given up
     * @param work makes and writes files
     * @param onTheWindow runs on the window's own thread
     */
    public ExportModel(
            List<Offer> offers, Function<Offer, Optional<Path>> chosen, Executor work, Executor onTheWindow) {
        this.offers = List.copyOf(offers);
        this.chosen = chosen;
        this.work = work;
        this.onTheWindow = onTheWindow;
    }

    /** What can be written. */
    public List<Offer> offers() {
        return offers;
    }

    /** What became of the last one. */
    public ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** Asks where to, and writes. */
    public void write(Offer offer) {
        Optional<Path> answer = chosen.apply(offer);
        if (answer.isEmpty()) {
            return;
        }
        Path file = Ending.of(answer.get(), offer.ending());
        said.set(WORDS.say("writing", file));
        work.execute(() -> {
            String result = written(offer, file);
            onTheWindow.execute(() -> said.set(result));
        });
    }

    private static String written(Offer offer, Path file) {
        try {
            AtomicFile.write(file, offer.bytes().get());
            return WORDS.say("written", file);
        } catch (UnwritableFile e) {
            return String.valueOf(e.getMessage());
        }
    }
}
