package fusetale.store;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What a person has settled for good.
 *
 * @param mainsHertz mains frequency; 0 for what the circuit file says
 * @param meter name of the meter on the bench; empty for the usual one
 * @param symbols which standard's symbols drawings use
 * @param textPerCent size of text, 100 to 200; 0 for what suits the width of the window
 * @param light light, dark or as the system
 * @param singleLetters whether single letters are commands
 * @param paper what is in the printer
 * @param repairsFolder where repairs live; empty for the folder of the {@link Store}
 */
public record Preferences(
        int mainsHertz,
        String meter,
        Symbols symbols,
        int textPerCent,
        Light light,
        boolean singleLetters,
        Paper paper,
        String repairsFolder) {
    /** Smallest size of text [%]. */
    public static final int LEAST_TEXT_PER_CENT = 100;

    /** Largest size of text [%]. */
    public static final int MOST_TEXT_PER_CENT = 200;

    /** Size of text where none was chosen. */
    public static final int TEXT_AS_THE_WINDOW = 0;

    /** Mains frequencies to choose from [Hz]; 0 for what the circuit file says. */
    public static final List<Integer> MAINS_HERTZ = List.of(0, 50, 60);

    /** What holds until something else is chosen. */
    public static final Preferences USUAL =
            new Preferences(0, "", Symbols.IEC_60617, TEXT_AS_THE_WINDOW, Light.AS_THE_SYSTEM, true, Paper.A4, "");

    private static final String FORMAT = "1";

    private static final String AS_THE_WINDOW = "as the window";

    /** Standards of symbols. */
    public enum Symbols {
        /** Resistors are boxes. */
        IEC_60617("IEC 60617"),
        /** Resistors are zigzags. */
        IEEE_315("IEEE 315");

        private final String words;

        Symbols(String words) {
            this.words = words;
        }

        /** As written in the file. */
        public String words() {
            return words;
        }
    }

    /** How bright the window is. */
    public enum Light {
        /** For daylight. */
        LIGHT("light"),
        /** For a dim cellar. */
        LAMP_OFF("lamp off"),
        /** What the system is set to. */
        AS_THE_SYSTEM("as the system");

        private final String words;

        Light(String words) {
            this.words = words;
        }

        /** As written in the file. */
        public String words() {
            return words;
        }
    }

    /** Sizes of paper. */
    public enum Paper {
        /** 297 by 210 mm (ISO 216). */
        A4("A4"),
        /** 11 by 8.5 inches (ANSI/ASME Y14.1). */
        LETTER("Letter");

        private final String words;

        Paper(String words) {
            this.words = words;
        }

        /** As written in the file. */
        public String words() {
            return words;
        }
    }

    /** Refuses what {@link #read} never gives. */
    public Preferences {
        if (!MAINS_HERTZ.contains(mainsHertz)) {
            throw new IllegalArgumentException("mains of " + mainsHertz + " Hz");
        }
        if (!isSize(textPerCent)) {
            throw new IllegalArgumentException("text of " + textPerCent + " %");
        }
    }

    private static boolean isSize(int perCent) {
        return perCent == TEXT_AS_THE_WINDOW || (perCent >= LEAST_TEXT_PER_CENT && perCent <= MOST_TEXT_PER_CENT);
    }

    /** The same with another mains frequency [Hz], 0 for what the circuit file says. */
    public Preferences withMainsHertz(int other) {
        return new Preferences(other, meter, symbols, textPerCent, light, singleLetters, paper, repairsFolder);
    }

    /** The same with another meter. */
    public Preferences withMeter(String other) {
        return new Preferences(mainsHertz, other, symbols, textPerCent, light, singleLetters, paper, repairsFolder);
    }

    /** The same with another symbols. */
    public Preferences withSymbols(Symbols other) {
        return new Preferences(mainsHertz, meter, other, textPerCent, light, singleLetters, paper, repairsFolder);
    }

    /** The same with another size of text [%], 0 for what suits the width of the window. */
    public Preferences withTextPerCent(int other) {
        return new Preferences(mainsHertz, meter, symbols, other, light, singleLetters, paper, repairsFolder);
    }

    /** The same with another light. */
    public Preferences withLight(Light other) {
        return new Preferences(mainsHertz, meter, symbols, textPerCent, other, singleLetters, paper, repairsFolder);
    }

    /** The same with another single letters as commands, or not. */
    public Preferences withSingleLetters(boolean other) {
        return new Preferences(mainsHertz, meter, symbols, textPerCent, light, other, paper, repairsFolder);
    }

    /** The same with another paper. */
    public Preferences withPaper(Paper other) {
        return new Preferences(mainsHertz, meter, symbols, textPerCent, light, singleLetters, other, repairsFolder);
    }

    /** The same with another folder of repairs. */
    public Preferences withRepairsFolder(String other) {
        return new Preferences(mainsHertz, meter, symbols, textPerCent, light, singleLetters, paper, other);
    }

    /** Where repairs live. */
    public Path repairs(Store store) {
        return repairsFolder.isEmpty() ? store.repairs() : Path.of(repairsFolder);
    }

    String text() {
        return new Written("Preferences, kept by Fusetale.")
                .with("format", FORMAT)
                .with("mains hertz", mainsHertz == 0 ? "as the circuit file" : Integer.toString(mainsHertz))
                .with("meter", meter)
                .with("symbols", symbols.words())
                .with(
                        "text per cent",
                        textPerCent == TEXT_AS_THE_WINDOW ? AS_THE_WINDOW : Integer.toString(textPerCent))
                .with("light", light.words())
                .with("single letters", yesNo(singleLetters))
                .with("paper", paper.words())
                .with("repairs folder", repairsFolder)
                .toString();
    }

    private static String yesNo(boolean value) {
        return value ? "yes" : "no";
    }

    static Kept<Preferences> read(Path file) {
        return Page.read(file)
                .map(page -> {
                    Reading reading = new Reading(page);
                    Preferences read = reading.all();
                    page.knowsOnly(List.of(
                            "format",
                            "mains hertz",
                            "meter",
                            "symbols",
                            "text per cent",
                            "light",
                            "single letters",
                            "paper",
                            "repairs folder",
                            // written by earlier versions, where they changed nothing
                            "reduce motion",
                            "decimal comma"));
                    return new Kept<>(read, page.lost());
                })
                .orElse(new Kept<>(USUAL, List.of()));
    }

    /** Reads each preference by itself, so that one that is spoilt does not take the others along. */
    private record Reading(Page page) {
        Preferences all() {
            return USUAL.withMainsHertz(chosen(
                            "mains hertz",
                            MAINS_HERTZ,
                            h -> h == 0 ? "as the circuit file" : Integer.toString(h),
                            USUAL.mainsHertz()))
                    .withMeter(page.text("meter").orElse(USUAL.meter()))
                    .withSymbols(chosen("symbols", List.of(Symbols.values()), Symbols::words, USUAL.symbols()))
                    .withTextPerCent(textPerCent())
                    .withLight(chosen("light", List.of(Light.values()), Light::words, USUAL.light()))
                    .withSingleLetters(flag("single letters", USUAL.singleLetters()))
                    .withPaper(chosen("paper", Arrays.asList(Paper.values()), Paper::words, USUAL.paper()))
                    .withRepairsFolder(folder());
        }

        private boolean flag(String key, boolean usual) {
            return chosen(key, List.of(true, false), Preferences::yesNo, usual);
        }

        private <T> T chosen(String key, List<T> choices, Function<T, String> words, T usual) {
            Optional<String> written = page.text(key);
            if (written.isEmpty()) {
                return usual;
            }
            Optional<T> found = choices.stream()
                    .filter(c -> words.apply(c).equals(written.get()))
                    .findFirst();
            if (found.isEmpty()) {
                page.lose(
                        key,
                        "'" + written.get() + "' is none of "
                                + choices.stream().map(words).collect(Collectors.joining(", ")));
            }
            return found.orElse(usual);
        }

        private int textPerCent() {
            String written = page.text("text per cent").orElse(AS_THE_WINDOW);
            if (written.equals(AS_THE_WINDOW)) {
                return TEXT_AS_THE_WINDOW;
            }
            try {
                int size = Integer.parseInt(written);
                if (size != TEXT_AS_THE_WINDOW && isSize(size)) {
                    return size;
                }
            } catch (NumberFormatException e) {
                // said below, as is a size out of bounds
            }
            page.lose("text per cent", "'" + written + "' is no whole number from 100 to 200");
            return USUAL.textPerCent();
        }

        private String folder() {
            String written = page.text("repairs folder").orElse("");
            try {
                if (written.isEmpty() || Path.of(written).isAbsolute()) {
                    return written;
                }
                page.lose("repairs folder", "'" + written + "' does not begin at the root of a disk");
            } catch (InvalidPathException e) {
                page.lose("repairs folder", "'" + written + "' is no path on this system");
            }
            return "";
        }
    }
}
