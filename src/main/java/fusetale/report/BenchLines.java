package fusetale.report;

import fusetale.aftermath.FusePulse;
import fusetale.explore.AtTheBench;
import fusetale.explore.Outcome;
import fusetale.explore.PulseFigures;
import fusetale.explore.Pulsed;
import fusetale.explore.PulsedClamp;
import fusetale.explore.SeriesLamp;
import fusetale.explore.Stands;
import fusetale.explore.Words;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;

/** What the arrangement itself shows, as lines of text: the series lamp, what happens while a coil is pulsed. */
final class BenchLines {
    private static final Words WORDS = Words.of(BenchLines.class);
    private static final double PER_CENT = 100;

    private final boolean healthy;
    private final Emphasis emphasis;
    private final List<String> lines = new ArrayList<>();

    private BenchLines(Outcome outcome, Emphasis emphasis) {
        this.healthy = outcome.question().supposition().isNothing();
        this.emphasis = emphasis;
    }

    /** The lines, a blank one before each part; empty where the arrangement has neither. */
    static List<String> of(Outcome outcome, Emphasis emphasis) {
        BenchLines all = new BenchLines(outcome, emphasis);
        AtTheBench bench = outcome.bench();
        SeriesLamp lamp = bench.seriesLamp();
        if (lamp != null) {
            all.lines.add("");
            all.lines.addAll(Tables.wrapped(all.lamp(lamp)));
        }
        bench.pulses().forEach(all::pulse);
        return all.lines;
    }

    private String lamp(SeriesLamp lamp) {
        String head = WORDS.say("lamp", watts(lamp.ratedWatts()));
        return healthy
                ? head + " " + WORDS.say("lamp.healthy", glow(lamp.asBuilt()))
                : head + " " + WORDS.say("lamp.both", glow(lamp.asSupposed()), glow(lamp.asBuilt()));
    }

    /** {@code dim, 1.2 % of its power (1.2 W, 8.4 V across it), 0.14 A from the mains}. */
    static String glow(SeriesLamp.Glow glow) {
        return WORDS.say(
                "lamp.glow",
                glow.brightness().words(),
                share(glow.shareRatio()),
                watts(glow.watts()),
                Notation.format(new Quantity(glow.volts(), Unit.VOLT), 3),
                Notation.format(new Quantity(glow.mainsAmps(), Unit.AMPERE), 3));
    }

    /** A share in per cent: two figures below ten. */
    static String share(double ratio) {
        double cent = PER_CENT * ratio;
        return String.format(Locale.ROOT, cent < 0.1 ? "%.2f" : cent < 10 ? "%.1f" : "%.0f", cent) + " %";
    }

    private static String watts(double watts) {
        return Notation.format(new Quantity(watts, Unit.WATT), 3);
    }

    private void pulse(Pulsed pulsed) {
        lines.add("");
        String head = WORDS.say(
                "pulse",
                pulsed.driven(),
                seconds(pulsed.seconds()),
                pulsed.asBuilt().size());
        Tables.wrapped(head).forEach(line -> lines.add(emphasis.strong(line)));
        TextTable table = healthy
                ? new TextTable(
                        TextTable.Column.left(WORDS.say("head.what")), TextTable.Column.left(WORDS.say("head.built")))
                : new TextTable(
                        TextTable.Column.left(WORDS.say("head.what")),
                        TextTable.Column.left(WORDS.say("head.built")),
                        TextTable.Column.left(WORDS.say("head.supposed")));
        figure(table, pulsed, WORDS.say("pulse.reached"), PulseFigures::reachedAmps, v -> figure(v, Unit.AMPERE));
        plunger(table, pulsed);
        figure(table, pulsed, WORDS.say("pulse.taken"), PulseFigures::takenJoules, BenchLines::joules);
        figure(table, pulsed, WORDS.say("pulse.dip"), PulseFigures::dipVolts, v -> figure(v, Unit.VOLT));
        figure(table, pulsed, WORDS.say("pulse.stored"), PulseFigures::storedJoules, BenchLines::joules);
        driver(table, pulsed);
        if (!Double.isNaN(pulsed.holdAmps())) {
            figure(
                    table,
                    pulsed,
                    WORDS.say("pulse.drop-out", figure(pulsed.holdAmps(), Unit.AMPERE)),
                    PulseFigures::dropOutSeconds,
                    BenchLines::seconds);
        }
        for (Pulsed.PulsedFuse fuse : pulsed.fuses()) {
            row(table, WORDS.say("pulse.fuse", fuse.part()), share(fuse.asBuilt()), share(fuse.asSupposed()));
            row(table, WORDS.say("pulse.withstood", fuse.part()), pulses(fuse.asBuilt()), pulses(fuse.asSupposed()));
        }
        lines.addAll(table.lines(emphasis));
    }

