package fusetale.desk.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.Circuit;
import fusetale.desk.state.BenchState;
import fusetale.desk.state.DeskModel;
import fusetale.desk.state.Found;
import fusetale.desk.state.Sights;
import fusetale.desk.state.Workers;
import fusetale.desk.work.Newest;
import fusetale.explore.Progress;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import fusetale.match.Advice;
import fusetale.match.Ask;
import fusetale.match.Evidence;
import fusetale.match.Findings;
import fusetale.match.LookAlike;
import fusetale.match.NextReadings;
import fusetale.match.Ranking;
import fusetale.match.Shown;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;

/**
 * What the place "What did I read?" shows and what can be done there. What was found lives in {@link DeskModel}; this asks what
 * explains it, anew after every change while the place is shown. Belongs to the window's thread; knows no scene.
 */
public final class MatchModel {
    private static final Words WORDS = Words.of(MatchModel.class);
    private static final int IN_ONE_GO = 3;

    private final DeskModel desk;
    private final Weigher.Maker maker;
    private final Newest line;
    private final Kept kept = new Kept();
    private boolean shown;
    private boolean typing;
    private @Nullable BenchState asked;
    private final List<Ask> ruledOut = new ArrayList<>();

    private final ReadOnlyObjectWrapper<Optional<Standing>> standing = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Advice>> advice = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Work> work = new ReadOnlyObjectWrapper<>(Work.RESTS);
    private final ReadOnlyObjectWrapper<String> news = new ReadOnlyObjectWrapper<>("");

    /**
     * How far the work has come.
     *
     * @param busy whether something is being worked out
     * @param done machines solved
     * @param of machines that will be; 0 where that is not known
     * @param stopped whether somebody stopped it
     */
    public record Work(boolean busy, int done, int of, boolean stopped) {
        static final Work RESTS = new Work(false, 0, 0, false);
        static final Work BEGINS = new Work(true, 0, 0, false);
        static final Work STOPPED = new Work(false, 0, 0, true);
    }

    /** What weighs the machine at hand; touched by the worker alone. */
    private final class Kept {
        private @Nullable Circuit board;
        private @Nullable Meter meter;
        private @Nullable Weigher weigher;

        Weigher of(Circuit circuit, Meter with) {
            Weigher ready = weigher;
            if (ready == null || !circuit.equals(board) || !with.equals(meter)) {
                ready = maker.of(circuit, with);
                weigher = ready;
                board = circuit;
                meter = with;
            }
            return ready;
        }
    }

    /** For what lies on a desk. */
    public MatchModel(DeskModel desk, Workers workers, Weigher.Maker maker) {
        this.desk = desk;
        this.maker = maker;
        this.line = workers.ownLine();
        desk.historyProperty().addListener(changed -> changed());
    }

    /** The last answer; empty before the first. */
    public ReadOnlyObjectProperty<Optional<Standing>> standingProperty() {
        return standing.getReadOnlyProperty();
    }

    /** What is advised now, and stays so while sharper answers still name it. */
    public ReadOnlyObjectProperty<Optional<Advice>> adviceProperty() {
        return advice.getReadOnlyProperty();
    }

    /** How far the work has come. */
    public ReadOnlyObjectProperty<Work> workProperty() {
        return work.getReadOnlyProperty();
    }

    /** What changed with the last answer, in words; empty for nothing to speak of. */
    public ReadOnlyObjectProperty<String> newsProperty() {
        return news.getReadOnlyProperty();
    }

    /** The desk. */
    public DeskModel desk() {
        return desk;
    }

    /** Everything found, in order. */
    public List<Found> found() {
        return desk.state().found();
    }

    private Findings findings() {
        return Found.findings(found());
    }

    /** Whether the last answer is one to what is found now. */
    public boolean fresh() {
        return standing.get().map(s -> s.answers(desk.board(), findings())).orElse(false);
    }

    /** The place comes into sight: from now on every change is asked about. */
    public void show() {
        shown = true;
        changed();
    }

    /** The place goes out of sight; what is being worked out goes on. */
    public void hide() {
        shown = false;
    }

    private void changed() {
        BenchState now = desk.state();
        BenchState before = asked;
        boolean same = before != null
                && before.board().equals(now.board())
                && before.found().equals(now.found())
                && before.outOfReach().equals(now.outOfReach())
                && before.sentence()
                        .setting()
                        .meter()
                        .equals(now.sentence().setting().meter());
        if (shown && !same) {
            ask();
        }
    }

    /** Asks again, as after a stop. */
    public void ask() {
        BenchState now = desk.state();
        BenchState before = asked;
        if (before == null || !before.found().equals(now.found())) {
            // what was advised is done, or no longer known to be worth it
            ruledOut.clear();
            advice.set(Optional.empty());
        }
        asked = now;
        work.set(Work.BEGINS);
        Circuit board = now.board();
        Meter meter = now.sentence().setting().meter();
        Question question = new Question(board, findings(), now.outOfReach(), List.copyOf(ruledOut));
        line.start(turn -> answer(turn, meter, question));
    }

