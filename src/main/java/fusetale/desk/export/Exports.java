package fusetale.desk.export;

import fusetale.explore.Outcome;
import fusetale.explore.Words;
import fusetale.report.Csv;
import fusetale.report.OutOfDatePicture;
import fusetale.report.Pages;
import fusetale.report.Picture;
import fusetale.report.PictureFile;
import fusetale.report.Settings;
import fusetale.report.SupposePicture;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Everything that can be written of an outcome. Nothing is made before it is asked for. */
public final class Exports {
    private static final int MOST_SCALE = 3;
    private static final Words WORDS = Words.of(Exports.class);

    private final List<Offer> offers = new ArrayList<>();
    private final String name;

    private Exports(String name) {
        this.name = name;
    }

    /**
     * The offers.
     *
     * @param outcome what was worked out last
     * @param faults each fault in words; empty for a healthy machine
     * @param outOfDate whether the question has changed since, which is then said in every file
     * @param drawing the drawing as files, or null where there is none
     * @param sheet makes the bench sheet
     */
    public static List<Offer> of(
            Outcome outcome,
            List<String> faults,
            boolean outOfDate,
            @Nullable Drawn drawing,
            Supplier<? extends Pages> sheet) {
        Exports exports = new Exports(
                plain(outcome.question().healthy().name()) + (outOfDate ? "-" + WORDS.say("out-of-date.file") : ""));
        Picture picture = picture(outcome, faults, outOfDate);
        String readings = WORDS.say("readings");
        for (int scale = 1; scale <= MOST_SCALE; scale++) {
            int times = scale;
            exports.add(
                    readings,
                    WORDS.say("png", times),
                    "readings-" + times + "x.png",
                    () -> PictureFile.png(picture, times));
        }
        exports.add(readings, WORDS.say("svg"), "readings.svg", () -> PictureFile.SVG.bytes(picture));
        exports.add(
                readings,
                WORDS.say("csv"),
                "readings.csv",
                () -> Csv.sheet(outcome, outOfDate).getBytes(StandardCharsets.UTF_8));
        if (drawing != null) {
            String what = WORDS.say("drawing");
            for (int scale = 1; scale <= MOST_SCALE; scale++) {
                int times = scale;
                exports.add(what, WORDS.say("png", times), "drawing-" + times + "x.png", () -> drawing.png(times));
            }
            exports.add(what, WORDS.say("svg"), "drawing.svg", drawing::svg);
        }
        exports.add(
                WORDS.say("sheet"),
                WORDS.say("pdf"),
                "bench-sheet.pdf",
                () -> sheet.get().pdf());
        return List.copyOf(exports.offers);
    }

    /** The picture of an outcome, marked where it is out of date. */
    public static Picture picture(Outcome outcome, List<String> faults, boolean outOfDate) {
        Picture picture = new SupposePicture(outcome, faults, Settings.words(outcome.question()));
        return outOfDate ? new OutOfDatePicture(picture) : picture;
    }

    private void add(String what, String kind, String ending, Supplier<byte[]> bytes) {
        offers.add(new Offer(what, kind, name + "-" + ending, bytes));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    }
}
