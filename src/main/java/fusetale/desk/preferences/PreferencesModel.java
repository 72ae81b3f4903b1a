package fusetale.desk.preferences;

import fusetale.explore.Words;
import fusetale.store.Preferences;
import fusetale.store.Store;
import fusetale.store.UnwritableFile;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** Preferences as they are now; each change holds at once and is kept at once. */
public final class PreferencesModel {
    private static final Words WORDS = Words.of(PreferencesModel.class);

    private final Store store;
    private final Supplier<List<String>> meters;
    private final ReadOnlyObjectWrapper<Preferences> preferences;
    private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper(this, "said", "");

    /**
     * The preferences of a store.
     *
     * @param meters names of the meters to choose from, the usual one first; asked for only when they are shown, since meters come
     *     from files
     */
    public PreferencesModel(Store store, Supplier<List<String>> meters) {
        this.store = store;
        this.meters = meters;
        var kept = store.preferences();
        preferences = new ReadOnlyObjectWrapper<>(this, "preferences", kept.value());
        if (!kept.whole()) {
            said.set(WORDS.say("lost", String.join("\n", kept.lost())));
        }
    }

    /** What holds now. */
    public ReadOnlyObjectProperty<Preferences> preferencesProperty() {
        return preferences.getReadOnlyProperty();
    }

    /** What holds now. */
    public Preferences preferences() {
        return preferences.get();
    }

    /** What went wrong last; empty where nothing did. */
    public ReadOnlyStringProperty saidProperty() {
        return said.getReadOnlyProperty();
    }

    /** Meters to choose from. */
    public List<String> meters() {
        return List.copyOf(meters.get());
    }

    /** The meter that holds: the usual one where none was chosen, or the chosen one is not known any more. */
    public String meter() {
        String chosen = preferences().meter();
        List<String> known = meters();
        return known.contains(chosen) || known.isEmpty() ? chosen : known.get(0);
    }

    /** Where repairs live. */
    public String folder() {
        return preferences().repairs(store).toString();
    }

    /** Changes something; it holds from now on even where it cannot be kept, which is said. */
    public void change(UnaryOperator<Preferences> change) {
        preferences.set(change.apply(preferences.get()));
        try {
            store.keep(preferences.get());
            said.set("");
        } catch (UnwritableFile e) {
            said.set(WORDS.say("not-kept", String.valueOf(e.getMessage())));
        }
    }

    /** Changes text size, within its bounds. */
    public void textPerCent(int perCent) {
        int bounded = Math.max(Preferences.LEAST_TEXT_PER_CENT, Math.min(Preferences.MOST_TEXT_PER_CENT, perCent));
        change(p -> p.withTextPerCent(bounded));
    }

    /**
     * Puts repairs into another folder from now on; those there are stay where they are. Nothing typed means the usual one. What
     * is no folder is refused with a sentence in {@link #saidProperty}.
     */
    public void repairsFolder(String typed) {
        if (typed.isBlank()) {
            change(p -> p.withRepairsFolder(""));
            return;
        }
        try {
            Path folder = Path.of(typed.strip()).toAbsolutePath().normalize();
            if (!Files.isDirectory(folder)) {
                said.set(WORDS.say("no-folder", folder));
            } else if (!Files.isWritable(folder)) {
                said.set(WORDS.say("not-writable", folder));
            } else if (folder.equals(store.repairs().toAbsolutePath().normalize())) {
                change(p -> p.withRepairsFolder(""));
            } else {
                change(p -> p.withRepairsFolder(folder.toString()));
            }
        } catch (InvalidPathException e) {
            said.set(WORDS.say("no-path", typed, e.getReason()));
        }
    }
}
