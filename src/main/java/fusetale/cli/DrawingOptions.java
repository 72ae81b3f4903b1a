package fusetale.cli;

import fusetale.circuit.Circuit;
import fusetale.explore.Doubt;
import fusetale.explore.Outcome;
import fusetale.explore.Words;
import fusetale.report.Settings;
import fusetale.report.drawing.DrawingPicture;
import fusetale.report.drawing.DrawingPlan;
import fusetale.report.drawing.Marks;
import fusetale.report.drawing.SymbolStyle;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What commands that draw a machine's schematic have in common. */
final class DrawingOptions {
    private static final Words WORDS = Words.of(DrawingOptions.class);

    @Option(names = "--drawing", paramLabel = "FILE", descriptionKey = "drawing")
    private @Nullable String file;

    @Option(names = "--symbols", paramLabel = "iec|ieee", descriptionKey = "symbols")
    private @Nullable String symbols;

    /** Whether a drawing is asked for. */
    boolean asked() {
        return file != null;
    }

    /**
     * Looks at what was typed before any work is done.
     *
     * @throws Refused where it cannot be drawn so
     */
    void check() throws Refused {
        PictureFiles.check(file);
        style();
        if (symbols != null && file == null) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("symbols.no-drawing"));
        }
    }

    /**
     * Looks whether a picture would go into the same file.
     *
     * @throws Refused where it would
     */
    void checkBeside(@Nullable String picture) throws Refused {
        if (file != null
                && picture != null
                && CircuitFiles.path(file)
                        .toAbsolutePath()
                        .normalize()
                        .equals(CircuitFiles.path(picture).toAbsolutePath().normalize())) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say("drawing.same-file", file));
        }
    }

    private SymbolStyle style() throws Refused {
        String wanted = symbols == null ? "ieee" : symbols;
        return switch (wanted) {
            case "iec" -> SymbolStyle.IEC_60617;
            case "ieee" -> SymbolStyle.IEEE_315;
            default -> throw new Refused(ExitCodes.UNUSABLE, WORDS.say("symbols.unknown", wanted));
        };
    }

    /**
     * Draws a machine as built, where that was asked for.
     *
     * @throws Refused where the file cannot be written
     */
    void draw(Circuit circuit, Console console) throws Refused {
        if (file != null) {
            SymbolStyle style = style();
            DrawingPicture.Heading heading =
                    new DrawingPicture.Heading(circuit.name(), WORDS.say("drawing.as-built", style.words()), "");
            PictureFiles.write(file, new DrawingPicture(DrawingPlan.of(circuit, style), Marks.NONE, heading), console);
        }
    }

    /**
     * Draws a machine with what is supposed and what comes of it, where that was asked for.
     *
     * @throws Refused where the file cannot be written
     */
    void draw(Outcome outcome, String sentence, Console console) throws Refused {
        if (file != null) {
            DrawingPlan plan = DrawingPlan.of(outcome.question().healthy(), style());
            String danger = outcome.doubts().stream()
                    .filter(d -> d.severity() == Doubt.Severity.DANGER)
                    .map(Doubt::text)
                    .findFirst()
                    .orElse("");
            DrawingPicture.Heading heading =
                    new DrawingPicture.Heading(sentence, Settings.words(outcome.question()), danger);
            PictureFiles.write(file, new DrawingPicture(plan, Marks.of(plan, outcome), heading), console);
        }
    }
}
