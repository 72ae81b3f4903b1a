package fusetale.report;

import fusetale.explore.Words;
import fusetale.match.Advice;
import fusetale.match.Ask;
import fusetale.match.Candidate;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.match.Weighed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/** What matching found, as lines of text: the danger first, what fits with what speaks for and against it, what to do next. */
public final class MatchTables {
    private static final Words WORDS = Words.of(MatchTables.class);

    /** Repairs told in full; the others are in the JSON. */
    private static final int MOST_CANDIDATES = 5;

    /** Readings told for, and against. */
    private static final int MOST_READINGS = 3;

    /** Advice told in full. */
    private static final int MOST_ADVICE = 3;

    /** A second supposition for the same repair is told from this part of it on. */
    private static final double WORTH_TELLING = 0.1;

    private static final String GAP = "  ";

    private final Matched matched;
    private final MatchWords words;
    private final Emphasis emphasis;
    private final List<String> lines = new ArrayList<>();

    private MatchTables(Matched matched, Emphasis emphasis) {
        this.matched = matched;
        this.words = new MatchWords(matched.circuit());
        this.emphasis = emphasis;
    }

    /** The lines. */
    public static List<String> of(Matched matched, Emphasis emphasis) {
        MatchTables all = new MatchTables(matched, emphasis);
        all.danger();
        all.head();
        all.whatFits();
        all.lookAlikes();
        all.suspects();
        NextReadings next = matched.next();
        if (next != null) {
            all.next(next);
        }
        all.heading(WORDS.say("table.cautions"));
        MatchWords.cautions().forEach(c -> all.lines.addAll(Tables.wrapped(c)));
        return all.lines;
    }

    private void heading(String text) {
        lines.add("");
        lines.add(emphasis.strong(text));
    }

    private void hanging(String before, String text) {
        lines.addAll(Paragraph.hanging(before, text, TextTable.WIDTH));
    }

    /** Why it must not be powered up, lines of at most 100 columns; none where it may be. */
    public static List<String> dangers(Ranking ranking) {
        return ranking.danger().stream()
                .flatMap(why -> Paragraph.hanging(WORDS.say("danger") + " ", why, TextTable.WIDTH).stream())
                .toList();
    }

    private void danger() {
        dangers(matched.ranking()).forEach(line -> lines.add(emphasis.strong(line)));
        if (!matched.ranking().danger().isEmpty()) {
            lines.add("");
        }
    }

    private void head() {
        int size = matched.findings().size();
        lines.addAll(Tables.wrapped(WORDS.say(
                "match.head",
                matched.circuit().name(),
                size == 0
                        ? WORDS.say("match.nothing-read")
                        : size == 1 ? WORDS.say("match.one") : WORDS.say("match.many", size),
                matched.meter().words())));
        Ranking.HowFar far = matched.ranking().howFar();
        if (!far.complete()) {
            lines.addAll(Tables.wrapped(WORDS.say("match.first-look", grouped(far.boards()), grouped(far.ofBoards()))));
        }
    }

    private static String grouped(int count) {
        return String.format(Locale.ROOT, "%,d", count);
    }

    private void whatFits() {
        heading(WORDS.say("match.fits"));
        Ranking ranking = matched.ranking();
        List<Candidate> told =
                ranking.candidates().stream().limit(MOST_CANDIDATES).toList();
        int width = told.stream()
                .map(c -> MatchWords.said(c.share()).length())
                .max(Comparator.naturalOrder())
                .orElse(0);
        width = Math.max(width, MatchWords.said(ranking.somethingElse()).length());
        boolean elseFirst = matched.noneFits();
        if (elseFirst) {
            somethingElse(width);
        }
        for (Candidate candidate : told) {
            candidate(candidate, width);
        }
        if (!elseFirst) {
            somethingElse(width);
        }
        List<Candidate> untold =
                ranking.candidates().subList(told.size(), ranking.candidates().size());
        if (!untold.isEmpty()) {
            double together = untold.stream().mapToDouble(Candidate::share).sum();
            String said = MatchWords.said(together);
            lines.addAll(Tables.wrapped(
                    untold.size() == 1
                            ? WORDS.say("match.one-more", said)
                            : WORDS.say("match.more", untold.size(), said)));
        }
        Ranking.HowFar far = ranking.howFar();
        lines.addAll(Tables.wrapped(
                far.suppositions() < far.of()
                        ? WORDS.say("match.condition-so-far", grouped(far.of()), grouped(far.suppositions()))
                        : WORDS.say("match.condition", grouped(far.of()))));
    }

    private static String padded(String share, int width) {
        return " ".repeat(Math.max(0, width - share.length())) + share + GAP;
    }

    private void somethingElse(int width) {
        Ranking ranking = matched.ranking();
        hanging(
                padded(MatchWords.said(ranking.somethingElse()), width),
                WORDS.say(ranking.notInTheList() ? "match.else-likely" : "match.else"));
    }

