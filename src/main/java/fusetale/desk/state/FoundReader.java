package fusetale.desk.state;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import fusetale.match.Ask;
import fusetale.match.Evidence;
import fusetale.match.Findings;
import fusetale.match.Shown;
import fusetale.sentence.Measured;
import fusetale.sentence.MeasuredParser;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import fusetale.sentence.Setting;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * Reads and writes what was found: a reading as {@link MeasuredParser} has it, or what was seen ({@code F201 blown}), each
 * with the bench in brackets behind it where that is not the plain one ({@code TP2 0.52 V diode test (Power off, F201
 * pulled)}), and last a remark in quotes; and which parts are new from here on ({@code replaced F201}). Immutable.
 */
public final class FoundReader {
    private static final Words WORDS = Words.of(FoundReader.class);
    private static final Pattern BENCH = Pattern.compile("(.*?)\\s*\\(([^()]*)\\)\\s*");
    private static final Pattern REMARKED = Pattern.compile("(.*?)\\s*\"([^\"]*)\"\\s*");
    private static final char QUOTE = '"';
    private static final String NOTHING_SUPPOSED = "Suppose nothing. ";

    private final Circuit board;
    private final Sentences sentences;
    private final MeasuredParser readings;
    private final Sights sights;
    private final ReplacedLine replaced;

    /** A reader for one board, with its grammar. */
    public FoundReader(Sentences sentences) {
        this.board = sentences.circuit();
        this.sentences = sentences;
        this.readings = new MeasuredParser(board);
        this.sights = new Sights(board);
        this.replaced = new ReplacedLine(board);
    }

    /** The board. */
    public Circuit board() {
        return board;
    }

    /** What can be noticed of the board's parts. */
    public Sights sights() {
        return sights;
    }

    /**
     * One line.
     *
     * @param asked what is being asked, whose points, function and bench are taken where none are typed; null for nothing
     * @param bench how the bench is set otherwise
     * @throws SentenceException where it is not understood, with what to change
     */
    public Found read(String typed, @Nullable Ask asked, Arrangement bench) throws SentenceException {
        // first: a list of new parts takes no remark, and says so rather than dropping it
        Optional<Found> parts = replaced.read(typed);
        if (parts.isPresent()) {
            return parts.get();
        }
        Matcher remarked = REMARKED.matcher(typed);
        if (remarked.matches()) {
            Found found = read(remarked.group(1), asked, bench);
            return found instanceof Found.Noted noted ? noted.remarked(remarked.group(2)) : found;
        }
        Matcher bracketed = BENCH.matcher(typed);
        if (bracketed.matches()) {
            return read(bracketed.group(1), null, bench(bracketed.group(2)), true);
        }
        return read(typed, asked, bench, false);
    }

    private Found read(String typed, @Nullable Ask asked, Arrangement bench, boolean benchSaid)
            throws SentenceException {
        Optional<Found.Noted> seen = sights.read(typed, asked instanceof Ask.Noticed n ? n : null, bench, benchSaid);
        if (seen.isPresent()) {
            return of(seen.get().evidence());
        }
        Ask.Metered metered = asked instanceof Ask.Metered m ? m : null;
        Check focused = metered == null ? null : metered.check();
        if (asked == null && startsWithFigure(typed)) {
            throw SentenceException.near(typed.strip(), WORDS.say("nowhere"), List.of());
        }
        Measured measured =
                readings.parse(typed, focused, focused == null ? MeterFunction.DC_VOLTS : focused.function());
        boolean asAsked = metered != null && samePlace(measured.check(), metered.check());
        Arrangement where = asAsked && metered != null
                ? plain(metered.arrangement())
                : benchSaid ? bench : fit(bench, measured.check().function());
        return of(measured, where);
    }

    private static boolean startsWithFigure(String typed) {
        String bare = typed.strip();
        return !bare.isEmpty() && (Character.isDigit(bare.charAt(0)) || "+-.,".indexOf(bare.charAt(0)) >= 0);
    }

    /** Ohms and continuity can be read where the diode test was asked: the bench is the same. */
    private static boolean samePlace(Check one, Check two) {
        return one.from().equals(two.from())
                && one.to().equals(two.to())
                && one.function().powered() == two.function().powered();
    }

    /** A reading that was taken on a bench. */
    public static Found of(Measured measured, Arrangement bench) {
        Shown shown = measured.overRange() ? new Shown.Over() : new Shown.Figure(measured.value());
        return new Found.Noted(
                measured.text(), new Evidence(new Ask.Metered(bench, measured.check()), shown), measured);
    }

