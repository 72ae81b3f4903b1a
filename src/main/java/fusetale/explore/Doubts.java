package fusetale.explore;

import fusetale.aftermath.Melting;
import fusetale.aftermath.Strain;
import fusetale.aftermath.Stress;
import fusetale.circuit.Fuse;
import fusetale.quantity.Notation;
import fusetale.quantity.Quantity;
import fusetale.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Finds what a reader must know before trusting an outcome, and says it. */
final class Doubts {

    /** A reading so many times the meter's accuracy is one that somebody would go by. */
    private static final double LARGE_AGAINST_ACCURACY = 20;

    /** Larger of the two usual ratings of a branch that feeds wall outlets, 15 A and 20 A (common practice at 120 V). */
    private static final double HOUSE_BREAKER_AMPS = 20;

    /** More would not be read. */
    private static final int MOST_LOSSES = 2;

    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    private static final Words WORDS = Words.of(Doubts.class);

    private final Set<Doubt> found = new LinkedHashSet<>();
    private final Settled settled;
    private final List<Stress> over;
    private final List<Stress> overAsBuilt;
    private final List<Compared> compared;
    private final Forwards played;

    /**
     * Of a machine as supposed.
     *
     * @param over its figures past their rating, worst first
     * @param overAsBuilt those of the healthy machine
     * @param compared its readings
     * @param played what follows
     */
    Doubts(Settled settled, List<Stress> over, List<Stress> overAsBuilt, List<Compared> compared, Forwards played) {
        this.settled = settled;
        this.over = over;
        this.overAsBuilt = overAsBuilt;
        this.compared = compared;
        this.played = played;
    }

    /** Everything, the gravest first; equal ones in the order found. */
    List<Doubt> inOrder(List<String> remarks, boolean powerOn) {
        if (powerOn) {
            mains();
            dangers();
            settled.melted().forEach(this::melted);
            race();
            mayMelt();
        }
        wrongLinks();
        remarks.forEach(r -> add(Doubt.Severity.DOUBTFUL, WORDS.say("remark", r)));
        if (powerOn) {
            charges();
        }
        return found.stream().sorted(Comparator.comparing(Doubt::severity)).toList();
    }

    /** The breaker of the house is no part of the circuit, yet past it there is nothing left to read. */
    private void mains() {
        if (settled.seen().modelled().element("mains").isEmpty()) {
            return;
        }
        double drawn = settled.seen().amps("mains").rms();
        if (drawn > HOUSE_BREAKER_AMPS) {
            add(Doubt.Severity.DANGER, WORDS.say("danger.mains", amps(drawn), figure(HOUSE_BREAKER_AMPS, Unit.AMPERE)));
        }
    }

    /** What is lost before a fuse melts, or because none does: as played forward, or at first look where nothing was. */
    private void dangers() {
        if (played.aftermath() == null) {
            firstLook();
        } else if (!played.losses().isEmpty()) {
            String losses = played.losses().stream()
                    .limit(MOST_LOSSES)
                    .map(h -> WORDS.say("loss", h.words(), h.when()))
                    .collect(Collectors.joining(WORDS.say("loss.and")));
            Optional<Settled.Carrying> holding = mostOverloaded();
            add(
                    Doubt.Severity.DANGER,
                    holding.map(c -> WORDS.say("danger.before", holds(c.fuse()), holdingTime(c.melting()), losses))
                            .orElseGet(() -> WORDS.say("danger.lost", losses)));
            unmoved();
        }
    }

    /** The fuse that carries most for its marking, melted or not. */
    private Optional<Settled.Carrying> mostOverloaded() {
        return Stream.concat(settled.melted().stream(), settled.held().stream())
                .filter(c -> over(c) > 1)
                .max(Comparator.comparingDouble(Doubts::over));
    }

    /** Parts far past their rating because the fuse before them holds, or because there is none. */
    private void firstLook() {
        List<Stress> lost = over.stream().filter(this::isLost).toList();
        if (lost.isEmpty()) {
            return;
        }
        String parts = lost.stream().limit(2).map(Doubts::against).collect(Collectors.joining(WORDS.say("and")));
        Optional<Settled.Carrying> holding = settled.mostOverloaded().filter(c -> over(c) > 1);
        add(
                Doubt.Severity.DANGER,
                holding.map(c -> WORDS.say("danger.may-hold", holds(c.fuse()), holdingTime(c.melting()), parts))
                        .orElseGet(() -> WORDS.say("danger.nothing-melts", capital(parts))));
        unmoved();
    }

    /** Readings that look healthy beside others of the same points that do not: they would mislead. */
    private void unmoved() {
        List<Compared> misleading = compared.stream()
                .filter(row -> contrast(row) > 0)
                .sorted(Comparator.comparingDouble(this::contrast).reversed())
                .toList();
        if (!misleading.isEmpty()) {
            Compared first = misleading.get(0);
            add(
                    Doubt.Severity.NOTE,
                    WORDS.say(
                            switch (misleading.size()) {
                                case 1 -> "unmoved";
                                case 2 -> "unmoved.other";
                                default -> "unmoved.more";
                            },
                            first.check().from(),
                            first.check().function().words(),
                            first.asSupposed().shows(),
                            misleading.size() - 1));
        }
    }

