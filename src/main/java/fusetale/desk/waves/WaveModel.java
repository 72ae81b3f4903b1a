package fusetale.desk.waves;

import fusetale.explore.Outcome;
import fusetale.explore.Trace;
import fusetale.explore.Words;
import fusetale.quantity.Unit;
import fusetale.report.Figures;
import fusetale.signal.Waveform;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** One trace ready to be shown: its two curves on one time axis, its axis ends, its figures and what is said of it. Immutable. */
public final class WaveModel {
    private static final Words WORDS = Words.of(WaveModel.class);

    /** A mean above this part of the r.m.s. value is what matters; below it the waveform alternates. */
    private static final double STEADY_RATIO = 0.2;

    /** Less height than this part of the largest value, or than a hundredth of its mean, is no hump. */
    private static final double FLAT_RATIO = 1e-3;

    private static final double TIDY_RATIO = 0.06;

    private final Trace trace;
    private final boolean repeats;
    private final double cycleSeconds;
    private final Curve built;
    private final Curve supposed;
    private final double tick;
    private final double low;
    private final double high;

    private WaveModel(Trace trace, double cycleSeconds) {
        this.trace = trace;
        this.repeats = cycleSeconds > 0;
        this.cycleSeconds = cycleSeconds;
        this.built = repeats ? Curve.repeated(trace.asBuilt(), cycleSeconds) : Curve.once(trace.asBuilt());
        this.supposed = repeats ? Curve.repeated(trace.asSupposed(), cycleSeconds) : Curve.once(trace.asSupposed());
        double least = Math.min(trace.asBuilt().lowest(), trace.asSupposed().lowest());
        double most = Math.max(trace.asBuilt().highest(), trace.asSupposed().highest());
        double step = step(Math.max(most - least, 0.02 * Math.max(Math.abs(most), Math.abs(least))));
        // what reaches past a round figure by a hair does not deserve the next one
        this.tick = step;
        double bottom = Math.rint(Math.floor(least / step + TIDY_RATIO)) * step;
        double top = Math.rint(Math.ceil(most / step - TIDY_RATIO)) * step;
        this.low = bottom;
        this.high = top > bottom ? top : bottom + step;
    }

    /** A trace over two cycles of the mains. */
    public static WaveModel repeated(Trace trace, double cycleSeconds) {
        return new WaveModel(trace, cycleSeconds);
    }

    /** A trace that does not repeat, from its start to its end. */
    public static WaveModel once(Trace trace) {
        return new WaveModel(trace, 0);
    }

    /** The traces of an outcome, in its order; those of pulses do not repeat. */
    public static List<WaveModel> of(Outcome outcome) {
        double cycleSeconds =
                1 / outcome.question().arrangement().hertz(outcome.question().healthy());
        boolean pulsed = !outcome.bench().pulses().isEmpty();
        return outcome.traces().stream()
                .map(t -> pulsed ? once(t) : repeated(t, cycleSeconds))
                .toList();
    }

    /** {@code TP2 volts}. */
    public String title() {
        return WORDS.say("title", trace.label(), WORDS.say(trace.unit() == Unit.VOLT ? "volts" : "amperes"));
    }

    /** {@code TP2 V}, where there is no room for the title. */
    public String shortTitle() {
        return WORDS.say("title", trace.label(), trace.unit().symbol());
    }

    /** {@code TP2}, {@code F201}. */
    public String label() {
        return trace.label();
    }

    /** Volts or amperes. */
    public Unit unit() {
        return trace.unit();
    }

    /** What the figures are: mean, r.m.s. of what alternates, highest of what does not repeat. */
    public String kind() {
        return WORDS.say(repeats ? steady() ? "mean" : "rms" : "highest");
    }

    /** The healthy figure, without the unit where that has no prefix: the title names it. */
    public String builtFigure() {
        return bare(figure(trace.asBuilt(), trace.asSupposed()));
    }

    /** The supposed figure, as {@link #builtFigure}. */
    public String supposedFigure() {
        return bare(figure(trace.asSupposed(), trace.asBuilt()));
    }

    /** Lower end of the value axis, SI, a round figure. */
    public double low() {
        return low;
    }

    /** Upper end of the value axis, SI, a round figure. */
    public double high() {
        return high;
    }

    /** Distance of marks on the value axis, SI. */
    double tick() {
        return tick;
    }

    /** End of the time axis [s]; it begins at 0. */
    public double seconds() {
        return Math.max(built.end(), supposed.end());
    }

    /** Whether it repeats with the mains. */
    public boolean repeats() {
        return repeats;
    }

    /** A value of an axis in words, without unit: {@code 36}. */
    public String axisEnd(double value) {
        return Figures.plain(value == 0 ? 0 : value);
    }

