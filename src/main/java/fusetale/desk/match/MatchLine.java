package fusetale.desk.match;

import fusetale.circuit.Circuit;
import fusetale.desk.consequence.Consequence;
import fusetale.desk.state.Found;
import fusetale.explore.Words;
import fusetale.match.Advice;
import fusetale.match.Ask;
import fusetale.match.Candidate;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.match.Repair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What stands in the line under the readings: the danger first, then what explains them, then how good that is. */
final class MatchLine {
    private static final Words WORDS = Words.of(MatchLine.class);
    private static final double SURE = 0.5;
    /** Letters a line has room for beside the danger. */
    private static final int ROOM = 95;

    private MatchLine() {}

    /** What to say of what the model shows. */
    static Consequence of(MatchModel model) {
        List<String> said = new ArrayList<>();
        Optional<Standing> standing = model.standingProperty().get();
        MatchModel.Work work = model.workProperty().get();
        if (standing.isEmpty()) {
            said.add(WORDS.say(work.stopped() ? "stopped.early" : "looking"));
            return new Consequence(false, said, true);
        }
        Circuit board = standing.get().board();
        Ranking ranking = standing.get().ranking();
        boolean old = !model.fresh();
        said.addAll(ranking.danger());
        if (old && work.stopped()) {
            said.add(WORDS.say("stopped.old"));
        }
        if (standing.get().findings().size() == 0) {
            said.add(start(model, board));
        } else {
            // who leads in the list matters less then
            if (ranking.somethingElse() > SURE) {
                said.add(WORDS.say("likely-not-in-the-list"));
            }
            if (!model.newsProperty().get().isEmpty()) {
                said.add(model.newsProperty().get());
            }
            explain(board, standing.get(), model.found(), said);
        }
        NextReadings next = standing.get().next();
        if (next != null) {
            verdict(next, standing.get(), said);
        }
        Ranking.HowFar howFar = ranking.howFar();
        if (!howFar.complete()) {
            said.add(WORDS.say(
                    work.stopped() ? "first-look.stopped" : "first-look",
                    MatchModel.grouped(howFar.boards()),
                    MatchModel.grouped(howFar.ofBoards())));
        }
        return new Consequence(!ranking.danger().isEmpty(), joined(said), old);
    }

    /** The first sentences as one, as far as a line has room. */
    private static List<String> joined(List<String> said) {
        List<String> all = new ArrayList<>(said);
        while (all.size() > 1 && all.get(0).length() + all.get(1).length() < ROOM) {
            all.set(0, all.get(0) + "  " + all.remove(1));
        }
        return all;
    }

    private static String start(MatchModel model, Circuit board) {
        return model.adviceProperty()
                .get()
                .map(Advice::ask)
                .map(a -> WORDS.say("start.with", AdviceWords.small(AdviceWords.title(board, a))))
                .orElseGet(() -> WORDS.say("start"));
    }

    private static void explain(Circuit board, Standing standing, List<Found> found, List<String> said) {
        Ranking ranking = standing.ranking();
        Optional<Candidate> leader = ranking.candidates().stream().findFirst();
        List<Found> told = found.stream().filter(f -> f.told().isPresent()).toList();
        for (Ranking.Suspect suspect : ranking.suspects()) {
            if (suspect.share() > SURE && suspect.index() < told.size()) {
                Found doubted = told.get(suspect.index());
                boolean seen = doubted.told()
                        .filter(e -> e.ask() instanceof Ask.Noticed)
                        .isPresent();
                said.add(WORDS.say(
                        (seen ? "seen." : "read.") + (suspect.repeated() ? "repeated" : "suspect"),
                        FoundWords.piece(doubted)));
            }
        }
        if (leader.isEmpty()) {
            said.add(WORDS.say("none"));
            return;
        }
        if (ranking.notInTheList() && ranking.somethingElse() <= SURE) {
            said.add(WORDS.say("not-in-the-list"));
        }
        int all = leader.get().evidence().size();
        int fits = leader.get().fits();
        String name = CandidateWords.of(board, leader.get());
        if (leader.get().repair().isNothing()) {
            said.add(WORDS.say(fits == all ? "healthy" : "healthy.some", fits, all));
        } else if (fits == all) {
            said.add(WORDS.say(all == 1 ? "explains.one" : "explains.all", name, all));
        } else {
            said.add(WORDS.say("explains.some", name, fits, all));
        }
    }

    private static void verdict(NextReadings next, Standing standing, List<String> said) {
        Repair repair = standing.ranking().candidates().stream()
                .findFirst()
                .map(Candidate::repair)
                .orElse(Repair.NOTHING);
        String change = repair.words();
        switch (next.verdict()) {
            case SETTLED ->
                said.add(
                        change.isEmpty()
                                ? WORDS.say("settled.nothing")
                                : WORDS.say(standing.done(repair) ? "settled.done" : "settled", change));
            case NO_MORE_TO_LEARN -> said.add(WORDS.say("no-more"));
            case REPEAT -> said.add(WORDS.say("repeat"));
            case GO_ON -> {
                // the tag says what to measure
            }
        }
        if (!next.replace().isEmpty()) {
            said.add(next.replace());
        }
    }
}