    private void driver(TextTable table, Pulsed pulsed) {
        String driver = pulsed.driver();
        Stands stands = pulsed.stoodAsSupposed();
        figure(
                table,
                pulsed,
                rated("pulse.steady", driver, stands.steadyAmps(), Unit.AMPERE),
                PulseFigures::driverSteadyAmps,
                v -> figure(v, Unit.AMPERE));
        figure(table, pulsed, WORDS.say("pulse.peak", driver), PulseFigures::peakVolts, v -> figure(v, Unit.VOLT));
        row(table, WORDS.say("pulse.limit"), limits(pulsed.asBuilt()), limits(pulsed.asSupposed()));
        figure(table, pulsed, WORDS.say("pulse.limit-takes"), PulseFigures::limitJoules, BenchLines::joules);
        for (PulsedClamp clamp : pulsed.clamps()) {
            row(
                    table,
                    rated("pulse.clamp", clamp.part(), clamp.stoodAsSupposed().peakAmps(), Unit.AMPERE),
                    figure(clamp.asBuilt().peakAmps(), Unit.AMPERE),
                    figure(clamp.asSupposed().peakAmps(), Unit.AMPERE));
        }
        String avalanche = rated("pulse.avalanche", driver, stands.avalancheJoules(), Unit.JOULE);
        figure(table, pulsed, avalanche, PulseFigures::avalancheJoules, BenchLines::joules);
    }

    /** What a row is of, with what the part stands where that is known. */
    private static String rated(String key, String part, double rating, Unit unit) {
        return Double.isInfinite(rating)
                ? WORDS.say(key, part)
                : WORDS.say(key + ".rated", part, Tables.rating(rating, unit));
    }

    private void plunger(TextTable table, Pulsed pulsed) {
        if (Double.isNaN(pulsed.pullInAmps())) {
            return;
        }
        figure(
                table,
                pulsed,
                WORDS.say("pulse.pull-in", figure(pulsed.pullInAmps(), Unit.AMPERE)),
                PulseFigures::pullInSeconds,
                BenchLines::seconds);
        row(table, WORDS.say("pulse.plunger"), moves(pulsed.asBuilt()), moves(pulsed.asSupposed()));
    }

    private static String moves(List<PulseFigures> side) {
        int moments = Pulsed.range(side, PulseFigures::pullInSeconds).moments();
        if (moments == side.size()) {
            return WORDS.say("pulse.moves");
        }
        return moments == 0 ? WORDS.say("pulse.stays") : WORDS.say("pulse.moves-sometimes", moments, side.size());
    }

    private void figure(
            TextTable table,
            Pulsed pulsed,
            String what,
            ToDoubleFunction<PulseFigures> figure,
            DoubleFunction<String> words) {
        row(table, what, range(pulsed.asBuilt(), figure, words), range(pulsed.asSupposed(), figure, words));
    }

    private void row(TextTable table, String what, String built, String supposed) {
        if (healthy) {
            table.row(false, what, built);
        } else {
            table.row(!built.equals(supposed), what, built, supposed);
        }
    }

    private static String range(
            List<PulseFigures> side, ToDoubleFunction<PulseFigures> figure, DoubleFunction<String> words) {
        Pulsed.Range range = Pulsed.range(side, figure);
        if (range.moments() == 0) {
            return WORDS.say("pulse.never");
        }
        String least = words.apply(range.least());
        String most = words.apply(range.most());
        String text = least.equals(most) ? most : WORDS.say("pulse.range", shorter(least, most), most);
        return range.moments() == side.size()
                ? text
                : text + " " + WORDS.say("pulse.in-moments", range.moments(), side.size());
    }

    /** The first of two figures without its unit where the second has the same. */
    private static String shorter(String one, String two) {
        int space = one.indexOf(' ');
        return space > 0 && two.endsWith(one.substring(space)) ? one.substring(0, space) : one;
    }

    private static String limits(List<PulseFigures> side) {
        Map<PulseFigures.Kind, String> found = new EnumMap<>(PulseFigures.Kind.class);
        for (PulseFigures each : side) {
            PulseFigures.Limit limit = each.limit();
            found.put(limit.kind(), WORDS.say("limit." + limit.kind().name().toLowerCase(Locale.ROOT), limit.part()));
        }
        return String.join(WORDS.say("pulse.or"), new TreeSet<>(found.values()));
    }

    private static String share(FusePulse pulse) {
        return WORDS.say(
                "pulse.share",
                Notation.format(new Quantity(pulse.ampsSquaredSeconds(), Unit.AMPERE_SQUARED_SECOND), 2),
                share(pulse.shareRatio()));
    }

    private static String pulses(FusePulse pulse) {
        return switch (pulse.withstood()) {
            case 0 -> WORDS.say("pulse.may-melt");
            case 1 -> WORDS.say("pulse.few");
            default -> WORDS.say("pulse.pulses", pulse.withstood());
        };
    }

    private static String figure(double si, Unit unit) {
        return Notation.format(new Quantity(si, unit), 2);
    }

    private static String seconds(double seconds) {
        return Notation.format(new Quantity(seconds, Unit.SECOND), 2);
    }

    /** Two figures with the prefix that fits; what is less than a microjoule is nothing. */
    static String joules(double joules) {
        if (Math.abs(joules) < 1e-6) {
            return "0 J";
        }
        return Notation.format(new Quantity(joules, Unit.JOULE), 2);
    }
}