    private void candidate(Candidate candidate, int width) {
        String indent = " ".repeat(width + GAP.length());
        int read = candidate.evidence().size();
        String repair = words.repair(candidate.repair());
        List<String> head = Paragraph.hanging(
                padded(MatchWords.said(candidate.share()), width),
                read == 0 ? repair + "." : WORDS.say("match.candidate", repair, candidate.fits(), read),
                TextTable.WIDTH);
        head.forEach(l -> lines.add(emphasis.strong(l)));
        suppositions(candidate, indent);
        strongest(candidate, indent, "match.for", w -> w.bits() > 0);
        strongest(candidate, indent, "match.against", w -> w.bits() < 0);
        if (!candidate.consequences().isEmpty()) {
            hanging(indent, WORDS.say("match.victims", String.join(", ", candidate.consequences())));
        }
    }

    private void suppositions(Candidate candidate, String indent) {
        String start = "";
        for (Candidate.Likely likely : candidate.suppositions()) {
            boolean first = start.isEmpty();
            if (likely.supposition().isNothing() || (!first && likely.share() < WORTH_TELLING * candidate.share())) {
                continue;
            }
            start = first ? "" : WORDS.say("match.or") + " ";
            hanging(indent + start, words.sentence(likely.supposition()) + ".");
            start = first ? WORDS.say("match.or") + " " : start;
        }
    }

    /** The three readings that tell most, for or against. */
    private void strongest(Candidate candidate, String indent, String key, Predicate<Weighed> speaking) {
        String label = WORDS.say(key);
        int width = Math.max(
                WORDS.say("match.for").length(), WORDS.say("match.against").length());
        String start = indent + label + " ".repeat(width - label.length()) + GAP;
        List<Weighed> strongest = candidate.evidence().stream()
                .filter(speaking)
                .sorted(Comparator.comparingDouble((Weighed w) -> -Math.abs(w.bits())))
                .limit(MOST_READINGS)
                .toList();
        for (Weighed weighed : strongest) {
            hanging(start, words.weighed(weighed));
            start = " ".repeat(start.length());
        }
    }

    private void lookAlikes() {
        if (matched.ranking().lookAlikes().isEmpty()) {
            return;
        }
        heading(WORDS.say("match.look-alikes"));
        matched.ranking().lookAlikes().forEach(g -> lines.addAll(Tables.wrapped(words.lookAlike(g))));
    }

    private void suspects() {
        if (matched.ranking().suspects().isEmpty()) {
            return;
        }
        heading(WORDS.say("match.again"));
        for (Ranking.Suspect suspect : matched.ranking().suspects()) {
            String read = words.read(matched.evidence(suspect.index()));
            String where = suspect.index() < matched.lines().size()
                    ? WORDS.say("match.line", read, matched.lines().get(suspect.index()))
                    : read;
            boolean seen = matched.evidence(suspect.index()).ask() instanceof Ask.Noticed;
            lines.addAll(Tables.wrapped(
                    suspect.repeated()
                            ? WORDS.say("match.repeated", where)
                            : WORDS.say(
                                    seen ? "match.sight" : "match.suspect", where, MatchWords.said(suspect.share()))));
        }
    }

    private void next(NextReadings next) {
        heading(WORDS.say("match.next"));
        lines.addAll(Tables.wrapped(WORDS.say("match.verdict." + verdict(next.verdict()))));
        int number = 1;
        for (Advice advice : next.advice().stream().limit(MOST_ADVICE).toList()) {
            advice(number + ". ", advice);
            number++;
        }
        if (!next.replace().isEmpty()) {
            hanging(WORDS.say("match.replace") + " ", next.replace());
        }
        Advice confirm = next.confirm();
        if (confirm != null) {
            lines.addAll(Tables.wrapped(WORDS.say("match.confirm")));
            advice("   ", confirm);
        }
    }

    /** {@code GO_ON} is {@code go-on}. */
    public static String verdict(NextReadings.Verdict verdict) {
        return verdict.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void advice(String start, Advice advice) {
        String indent = " ".repeat(start.length());
        String before = start;
        for (String deed : advice.deeds()) {
            hanging(before, Character.toUpperCase(deed.charAt(0)) + deed.substring(1) + ".");
            before = indent;
        }
        boolean done = !advice.deeds().isEmpty();
        Ask ask = advice.ask();
        String minutes = MatchWords.minutes(advice.minutes());
        String where = done ? ask.words() : words.asked(ask);
        hanging(
                before,
                ask instanceof Ask.Metered metered
                        ? WORDS.say(
                                "match.measure",
                                where,
                                metered.check().from(),
                                metered.check().to(),
                                minutes)
                        : WORDS.say("match.look", where, minutes));
        meanings(advice, indent);
        advice.cautions().forEach(c -> hanging(indent + WORDS.say("match.caution") + " ", c));
    }

    private void meanings(Advice advice, String indent) {
        int width = advice.meanings().stream()
                .mapToInt(m -> Paragraph.length(m.shows()))
                .max()
                .orElse(0);
        for (Advice.Meaning meaning : advice.meanings()) {
            String chance = MatchWords.said(meaning.chance());
            String start = indent
                    + GAP
                    + meaning.shows()
                    + " ".repeat(width - Paragraph.length(meaning.shows()))
                    + GAP
                    + " ".repeat(Math.max(0, 9 - chance.length()))
                    + chance
                    + GAP;
            hanging(start, words.meaning(meaning));
        }
    }
}