    /** The end of the time axis in words: {@code 33.3 ms}. */
    public String timeEnd() {
        return time(seconds());
    }

    /** A time in words: {@code 12.5 ms}. */
    public static String time(double seconds) {
        return String.format(Locale.ROOT, "%.1f ms", seconds * 1000);
    }

    /** The healthy value at a time [s], SI. */
    public double builtAt(double seconds) {
        return built.at(seconds);
    }

    /** The supposed value at a time [s], SI. */
    public double supposedAt(double seconds) {
        return supposed.at(seconds);
    }

    /** The healthy value at a time [s] in words. */
    public String builtSaid(double seconds) {
        return Figures.beside(builtAt(seconds), Math.max(Math.abs(low), Math.abs(high)), unit());
    }

    /** The supposed value at a time [s] in words. */
    public String supposedSaid(double seconds) {
        return Figures.beside(supposedAt(seconds), Math.max(Math.abs(low), Math.abs(high)), unit());
    }

    /** The waveform as a screen reader says it. */
    public String spoken() {
        String healthy = side(trace.asBuilt(), trace.asSupposed());
        String then = side(trace.asSupposed(), trace.asBuilt());
        return healthy.equals(then)
                ? WORDS.say("spoken.same", title(), healthy)
                : WORDS.say("spoken", title(), healthy, then);
    }

    /**
     * Several traces as comma-separated text: the time in milliseconds, then healthy and supposed of each, units in the
     * heading, points for decimals. A row for every moment at which any of them has a sample; between its samples a curve
     * is a straight line.
     */
    public static String csv(List<WaveModel> models) {
        StringBuilder text = new StringBuilder(WORDS.say("csv.time"));
        TreeSet<Double> moments = new TreeSet<>();
        for (WaveModel model : models) {
            String symbol = model.unit().symbol();
            text.append(',').append(quoted(WORDS.say("csv.built", model.label(), symbol)));
            text.append(',').append(quoted(WORDS.say("csv.supposed", model.label(), symbol)));
            for (Curve curve : List.of(model.built, model.supposed)) {
                for (int k = 0; k < curve.size(); k++) {
                    moments.add(curve.seconds(k));
                }
            }
        }
        text.append('\n');
        for (double moment : moments) {
            List<String> cells = new ArrayList<>();
            cells.add(String.format(Locale.ROOT, "%.4f", moment * 1000));
            for (WaveModel model : models) {
                cells.add(String.format(Locale.ROOT, "%.5g", model.builtAt(moment)));
                cells.add(String.format(Locale.ROOT, "%.5g", model.supposedAt(moment)));
            }
            text.append(String.join(",", cells)).append('\n');
        }
        return text.toString();
    }

    private static String quoted(String cell) {
        return cell.contains(",") || cell.contains("\"") ? '"' + cell.replace("\"", "\"\"") + '"' : cell;
    }

    /** The healthy curve. */
    Curve built() {
        return built;
    }

    /** The supposed curve. */
    Curve supposed() {
        return supposed;
    }

    private boolean steady() {
        return Math.abs(trace.asBuilt().mean()) > STEADY_RATIO * trace.asBuilt().rms();
    }

    private String figure(Waveform wave, Waveform beside) {
        ToDoubleFunction<Waveform> size = repeats ? steady() ? Waveform::mean : Waveform::rms : Waveform::highest;
        return Figures.beside(size.applyAsDouble(wave), size.applyAsDouble(beside), unit());
    }

    private String bare(String figure) {
        String symbol = " " + unit().symbol();
        return figure.endsWith(symbol) ? figure.substring(0, figure.length() - symbol.length()) : figure;
    }

    private String side(Waveform wave, Waveform beside) {
        String figure = figure(wave, beside);
        double size = Math.max(Math.abs(wave.highest()), Math.abs(wave.lowest()));
        double both = Math.max(size, Math.max(Math.abs(beside.highest()), Math.abs(beside.lowest())));
        if (wave.peakToPeak() <= FLAT_RATIO * both) {
            return WORDS.say("side.steady", Figures.beside(wave.mean(), beside.mean(), unit()));
        }
        String often = WORDS.say("side.once");
        if (repeats) {
            often = WORDS.say("side.humps", Figures.plain(Humps.in(wave) / cycleSeconds));
        }
        return WORDS.say(
                "side",
                kind(),
                figure,
                Figures.beside(wave.lowest(), size, unit()),
                Figures.beside(wave.highest(), size, unit()),
                often);
    }

    /** A round step, 1, 2 or 5 times a power of ten, a fifth of a height or less. */
    static double step(double height) {
        double fifth = Math.max(height, 1e-9) / 5;
        double power = Math.pow(10, Math.floor(Math.log10(fifth)));
        double lead = fifth / power;
        return power * (lead >= 5 ? 5 : lead >= 2 ? 2 : 1);
    }
}