    private record Question(Circuit board, Findings findings, Set<String> outOfReach, List<Ask> ruledOut) {}

    private void answer(Newest.Turn turn, Meter meter, Question question) {
        Weigher weigher = kept.of(question.board(), meter);
        Progress progress = progress(turn);
        try {
            Ranking whole = weigher.rank(
                    question.findings(), better -> sharper(turn, weigher, question, better), progress, turn::stopped);
            if (!turn.stopped()) {
                tell(turn, weigher, question, whole);
                weigher.keep();
                List<LookAlike> groups = weigher.lookAlikes(question.findings(), Progress.SILENT, turn::stopped);
                turn.show(() -> {
                    standing.set(standing.get().map(s -> s.with(groups)));
                    work.set(Work.RESTS);
                });
                weigher.keep();
            }
        } catch (UnfitArrangement unfit) {
            unfit(turn, unfit);
        }
    }

    private Progress progress(Newest.Turn turn) {
        return (done, of) -> turn.show(() -> work.set(new Work(true, done, of, false)));
    }

    private void sharper(Newest.Turn turn, Weigher weigher, Question question, Ranking better) {
        try {
            tell(turn, weigher, question, better);
        } catch (UnfitArrangement unfit) {
            unfit(turn, unfit);
        }
    }

    /** The board was drawn anew and no longer has what a reading was taken on. */
    private void unfit(Newest.Turn turn, UnfitArrangement unfit) {
        turn.show(() -> {
            news.set(String.valueOf(unfit.getMessage()));
            work.set(Work.STOPPED);
        });
    }

    private void tell(Newest.Turn turn, Weigher weigher, Question question, Ranking ranking) throws UnfitArrangement {
        if (turn.stopped()) {
            return;
        }
        turn.show(() -> ranked(new Standing(question.board(), question.findings(), ranking, null)));
        NextReadings next = weigher.next(
                question.findings(), question.outOfReach(), question.ruledOut(), progress(turn), turn::stopped);
        turn.show(() -> follow(next));
    }

    private void ranked(Standing now) {
        Optional<Standing> before = standing.get();
        news.set(before.map(b -> MatchNews.of(desk.board(), b.ranking(), now.ranking()))
                .orElse(""));
        boolean anew = before.map(b -> !b.answers(now.board(), now.findings())).orElse(true);
        if (anew) {
            advice.set(Optional.empty());
        }
        standing.set(Optional.of(
                anew
                        ? now
                        : new Standing(
                                now.board(),
                                now.findings(),
                                now.ranking(),
                                before.orElseThrow().next())));
    }

    /** Somebody is typing, or has stopped: until then the figure belongs to what the tag asks for now. */
    public void typing(boolean on) {
        typing = on;
        if (!on) {
            standing.get().flatMap(s -> Optional.ofNullable(s.next())).ifPresent(this::follow);
        }
    }

    private void follow(NextReadings next) {
        standing.set(standing.get().map(s -> s.with(next)));
        // whoever holds the leads on a point must not find another one on the tag
        Optional<Advice> still = advice.get()
                .flatMap(a -> next.advice().stream()
                        .filter(b -> b.ask().equals(a.ask()))
                        .findFirst());
        if (still.isPresent() || !typing || advice.get().isEmpty()) {
            advice.set(still.or(() -> next.advice().stream().findFirst()));
        }
    }

    /** Stops the work; the last answer stays. */
    public void stop() {
        if (work.get().busy()) {
            line.stop();
            work.set(Work.STOPPED);
        }
    }

    /** What a typed line would be taken for; what is advised goes without saying. */
    public Found understood(String typed) throws SentenceException {
        Ask ask = advice.get().map(Advice::ask).orElse(null);
        Arrangement bench = desk.state().sentence().arrangement();
        Found found = desk.foundReader().read(typed, ask, bench);
        // what the tag says to read in one go is read on the bench that it says to set
        Optional<Ask> besides = found.told().map(Evidence::ask).flatMap(this::besides);
        return besides.isPresent() ? desk.foundReader().read(typed, besides.get(), bench) : found;
    }

    /** The same thing among what the tag says to read in one go; empty where it is none of it. */
    private Optional<Ask> besides(Ask ask) {
        return inOneGo().stream()
                .map(Advice::ask)
                .filter(a -> a.words().equals(ask.words()))
                .findFirst();
    }

    /** Takes a typed line down. */
    public void take(String typed) throws SentenceException {
        desk.take(understood(typed));
    }

    /** What a typed line would be taken for in place of one thing found. */
    public Found understoodAs(int index, String typed) throws SentenceException {
        Optional<Ask> ask = found().get(index).told().map(Evidence::ask);
        Arrangement bench = ask.map(Ask::arrangement)
                .orElseGet(() -> desk.state().sentence().arrangement());
        return desk.foundReader().read(typed, ask.orElse(null), bench);
    }

    /** Says one thing found otherwise. */
    public void change(int index, String typed) throws SentenceException {
        Found other = understoodAs(index, typed);
        List<Found> all = new ArrayList<>(found());
        all.set(index, other);
        desk.find(all);
    }

