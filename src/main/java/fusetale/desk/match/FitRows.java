package fusetale.desk.match;

import fusetale.bench.Arrangement;
import fusetale.circuit.Circuit;
import fusetale.desk.state.Found;
import fusetale.desk.state.FoundReader;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import fusetale.match.Ask;
import fusetale.match.Candidate;
import fusetale.match.LookAlike;
import fusetale.match.Ranking;
import fusetale.match.Repair;
import fusetale.match.Shown;
import fusetale.match.Weighed;
import fusetale.report.Pairs;
import fusetale.sentence.Measured;
import fusetale.sentence.Sentence;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The fit grid as text and figures: readings across, candidates down.
 *
 * @param columns one a reading, in the order read
 * @param fresh which parts were replaced after the last of them: {@code new: R2}; empty for none
 * @param rows likeliest first; look-alikes are one
 * @param left how many more there are, each less likely
 * @param somethingElse share of something not in the list, in words
 * @param notInTheList whether to tell of it
 * @param old whether it answers other readings than there are now
 */
record FitRows(
        List<FitColumn> columns,
        String fresh,
        List<FitRow> rows,
        int left,
        String somethingElse,
        boolean notInTheList,
        boolean old) {
    private static final Words WORDS = Words.of(FitRows.class);
    private static final int MOST = 12;
    /** Candidates whose figures an axis is made for. */
    private static final int SCALED = 5;
    /** Where a sight stands that was seen, and where another that was expected. */
    private static final double SEEN_AT = 0.12;

    private static final double OTHER_AT = 0.5;

    /** Nothing was weighed yet. */
    static final FitRows NONE = new FitRows(List.of(), "", List.of(), 0, "", false, false);

    FitRows {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** The grid of an answer, and the line of each of its readings. */
    static FitRows of(Circuit board, FoundReader reader, List<Found> found, Ranking ranking, boolean old) {
        List<Candidate> first = ranking.candidates().stream().limit(MOST).toList();
        List<Integer> weighed = first.stream()
                .findFirst()
                .map(c -> c.evidence().stream().map(Weighed::index).toList())
                .orElse(List.of());
        Walk walk = new Walk(found);
        List<FitColumn> columns = new ArrayList<>();
        for (int k = 0; k < weighed.size(); k++) {
            int column = k;
            List<Weighed> shows = first.stream()
                    .filter(c -> column < c.evidence().size())
                    .map(c -> c.evidence().get(column))
                    .toList();
            columns.add(column(board, reader, walk.to(weighed.get(k)), shows, ranking));
        }
        List<FitRow> rows = new ArrayList<>();
        Set<Repair> done = new HashSet<>();
        for (Candidate candidate : first) {
            Optional<LookAlike> group = ranking.lookAlikes().stream()
                    .filter(g -> g.repairs().contains(candidate.repair()))
                    .findFirst();
            if (done.add(candidate.repair())) {
                group.ifPresent(g -> done.addAll(g.repairs()));
                rows.add(row(board, candidate, group, ranking, columns));
            }
        }
        return new FitRows(
                columns,
                walk.rest(),
                rows,
                ranking.candidates().size() - first.size(),
                CandidateWords.share(ranking.somethingElse()),
                ranking.notInTheList(),
                old);
    }

    /** The same, marked as an answer to what was found before. */
    FitRows asOld() {
        return new FitRows(columns, fresh, rows, left, somethingElse, notInTheList, true);
    }

    /** A thing found, which of all readings and sights it is, and what was replaced before it. */
    private record At(Found.Noted found, int index, String fresh) {}

    /** Goes through what was found in step with what was weighed, and tells what was replaced on the way. */
    private static final class Walk {
        private final List<Found> found;
        private int told;

        Walk(List<Found> found) {
            this.found = found;
        }

        /** Where the one at a place among all readings was found; of a reading that was repeated that of the newest. */
        At to(int index) {
            int at = 0;
            for (int readings = 0; readings <= index; at++) {
                readings += found.get(at).told().isPresent() ? 1 : 0;
            }
            return new At((Found.Noted) found.get(at - 1), index, replaced(at));
        }

        /** What was replaced after all that was weighed. */
        String rest() {
            return replaced(found.size());
        }

        /** What was replaced before a place and not told yet. */
        private String replaced(int end) {
            List<String> fresh = new ArrayList<>();
            for (; told < end; told++) {
                if (found.get(told) instanceof Found.Replaced replaced) {
                    fresh.add(FoundWords.parts(replaced));
                }
            }
            return fresh.isEmpty() ? "" : FoundWords.fresh(fresh);
        }
    }

    private static FitColumn column(Circuit board, FoundReader reader, At at, List<Weighed> weighed, Ranking ranking) {
        Found.Noted found = at.found();
        Ask ask = found.evidence().ask();
        Optional<Ranking.Suspect> suspect = ranking.suspects().stream()
                .filter(s -> s.index() == at.index() && s.share() > 0.5)
                .findFirst();
        boolean repeated = suspect.map(Ranking.Suspect::repeated).orElse(false);
        boolean again = suspect.isPresent() && !repeated;
        boolean nothing = weighed.size() > 1 && weighed.stream().allMatch(Weighed::fits);
        String bench = plain(board, ask.arrangement()) ? "" : reader.benchWords(ask.arrangement());
        Measured measured = found.measured();
        if (measured == null || !(ask instanceof Ask.Metered metered)) {
            String part = ask instanceof Ask.Noticed n ? n.part() : "";
            String aspect = ask instanceof Ask.Noticed n ? n.aspect().words() : "";
            String shown = found.text().substring(Math.min(found.text().length(), part.length() + 1));
            return new FitColumn(part, aspect, bench, shown, SEEN_AT, null, again, repeated, nothing, at.fresh());
        }
        boolean over = measured.overRange()
                || weighed.stream().anyMatch(w -> Double.isNaN(w.middle()) || Double.isInfinite(w.middle()));
        List<Double> values = new ArrayList<>();
        // the likely ones are told apart; one far away stands at the end
        weighed.stream().limit(SCALED).forEach(w -> values.addAll(List.of(w.low(), w.middle(), w.high())));
        values.add(measured.value());
        FitScale scale = FitScale.over(metered.check(), values, over);
        return new FitColumn(
                Pairs.name(board, metered.check()),
                metered.check().function().words(),
                bench,
                FoundWords.figure(measured),
                scale.share(measured.overRange() ? Double.POSITIVE_INFINITY : measured.value()),
                scale,
                again,
                repeated,
                nothing,
                at.fresh());
    }

    private static boolean plain(Circuit board, Arrangement bench) {
        Arrangement named = Sentence.named(bench);
        return named.equals(Sentence.named(Arrangement.powered(board)))
                || named.equals(Sentence.named(Arrangement.unpowered()));
    }

    private static FitRow row(
            Circuit board, Candidate candidate, Optional<LookAlike> group, Ranking ranking, List<FitColumn> columns) {
        List<String> notes = new ArrayList<>();
        String name = CandidateWords.of(board, candidate);
        double share = candidate.share();
        if (group.isPresent()) {
            share = group.get().share();
            List<String> others = group.get().repairs().stream()
                    .filter(r -> !r.equals(candidate.repair()))
                    .map(r -> name(board, r, ranking))
                    .toList();
            name = WORDS.say("look-alike", name, String.join(WORDS.say("or"), others));
            group.get().partedBy().stream()
                    .findFirst()
                    .map(AdviceWords::inOneLine)
                    .map(step -> WORDS.say("parted-by", step))
                    .ifPresent(notes::add);
        } else if (candidate.suppositions().size() > 1 && !candidate.repair().isNothing()) {
            notes.add(
                    candidate.suppositions().size() == 2
                            ? WORDS.say("ways.one")
                            : WORDS.say("ways", candidate.suppositions().size() - 1));
        }
        if (!candidate.consequences().isEmpty()) {
            notes.add(WORDS.say("victims", String.join(", ", candidate.consequences())));
        }
        List<FitCell> cells = new ArrayList<>();
        for (int k = 0; k < Math.min(columns.size(), candidate.evidence().size()); k++) {
            cells.add(cell(columns.get(k), candidate.evidence().get(k)));
        }
        String fits = WORDS.say("fits", candidate.fits(), candidate.evidence().size());
        Supposition supposition = candidate.suppositions().stream()
                .findFirst()
                .map(Candidate.Likely::supposition)
                .orElse(Supposition.NOTHING);
        String shown = CandidateWords.share(share);
        String spoken = spoken(name, shown, fits, notes, columns, cells);
        return new FitRow(name, shown, fits, notes, cells, supposition, spoken);
    }

    private static String name(Circuit board, Repair repair, Ranking ranking) {
        return ranking.candidates().stream()
                .filter(c -> c.repair().equals(repair))
                .findFirst()
                .map(c -> CandidateWords.of(board, c))
                .orElseGet(repair::words);
    }

    private static FitCell cell(FitColumn column, Weighed weighed) {
        FitScale scale = column.scale();
        String shows = FoundWords.bare(weighed.expected().replace("ohm", "Ω"), column.shown());
        if (scale == null || weighed.evidence().shown() instanceof Shown.Seen) {
            double at = weighed.fits() ? SEEN_AT : OTHER_AT;
            return new FitCell(weighed.expected(), at, at, at, weighed.fits());
        }
        double middle = scale.share(Double.isNaN(weighed.middle()) ? Double.POSITIVE_INFINITY : weighed.middle());
        double low = Double.isNaN(weighed.low()) ? middle : Math.min(middle, scale.share(weighed.low()));
        double high = Double.isNaN(weighed.high()) ? middle : Math.max(middle, scale.share(weighed.high()));
        return new FitCell(shows, low, middle, high, weighed.fits());
    }

    private static String spoken(
            String name, String share, String fits, List<String> notes, List<FitColumn> columns, List<FitCell> cells) {
        List<String> said = new ArrayList<>();
        said.add(WORDS.say("spoken", name, share, fits));
        said.addAll(notes);
        for (int k = 0; k < cells.size(); k++) {
            FitColumn column = columns.get(k);
            FitCell cell = cells.get(k);
            if (!column.fresh().isEmpty()) {
                said.add(WORDS.say("spoken.fresh", column.fresh()));
            }
            said.add(WORDS.say(
                    cell.fits() ? "spoken.fits" : "spoken.not",
                    column.place(),
                    column.setting(),
                    cell.shows(),
                    column.shown()));
        }
        return String.join(" ", said);
    }
}