    /** A bench on which a function of the meter can be read: what needs power has it, what must have none has none. */
    public Arrangement fit(Arrangement bench, MeterFunction function) {
        boolean on = function.powered();
        boolean chargedVolts = function.ofVolts() && !bench.charged().isEmpty();
        if (bench.powerOn() == on || chargedVolts) {
            return plain(bench);
        }
        Arrangement turned =
                bench.withPower(on).withMainsVolts(board.mains().volts().si());
        return plain(on ? turned : turned.withSeriesLamp(null));
    }

    /** The bench as everything found is kept with it: nothing said that goes without saying, and no mains where the plug is out. */
    private Arrangement plain(Arrangement bench) {
        Arrangement settled = sentences
                .settled(new Sentence(Supposition.NOTHING, bench, Setting.usual()))
                .arrangement();
        return Sentence.named(settled.powerOn() ? settled : settled.withMainsVolts(0));
    }

    /** What a file of readings says, as what was typed would stand in the line. */
    public List<Found> of(Findings findings) {
        List<Found> all = new ArrayList<>();
        for (Findings.Spell spell : findings.spells()) {
            if (!spell.replaced().isEmpty()) {
                all.add(replaced.of(spell.replaced()));
            }
            spell.evidence().forEach(e -> all.add(of(e)));
        }
        return all;
    }

    private Found of(Evidence evidence) {
        Arrangement bench = plain(evidence.ask().arrangement());
        if (evidence.ask() instanceof Ask.Noticed noticed && evidence.shown() instanceof Shown.Seen seen) {
            Found.Noted found = sights.found(new Ask.Noticed(bench, noticed.part(), noticed.aspect()), seen);
            return new Found.Noted(
                    found.text(), new Evidence(found.evidence().ask(), seen, evidence.note()), found.measured());
        }
        Check check = ((Ask.Metered) evidence.ask()).check();
        String typed = evidence.shown() instanceof Shown.Figure figure
                ? new BigDecimal(Double.toString(figure.si())).toPlainString()
                : WORDS.say("over");
        try {
            Measured measured = readings.parse(
                    check.function() == MeterFunction.CONTINUITY
                            ? WORDS.say(evidence.shown() instanceof Shown.Figure ? "beeps" : "silent")
                            : typed,
                    check,
                    check.function());
            return new Found.Noted(
                    measured.text(),
                    new Evidence(new Ask.Metered(bench, measured.check()), evidence.shown(), evidence.note()),
                    measured);
        } catch (SentenceException none) {
            throw new IllegalArgumentException("a reading on another board: " + evidence, none);
        }
    }

    /**
     * The line that reads back to a thing found, its bench in brackets behind it where that does not go without saying, and its
     * remark in quotes.
     */
    public String line(Found found) {
        String remark = found.told().map(Evidence::note).orElse("");
        // a remark is one line, and ends at the next quote
        String bare = remark.replace(QUOTE, '\'').replaceAll("\\R", " ").strip();
        return bare.isEmpty() ? unremarked(found) : unremarked(found) + " " + QUOTE + bare + QUOTE;
    }

    private String unremarked(Found found) {
        if (found.told().isEmpty()) {
            return found.text();
        }
        Arrangement bench = found.told().orElseThrow().ask().arrangement();
        try {
            Optional<Arrangement> plain = read(found.text(), null, Arrangement.powered(board))
                    .told()
                    .map(e -> e.ask().arrangement());
            if (plain.equals(Optional.of(plain(bench)))) {
                return found.text();
            }
        } catch (SentenceException notWithoutBench) {
            // then with it
        }
        return found.text() + " (" + benchWords(bench) + ")";
    }

    /** The bench in words: {@code Power off, F201 pulled}. */
    public String benchWords(Arrangement bench) {
        String said = sentences.textWithoutMeter(new Sentence(Supposition.NOTHING, bench, Setting.usual()));
        String bare = said.startsWith(NOTHING_SUPPOSED) ? said.substring(NOTHING_SUPPOSED.length()) : said;
        return bare.endsWith(".") ? bare.substring(0, bare.length() - 1) : bare;
    }

    private Arrangement bench(String words) throws SentenceException {
        return plain(sentences.parse(NOTHING_SUPPOSED + words + ".").arrangement());
    }

    /**
     * Many lines, as from a table: cells of a line are parted by tabs, semicolons or commas with a blank.
     *
     * @param problems told of each line that is not understood
     */
    public List<Found> readAll(String text, Arrangement bench, List<String> problems) {
        List<Found> all = new ArrayList<>();
        for (String line : text.split("\\R", -1)) {
            String words = line.replace('\t', ' ').replace(';', ' ').strip();
            if (words.isEmpty()) {
                continue;
            }
            try {
                all.add(read(words, null, bench));
            } catch (SentenceException unclear) {
                problems.add(WORDS.say("line", line.strip(), String.valueOf(unclear.getMessage())));
            }
        }
        return all;
    }
}