    /**
     * How much a reading that looks healthy misleads, 0 to 1: 1 where another reading of the same points moved by as much as
     * this one still reads, so that both are of the same weight to whoever measures.
     */
    private double contrast(Compared row) {
        double reads = Math.abs(row.asSupposed().value());
        boolean wouldBeGoneBy = row.tooCloseToTell()
                && !row.asSupposed().overRange()
                && reads > LARGE_AGAINST_ACCURACY * row.asSupposed().halfWidth();
        double moved = compared.stream()
                .filter(other -> !other.tooCloseToTell() && samePoints(row, other))
                .mapToDouble(other ->
                        Math.abs(other.asSupposed().value() - other.asBuilt().value()))
                .max()
                .orElse(0);
        return wouldBeGoneBy ? Math.min(moved, reads) / Math.max(moved, reads) : 0;
    }

    private static boolean samePoints(Compared one, Compared other) {
        return one.check().from().equals(other.check().from())
                && one.check().to().equals(other.check().to());
    }

    private static double over(Settled.Carrying c) {
        return c.amps().rms() / c.fuse().marked().ratedAmps().si();
    }

    private boolean isLost(Stress stress) {
        return Strains.isLost(stress, overAsBuilt);
    }

    private void melted(Settled.Carrying c) {
        add(
                Doubt.Severity.NOTE,
                WORDS.say("melts", capital(name(c.fuse())), amps(c.amps().rms()), time(c.melting())));
    }

    private void race() {
        if (!settled.race().isEmpty()) {
            String names = String.join(", ", settled.race().stream().sorted().toList());
            add(Doubt.Severity.DOUBTFUL, WORDS.say("race", names));
        }
    }

    private void mayMelt() {
        for (Settled.Carrying c : settled.held()) {
            if (!c.melting().surelyHolds()) {
                add(
                        Doubt.Severity.DOUBTFUL,
                        WORDS.say(
                                "may-melt",
                                capital(name(c.fuse())),
                                amps(c.amps().rms()),
                                time(c.melting())));
            }
        }
    }

    private void wrongLinks() {
        for (Settled.Carrying c : settled.held()) {
            Fuse fuse = c.fuse();
            if (fuse.fitted().ratedAmps().si() > fuse.marked().ratedAmps().si()) {
                add(
                        Doubt.Severity.NOTE,
                        WORDS.say(
                                "wrong-link",
                                fuse.name(),
                                quantity(fuse.marked().ratedAmps()),
                                quantity(fuse.fitted().ratedAmps())));
            }
        }
    }

    private void charges() {
        for (Charges.Charge charge : Charges.of(settled.seen())) {
            String seconds = Double.isInfinite(charge.seconds())
                    ? WORDS.say("charge.never")
                    : WORDS.say("charge.after", Times.of(charge.seconds()));
            add(
                    charge.seconds() > MINUTE ? Doubt.Severity.HAZARD : Doubt.Severity.CAUTION,
                    WORDS.say(
                            "charge",
                            charge.part(),
                            figure(charge.volts(), Unit.VOLT),
                            joules(charge.joules()),
                            seconds));
        }
    }

    private void add(Doubt.Severity severity, String text) {
        found.add(new Doubt(severity, text));
    }

    /** "winding sol of T101 carries 47 A against its 4 A rating". */
    private static String against(Stress s) {
        String key = s.strain() == Strain.WINDING_CURRENT
                ? "against.winding"
                : s.place().isEmpty() ? "against" : "against.pin";
        return WORDS.say(
                key,
                s.part(),
                s.place(),
                s.strain().words(),
                figure(s.value(), s.strain().unit()),
                rating(s.limit(), s.strain().unit()));
    }

    private static String holds(Fuse fuse) {
        Quantity marked = fuse.marked().ratedAmps();
        Quantity fitted = fuse.fitted().ratedAmps();
        return fitted.si() == marked.si()
                ? name(fuse)
                : WORDS.say("holds", fuse.name(), quantity(fitted), quantity(marked));
    }

    private static String holdingTime(Melting melting) {
        if (melting.mayHold()) {
            return WORDS.say("hold.good");
        }
        return melting.maxSeconds() < 2 * MINUTE
                ? WORDS.say("hold.up-to", Times.of(melting.maxSeconds()))
                : WORDS.say("hold.minutes", Times.of(melting.maxSeconds()));
    }

    private static String time(Melting melting) {
        return melting.mayHold()
                ? WORDS.say("time.from", Times.of(Math.min(melting.minSeconds(), HOUR * 24)))
                : Times.between(melting.minSeconds(), melting.maxSeconds());
    }

    /** "F201 (6 A slow)". */
    private static String name(Fuse fuse) {
        return fuse.name() + " (" + quantity(fuse.fitted().ratedAmps()) + ")";
    }

    private static String amps(double amps) {
        return figure(amps, Unit.AMPERE);
    }

    private static String joules(double joules) {
        return new BigDecimal(joules).round(new MathContext(2)).toPlainString() + " J";
    }

    private static String figure(double si, Unit unit) {
        return Notation.format(new Quantity(si, unit), 2);
    }

    /** Three digits: those that are made have up to three, 0.125 W. */
    private static String rating(double si, Unit unit) {
        return Notation.format(new Quantity(si, unit), 3);
    }

    private static String quantity(Quantity quantity) {
        return Notation.format(quantity);
    }

    private static String capital(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }
}
