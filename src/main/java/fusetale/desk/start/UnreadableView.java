package fusetale.desk.start;

import fusetale.circuit.Problem;
import fusetale.desk.kit.Page;
import fusetale.explore.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * A file that cannot be used, of a circuit or of readings: what stands in it, read-only, each problem at its line, and beside it the list of all of
 * them, which leads to their lines.
 */
public final class UnreadableView extends StackPane {
    private static final Words WORDS = Words.of(UnreadableView.class);
    private static final double LIST_WIDTH = 430;
    /** At one and a half times its size in the lowest window all of it is still seen at once. */
    private static final double TEXT_HEIGHT = 250;
    /** What stands above and below it. */
    private static final double AROUND = 260;

    private final ListView<Line> text = new ListView<>();
    private final List<Line> lines;
    private final Page page;

    /**
     * A line of the file.
     *
     * @param number from 1
     * @param text what stands there
     * @param problems what is wrong with it
     */
    public record Line(int number, String text, List<Problem> problems) {
        /** Copies the list. */
        public Line {
            problems = List.copyOf(problems);
        }

        /** Number, text and problems, as a screen reader says them. */
        String spoken() {
            String said = WORDS.say("unreadable.line.spoken", number, text.strip());
            return problems.isEmpty() ? said : said + " " + problemText();
        }

        String problemText() {
            return String.join(
                    " ", problems.stream().map(Problem::sentence).distinct().toList());
        }
    }

    /**
     * The page.
     *
     * @param file the file
     * @param content what stands in it; empty where nothing can be read
     * @param problems everything that is wrong, in the file and in what it includes
     * @param another opens something else
     * @param leave what Esc does
     */
    public UnreadableView(Path file, String content, List<Problem> problems, Runnable another, Runnable leave) {
        this("unreadable.", file, content, problems, another, leave);
    }

    /**
     * The same of a file of readings, of which nothing was taken.
     *
     * @param file the file
     * @param content what stands in it; empty where nothing can be read
     * @param problems everything that is wrong
     * @param another opens another one
     * @param leave what Esc does
     */
    public static UnreadableView ofReadings(
            Path file, String content, List<Problem> problems, Runnable another, Runnable leave) {
        UnreadableView view = new UnreadableView("unreadable.readings.", file, content, problems, another, leave);
        view.page.button(WORDS.say("unreadable.readings.back"), leave);
        return view;
    }

    private UnreadableView(
            String kind, Path file, String content, List<Problem> problems, Runnable another, Runnable leave) {
        lines = lines(file, content, problems);
        page = new Page(WORDS.say(kind + "heading", String.valueOf(file.getFileName())), leave);
        text.getItems().setAll(lines);
        text.setCellFactory(view -> new LineCell());
        text.getStyleClass().add("file-text");
        text.setAccessibleText(WORDS.say("unreadable.text", String.valueOf(file.getFileName())));
        text.setMinHeight(TEXT_HEIGHT);
        text.prefHeightProperty()
                .bind(Bindings.max(TEXT_HEIGHT, page.heightProperty().subtract(AROUND)));
        text.maxHeightProperty().bind(text.prefHeightProperty());
        // a list keeps Esc for itself
        text.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                e.consume();
                leave.run();
            }
        });
        HBox.setHgrow(text, Priority.ALWAYS);
        VBox list = new VBox(8, Page.text(WORDS.say("unreadable.problems", problems.size()), "page-section"));
        problems.forEach(p -> list.getChildren().add(entry(file, p)));
        list.setPrefWidth(LIST_WIDTH);
        list.setMinWidth(LIST_WIDTH);
        HBox both = content.isEmpty() ? new HBox(list) : new HBox(20, text, list);
        page.body()
                .getChildren()
                .addAll(
                        Page.text(content.isEmpty() ? WORDS.say("unreadable.nothing") : WORDS.say(kind + "says")),
                        both);
        page.button(WORDS.say(kind + "another"), another);
        getChildren().add(page);
        lines.stream().filter(l -> !l.problems().isEmpty()).findFirst().ifPresent(this::show);
    }

    /** The lines of a file, each with its problems. */
    static List<Line> lines(Path file, String content, List<Problem> problems) {
        Map<Integer, List<Problem>> at = new LinkedHashMap<>();
        problems.stream()
                .filter(p -> isOf(file, p))
                .forEach(p -> at.computeIfAbsent(Math.max(1, p.line()), line -> new ArrayList<>())
                        .add(p));
        List<Line> lines = new ArrayList<>();
        for (String line : content.split("\\R", -1)) {
            int number = lines.size() + 1;
            lines.add(new Line(number, line, at.getOrDefault(number, List.of())));
        }
        return List.copyOf(lines);
    }

    private static boolean isOf(Path file, Problem problem) {
        return Path.of(problem.file())
                .toAbsolutePath()
                .normalize()
                .equals(file.toAbsolutePath().normalize());
    }

    /** The lines shown. */
    public List<Line> lines() {
        return lines;
    }

    private Button entry(Path file, Problem problem) {
        boolean here = isOf(file, problem);
        String said = !here
                ? problem.toString()
                : problem.line() > 0
                        ? WORDS.say("unreadable.line", problem.line(), problem.sentence())
                        : problem.sentence();
        Button button = new Button(said);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setMinHeight(USE_PREF_SIZE);
        button.setAlignment(Pos.CENTER_LEFT);
        button.getStyleClass().add("problem");
        button.setAccessibleText(said);
        button.setOnAction(e -> {
            if (here) {
                lines.stream()
                        .filter(l -> l.number() == Math.max(1, problem.line()))
                        .findFirst()
                        .ifPresent(this::show);
            }
        });
        return button;
    }

    private void show(Line line) {
        text.getSelectionModel().select(line);
        text.scrollTo(Math.max(0, line.number() - 4));
    }

    /** A line with its number, and below it what is wrong. */
    private static final class LineCell extends ListCell<Line> {
        private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

        LineCell() {
            setWrapText(true);
            // a long line is broken at the edge of the list rather than widening it
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(Line item, boolean empty) {
            super.updateItem(item, empty);
            boolean none = empty || item == null;
            pseudoClassStateChanged(WRONG, !none && !item.problems().isEmpty());
            setText(none ? "" : shown(item));
            setAccessibleText(none ? "" : item.spoken());
        }

        private static String shown(Line line) {
            // a figure space is as wide as a figure
            String number = String.format(Locale.ROOT, "%4d", line.number()).replace(' ', '\u2007');
            String bare = line.text().stripLeading();
            // the indent stays, and the number with the first word; elsewhere a long line may be broken
            String indent = "\u00a0".repeat(line.text().length() - bare.length());
            String text = number + "\u00a0\u00a0\u00a0" + indent + bare;
            return line.problems().isEmpty() ? text : text + "\n" + line.problemText();
        }
    }
}