    /** Takes one thing found away. */
    public void drop(int index) {
        List<Found> all = new ArrayList<>(found());
        all.remove(index);
        desk.find(all);
    }

    /** Takes many lines down at once, as from a spreadsheet; what is not understood is told. */
    public List<String> paste(String text) {
        List<String> problems = new ArrayList<>();
        List<Found> all = new ArrayList<>(found());
        all.addAll(desk.foundReader().readAll(text, desk.state().sentence().arrangement(), problems));
        desk.find(all);
        return problems;
    }

    /** What may be noticed of this board's parts. */
    public Sights sights() {
        return desk.foundReader().sights();
    }

    /** What was last seen where something was asked, on the machine as it is now. */
    public Optional<Shown.Seen> seen(Ask.Noticed ask) {
        return Found.now(found()).stream()
                .filter(f -> asked(f, ask))
                .flatMap(f -> f.told().stream())
                .map(Evidence::shown)
                .filter(Shown.Seen.class::isInstance)
                .map(Shown.Seen.class::cast)
                .reduce((one, two) -> two);
    }

    private static boolean asked(Found found, Ask ask) {
        return found.told().map(Evidence::ask).equals(Optional.of(ask));
    }

    /** Says of everything that nothing was said of yet, and of which it is plain, that it does as it should. */
    public void seeSound(List<Ask.Noticed> asks) {
        List<Found> all = new ArrayList<>(found());
        for (Ask.Noticed ask : asks) {
            if (seen(ask).isEmpty()) {
                sights().sound(ask).ifPresent(s -> all.add(sights().found(ask, s)));
            }
        }
        desk.find(all);
    }

    /** Says what was seen; empty for "don't know", which takes it away. */
    public void see(Ask.Noticed ask, Optional<Shown.Seen> seen) {
        List<Found> all = new ArrayList<>(found());
        int at = -1;
        for (int k = all.size() - Found.now(all).size(); k < all.size(); k++) {
            at = asked(all.get(k), ask) ? k : at;
        }
        Optional<Found> now = seen.map(s -> sights().found(ask, s));
        if (at >= 0 && now.isPresent()) {
            all.set(at, now.get());
        } else if (at >= 0) {
            all.remove(at);
        } else {
            now.ifPresent(all::add);
        }
        desk.find(all);
    }

    /** Another advice instead; when all have been refused they come round again. */
    public void another() {
        List<Advice> all =
                standing.get().map(Standing::next).map(NextReadings::advice).orElse(List.of());
        Optional<Advice> now = advice.get();
        int at = -1;
        for (int k = 0; k < all.size(); k++) {
            Ask ask = all.get(k).ask();
            at = now.filter(a -> a.ask().equals(ask)).isPresent() ? k : at;
        }
        if (!all.isEmpty()) {
            advice.set(Optional.of(all.get((at + 1) % all.size())));
        }
    }

    /** What else is worth doing while the bench is set as the advice asks, best first. */
    public List<Advice> inOneGo() {
        Optional<Arrangement> bench =
                advice.get().map(a -> Sentence.named(a.ask().arrangement()));
        return standing.get().map(Standing::next).map(NextReadings::advice).orElse(List.of()).stream()
                .filter(a -> !a.ask().equals(advice.get().map(Advice::ask).orElse(null)))
                .filter(a -> Optional.of(Sentence.named(a.ask().arrangement())).equals(bench))
                .limit(IN_ONE_GO)
                .toList();
    }

    /** What is advised cannot be reached, or not be seen: it is not advised again. */
    public void cannotReach() {
        Optional<Advice> now = advice.get();
        if (now.isEmpty()) {
            return;
        }
        Ask ask = now.get().ask();
        advice.set(Optional.empty());
        if (ask instanceof Ask.Metered metered) {
            desk.reach(hard(metered.check()), false);
        } else {
            ruledOut.add(ask);
            ask();
        }
    }

    /** Of two points the one that is hard to reach: ground is to be found anywhere. */
    private String hard(Check check) {
        String ground = desk.board().ground().name();
        return check.from().equals(ground) ? check.to() : check.from();
    }

    /** Takes what explains the readings into "What would it read?". */
    public void suppose(Supposition supposition) {
        desk.change(desk.state().sentence().withSupposition(supposition));
    }

    /** What stands where the work stands, in words. */
    public String status() {
        int count = findings().size();
        String readings = count == 1 ? WORDS.say("status.one") : WORDS.say("status.readings", count);
        Work now = work.get();
        if (now.busy()) {
            return now.of() > 0
                    ? WORDS.say("status.working", readings, grouped(now.done()), grouped(now.of()))
                    : WORDS.say("status.begins", readings);
        }
        if (now.stopped()) {
            return WORDS.say("status.stopped", readings);
        }
        return standing.get()
                .map(s -> WORDS.say(
                        "status.done", readings, grouped(s.ranking().howFar().boards())))
                .orElse(readings);
    }

    static String grouped(int number) {
        return String.format(java.util.Locale.ROOT, "%,d", number);
    }
}
