package fusetale.desk.preferences;

import fusetale.desk.kit.Page;
import fusetale.explore.Words;
import fusetale.store.Preferences;
import fusetale.store.Preferences.Light;
import fusetale.store.Preferences.Paper;
import fusetale.store.Preferences.Symbols;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Every preference on one page; there is nothing to confirm. */
public final class PreferencesView extends StackPane {
    private static final List<Integer> TEXT_PER_CENT = List.of(Preferences.TEXT_AS_THE_WINDOW, 100, 125, 150, 175, 200);
    private static final Words WORDS = Words.of(PreferencesView.class);

    private final PreferencesModel model;
    private final Page page;
    private final TextField folder = new TextField();

    /**
     * The page.
     *
     * @param model what it shows and changes
     * @param chosenFolder asks for a folder; empty where none was chosen
     * @param leave what Esc and the button do
     */
    public PreferencesView(PreferencesModel model, Supplier<String> chosenFolder, Runnable leave) {
        this.model = model;
        page = new Page(WORDS.say("heading"), leave);
        choice(
                "mains",
                Preferences.MAINS_HERTZ,
                PreferencesView::hertz,
                Preferences::mainsHertz,
                Preferences::withMainsHertz);
        choice("meter", model.meters(), m -> m, p -> model.meter(), Preferences::withMeter);
        choice("symbols", List.of(Symbols.values()), Symbols::words, Preferences::symbols, Preferences::withSymbols);
        choice("text", TEXT_PER_CENT, PreferencesView::size, Preferences::textPerCent, Preferences::withTextPerCent);
        choice("light", List.of(Light.values()), Light::words, Preferences::light, Preferences::withLight);
        onOff("letters", Preferences::singleLetters, Preferences::withSingleLetters);
        choice("paper", List.of(Paper.values()), Paper::words, Preferences::paper, Preferences::withPaper);
        page.body().getChildren().add(folderRow(chosenFolder));
        page.body().setSpacing(18);
        page.button(WORDS.say("leave"), leave);
        page.say(model.saidProperty().get());
        model.saidProperty().addListener((of, before, now) -> page.say(now));
        getChildren().add(page);
    }

    private void onOff(
            String key, Function<Preferences, Boolean> get, BiFunction<Preferences, Boolean, Preferences> set) {
        choice(key, List.of(true, false), on -> WORDS.say(on ? "on" : "off"), get, set);
    }

    private <T> void choice(
            String key,
            List<T> choices,
            Function<T, String> words,
            Function<Preferences, T> get,
            BiFunction<Preferences, T, Preferences> set) {
        Choice<T> row = new Choice<>(
                WORDS.say(key),
                WORDS.say(key + ".remark"),
                choices,
                words,
                chosen -> model.change(p -> set.apply(p, chosen)));
        row.show(get.apply(model.preferences()));
        model.preferencesProperty().addListener((of, before, now) -> row.show(get.apply(now)));
        page.body().getChildren().add(row);
    }

    private VBox folderRow(Supplier<String> chosenFolder) {
        folder.setText(model.folder());
        folder.setAccessibleText(WORDS.say("folder"));
        folder.setOnAction(e -> model.repairsFolder(folder.getText()));
        model.preferencesProperty().addListener((of, before, now) -> folder.setText(model.folder()));
        HBox.setHgrow(folder, Priority.ALWAYS);
        Button choose = new Button(WORDS.say("folder.choose"));
        choose.setAccessibleText(WORDS.say("folder.choose"));
        choose.setMinWidth(USE_PREF_SIZE);
        choose.setOnAction(e -> {
            String chosen = chosenFolder.get();
            if (!chosen.isEmpty()) {
                model.repairsFolder(chosen);
            }
        });
        HBox line = new HBox(8, folder, choose);
        line.setAlignment(Pos.CENTER_LEFT);
        return new VBox(
                6,
                Page.text(WORDS.say("folder"), "page-name"),
                line,
                Page.text(WORDS.say("folder.remark"), "page-soft"));
    }

    private static String hertz(int hertz) {
        return hertz == 0 ? WORDS.say("mains.file") : hertz + " Hz";
    }

    private static String size(int perCent) {
        return perCent == Preferences.TEXT_AS_THE_WINDOW ? WORDS.say("text.window") : perCent + " %";
    }
}
