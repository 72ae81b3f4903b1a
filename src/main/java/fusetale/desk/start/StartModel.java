package fusetale.desk.start;

import fusetale.explore.Words;
import fusetale.store.Kept;
import fusetale.store.Recent;
import fusetale.store.Store;
import fusetale.store.UnwritableFile;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** What the first screen offers: boards of the program and repairs opened last. */
public final class StartModel {
    private static final Words WORDS = Words.of(StartModel.class);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM uuuu, HH:mm", Locale.ENGLISH);

    private final Store store;
    private final ZoneId zone;
    private final ReadOnlyObjectWrapper<Recent> recent = new ReadOnlyObjectWrapper<>(this, "recent", Recent.NONE);
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper(this, "said", "");

    /**
     * Of a store.
     *
     * @param zone whose clock tells when a repair was opened
     */
    public StartModel(Store store, ZoneId zone) {
        this.store = store;
        this.zone = zone;
        readAnew();
    }

    /** Repairs opened last. */
    public ReadOnlyObjectProperty<Recent> recentProperty() {
        return recent.getReadOnlyProperty();
    }

    /** What went wrong last; empty where nothing did. */
    public ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** Looks at the list on the disk again. */
    public void readAnew() {
        Kept<Recent> kept = store.recent();
        recent.set(kept.value());
        said.set(kept.whole() ? "" : WORDS.say("lost", String.join("\n", kept.lost())));
    }

    /** The file of a board that comes with the program; nothing, and a sentence, where it cannot be copied. */
    public Optional<Path> board(BuiltInBoard board) {
        try {
            return Optional.of(board.file(store));
        } catch (UnwritableFile e) {
            said.set(WORDS.say("not-copied", board.title(), String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    /** Pins a repair to the top, or not any more. */
    public void pin(Recent.Entry entry, boolean pinned) {
        change(r -> r.pinned(entry.file(), pinned));
    }

    /** Takes a repair off the list; its file stays. */
    public void forget(Recent.Entry entry) {
        change(r -> r.forgotten(entry.file()));
    }

    /** Tells where the file of a missing repair was found. */
    public void found(Recent.Entry entry, Path file) {
        change(r -> r.moved(entry.file(), file));
    }

    /** When it was opened last, or that its file is not there. */
    public String remark(Recent.Entry entry) {
        return entry.missing()
                ? WORDS.say("missing", entry.file())
                : WORDS.say(
                        "opened",
                        day(entry.opened()),
                        String.valueOf(entry.file().getParent()));
    }

    private String day(Instant time) {
        return DAY.format(time.atZone(zone));
    }

    private void change(UnaryOperator<Recent> change) {
        try {
            recent.set(store.changeRecent(change));
            said.set("");
        } catch (UnwritableFile e) {
            said.set(String.valueOf(e.getMessage()));
        }
    }
}
