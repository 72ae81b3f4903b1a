package fusetale.report;

import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import fusetale.fault.UnfitSupposition;
import fusetale.match.Advice;
import fusetale.match.Ask;
import fusetale.match.Evidence;
import fusetale.match.LookAlike;
import fusetale.match.ReadingsWriter;
import fusetale.match.Repair;
import fusetale.match.Weighed;
import fusetale.quantity.Shares;
import fusetale.sentence.SentencePrinter;
import java.util.List;
import java.util.stream.Collectors;

/** What matching found, in words; tables, JSON and the window say the same. For one circuit; belongs to one thread. */
public final class MatchWords {
    private static final Words WORDS = Words.of(MatchWords.class);

    /** Beyond so many standard deviations a reading is far off, not just off. */
    private static final double FAR = 6;

    private static final double PER_HOUR = 60;

    private final SentencePrinter printer;
    private final ReadingsWriter writer;

    /** Words about one circuit. */
    public MatchWords(Circuit circuit) {
        this.printer = new SentencePrinter(circuit);
        this.writer = new ReadingsWriter(circuit);
    }

    /** {@code BR201 leg 1 is shorted and C1 is dried out, to about 30 % left}; of nothing, that it is healthy or that these readings do not show it. */
    public String sentence(Supposition supposition) {
        if (supposition.isNothing()) {
            return WORDS.say("match.healthy");
        }
        try {
            return String.join(" and ", printer.roughly(supposition));
        } catch (UnfitSupposition unfit) {
            throw new IllegalArgumentException("a supposition about another circuit", unfit);
        }
    }

    /** {@code Change BR201 and F201}; of nothing, that it is healthy or that these readings do not show it. */
    public String repair(Repair repair) {
        return repair.isNothing() ? WORDS.say("match.healthy") : WORDS.say("match.change", repair.words());
    }

    /** {@code BR201 and F201}; in a list of several. */
    public String parts(Repair repair) {
        return repair.isNothing() ? WORDS.say("match.healthy-short") : repair.words();
    }

    /** What was asked, with the bench where that does not go without saying. */
    public String asked(Ask ask) {
        return writer.words(ask);
    }

    /** {@code TP4 to gnd, d.c. volts: 17.4 V}. */
    public String read(Evidence evidence) {
        return WORDS.say("match.read", asked(evidence.ask()), writer.words(evidence));
    }

    /** How the bench is set. */
    public String bench(Ask ask) {
        return writer.bench(ask.arrangement());
    }

    /** {@code 17.4 V}, {@code OL}, {@code dark}. */
    public String shown(Evidence evidence) {
        return writer.words(evidence);
    }

    /** {@code TP4 to gnd, d.c. volts: 17.4 V; expected 41.2 to 46.3 V; far off}. */
    public String weighed(Weighed weighed) {
        String expected = expected(weighed);
        if (expected.isEmpty()) {
            return WORDS.say("match.unknown", read(weighed.evidence()));
        }
        String words = expected.equals(shown(weighed.evidence()))
                ? WORDS.say("match.as-expected", read(weighed.evidence()))
                : WORDS.say("match.weighed", read(weighed.evidence()), expected);
        boolean against = weighed.bits() < 0;
        if (!weighed.fits() && weighed.possibleAlone()) {
            return WORDS.say(against ? "match.apart" : "match.apart-elsewhere-more", words);
        }
        if (!weighed.fits()) {
            boolean far = Math.abs(weighed.away()) > FAR;
            return WORDS.say(against ? far ? "match.far" : "match.off" : "match.off-elsewhere-more", words);
        }
        return against ? WORDS.say("match.better-elsewhere", words) : words;
    }

    /** {@code 41.2 to 46.3 V}, or what is no figure: {@code OL}, {@code dark}. */
    public String expected(Weighed weighed) {
        if (!(weighed.evidence().ask() instanceof Ask.Metered metered)
                || metered.check().function() == MeterFunction.CONTINUITY
                || !Double.isFinite(weighed.low())
                || !Double.isFinite(weighed.high())) {
            return weighed.expected();
        }
        MeterFunction function = metered.check().function();
        double size = Math.max(Math.abs(weighed.low()), Math.abs(weighed.high()));
        // of alternating voltage and of resistance there is no less than nothing
        boolean signed = function != MeterFunction.AC_VOLTS && function != MeterFunction.OHMS;
        String low = end(signed ? weighed.low() : Math.max(0, weighed.low()), size, function);
        String high = end(weighed.high(), size, function);
        return low.equals(high) ? low : low.substring(0, low.indexOf(' ')) + " to " + high;
    }

    private static String end(double value, double size, MeterFunction function) {
        return function == MeterFunction.DIODE_TEST
                ? Figures.diodeTest(value)
                : Figures.beside(value, size, function.unit()).replace("ohm", "Ω");
    }

    /** {@code D1 or D2: 95 of 100 together. Parted by: pull F2, then gnd to TP4, diode test}. */
    public String lookAlike(LookAlike group) {
        String names = group.repairs().stream().map(this::parts).collect(Collectors.joining(" or "));
        String together = WORDS.say("match.together", names, said(group.share()));
        return group.partedBy().isEmpty()
                ? WORDS.say("match.not-parted", together)
                : WORDS.say("match.parted", together, steps(group.partedBy().get(0)));
    }

    /** {@code take F201 out, then gnd to TP4, diode test}. */
    public String steps(Advice advice) {
        String deeds = String.join(", ", advice.deeds());
        // the deeds say how the bench is set
        String ask = advice.ask().words();
        return deeds.isEmpty() ? asked(advice.ask()) : WORDS.say("match.then", deeds, ask);
    }

    /** {@code about 2 minutes}, {@code under a minute}. */
    public static String minutes(double minutes) {
        long whole = Math.round(minutes);
        if (whole >= PER_HOUR) {
            double hours = Math.round(2 * minutes / PER_HOUR) / 2.0;
            return hours > 1 ? WORDS.say("match.hours", Figures.plain(hours)) : WORDS.say("match.hour");
        }
        return whole < 1
                ? WORDS.say("match.moment")
                : whole == 1 ? WORDS.say("match.minute") : WORDS.say("match.minutes", whole);
    }

    /** {@code 0.37 to 0.39 V (60 of 100): BR201, then 95 of 100}. */
    public String meaning(Advice.Meaning meaning) {
        return WORDS.say(
                "match.meaning",
                meaning.somethingElse() ? somethingElse() : parts(meaning.repair()),
                said(meaning.share()));
    }

    /** A share as people say it. Sums of many shares may miss 0 and 1 by a last digit. */
    public static String said(double ratio) {
        return Shares.said(Math.max(0, Math.min(1, ratio)));
    }

    /** What is in no list. */
    public static String somethingElse() {
        return WORDS.say("match.else-short");
    }

    /** What to beware of, whatever was found; each a paragraph. */
    public static List<String> cautions() {
        return List.of(WORDS.say("caution.on"), WORDS.say("caution.off"), WORDS.say("caution.estimates"));
    }
}
