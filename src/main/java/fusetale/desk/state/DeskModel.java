package fusetale.desk.state;

import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.circuit.Circuit;
import fusetale.desk.work.Newest;
import fusetale.explore.Answer;
import fusetale.explore.Compared;
import fusetale.explore.Glance;
import fusetale.explore.Glances;
import fusetale.explore.Outcome;
import fusetale.explore.Preparation;
import fusetale.explore.Prepared;
import fusetale.explore.Question;
import fusetale.fault.Supposition;
import fusetale.sentence.Measured;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import fusetale.sentence.Setting;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.jspecify.annotations.Nullable;

/**
 * What the window shows and what can be done with it. Commands make a new state and ask anew; answers arrive later, stamped with
 * what they answer, so that an old one never looks like a new one. Belongs to the window's thread; knows no scene.
 */
public final class DeskModel {
    private final Newest answering;
    private final Newest otherwise;
    private final Newest glancing;
    private final Benches benches = new Benches();
    private @Nullable Glances glances;
    private boolean begun;
    private @Nullable Inquiry lastAsked;
    private Sentences grammar;

    private final ReadOnlyObjectWrapper<History> history;
    private final ReadOnlyObjectWrapper<Sentence> sentence;
    private final ReadOnlyObjectWrapper<Optional<Shown>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Shown>> otherPower = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Glanced>> glanced = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Forward>> forward = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Working> working = new ReadOnlyObjectWrapper<>(Working.NOTHING);
    private final ReadOnlyObjectWrapper<Optional<Answer.Unanswered>> refusal =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * A model of a board that has just been opened; it is asked about at once.
     *
     * @param first where the repair begins, or was left
     */
    public DeskModel(Workers workers, BenchState first) {
        this(workers, History.of(first), true);
    }

    private DeskModel(Workers workers, History been, boolean asks) {
        BenchState first = been.present();
        this.answering = workers.line();
        this.otherwise = workers.line();
        this.glancing = workers.oneByOne();
        this.grammar = new Sentences(first.board());
        this.history = new ReadOnlyObjectWrapper<>(been);
        this.sentence = new ReadOnlyObjectWrapper<>(first.sentence());
        if (asks) {
            ask();
        } else {
            working.set(Working.at(Working.Step.ANSWER));
        }
    }

    /**
     * A model that asks nothing before it is told to begin or a sentence is said: until the first picture stands the window needs
     * every core.
     *
     * @param been where a repair was left, and where one can go back to
     */
    public static DeskModel resting(Workers workers, History been) {
        return new DeskModel(workers, been, false);
    }

    /** Asks about the board, unless something has been asked already. */
    public void begin() {
        if (!begun) {
            ask();
        }
    }

    /** What was asked of which board. */
    private record Inquiry(Circuit board, Sentence sentence) {}

    /**
     * Readings at a glance, while a hand moves.
     *
     * @param sentence what they answer
     * @param readings in the order of the checks
     */
    public record Glanced(Sentence sentence, List<Compared> readings) {
        /** Copies the list. */
        public Glanced {
            readings = List.copyOf(readings);
        }
    }

    /**
     * A look at the board as it is after something has happened.
     *
     * @param supposition what is then true of it
     * @param words after what
     */
    public record Forward(Supposition supposition, String words) {}

    /** How far what is shown can be trusted. */
    public enum Freshness {
        /** It answers the sentence. */
        FRESH,
        /** The answer is being worked out; what is shown is the one before. */
        WORKING,
        /** Nothing is being worked out, and what is shown answers another sentence. */
        OUT_OF_DATE
    }

    /** Where one has been. */
    public ReadOnlyObjectProperty<History> historyProperty() {
        return history.getReadOnlyProperty();
    }

    /** The sentence as it stands, also while a hand is changing it. */
    public ReadOnlyObjectProperty<Sentence> sentenceProperty() {
        return sentence.getReadOnlyProperty();
    }

    /** The last good answer; empty before the first. */
    public ReadOnlyObjectProperty<Optional<Shown>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** The same with the plug out where it is in, and in where it is out; empty where there is none (yet). */
    public ReadOnlyObjectProperty<Optional<Shown>> otherPowerProperty() {
        return otherPower.getReadOnlyProperty();
    }

    /** What is shown, and the same with the plug the other way as far as it is known. */
    public List<Outcome> outcomes() {
        Optional<Shown> one = shown.get();
        Optional<Shown> two =
                otherPower.get().filter(o -> one.filter(o::isOtherPowerOf).isPresent());
        return Stream.concat(one.stream(), two.stream()).map(Shown::outcome).toList();
    }

    /** Readings that follow the hand; empty while none moves. */
    public ReadOnlyObjectProperty<Optional<Glanced>> glancedProperty() {
        return glanced.getReadOnlyProperty();
    }

    /** The moment after switching on that is looked at; empty for the present. */
    public ReadOnlyObjectProperty<Optional<Forward>> forwardProperty() {
        return forward.getReadOnlyProperty();
    }

    /** What is being worked out. */
    public ReadOnlyObjectProperty<Working> workingProperty() {
        return working.getReadOnlyProperty();
    }

    /** Why there is no answer to the present sentence; empty where there is one. */
    public ReadOnlyObjectProperty<Optional<Answer.Unanswered>> refusalProperty() {
        return refusal.getReadOnlyProperty();
    }

    /** The present state. */
    public BenchState state() {
        return history.get().present();
    }

    /** The machine as drawn. */
    public Circuit board() {
        return state().board();
    }

    /** The grammar of this board; made once a board, since making it takes longer than a sentence. */
    public Sentences sentences() {
        if (!grammar.circuit().equals(board())) {
            grammar = new Sentences(board());
        }
        return grammar;
    }

    /** What the tags show. */
    public List<Check> tags() {
        return Asked.tags(board(), sentence.get());
    }

    /** What is asked: the sentence, or the board after what has happened. */
    public Sentence asked() {
        Sentence now = state().sentence();
        return forward.get().map(f -> now.withSupposition(f.supposition())).orElse(now);
    }

    /** Whether the last good answer is one to what is asked now. */
    public Freshness freshness() {
        boolean fresh = shown.get().map(s -> s.answers(board(), asked())).orElse(false);
        if (fresh) {
            return Freshness.FRESH;
        }
        return working.get().busy() ? Freshness.WORKING : Freshness.OUT_OF_DATE;
    }

    /**
     * One typed line.
     *
     * @throws SentenceException where it is not understood; nothing changes then
     */
    public void type(String line) throws SentenceException {
        change(sentences().apply(state().sentence(), line));
    }

    /** Says another sentence, and asks it. */
    public void change(Sentence next) {
        go(state().with(next));
    }

    /** Takes a reading down, taken on the bench as it is set, its power as the meter needs it. */
    public void take(Measured reading) {
        take(FoundReader.of(
                reading,
                foundReader()
                        .fit(state().sentence().arrangement(), reading.check().function())));
    }

    /** Takes down what was found. */
    public void take(Found more) {
        go(state().with(more));
    }

    /** Says what was found otherwise, all of it. */
    public void find(List<Found> all) {
        go(state().finding(all));
    }

    /** Says what was found otherwise, all of it, and which meter it was read with. */
    public void find(List<Found> all, Meter meter) {
        Sentence now = state().sentence();
        Setting with = now.setting().withMeter(meter);
        Setting able = meter.has(with.function())
                ? with
                : with.withFunction(Setting.usual().function());
        go(state().finding(all).with(now.withSetting(able)));
    }

    /** Reads what is found on this board. */
    public FoundReader foundReader() {
        return new FoundReader(sentences());
    }

    /** Marks a point as one that cannot be reached, or as one that can. */
    public void reach(String point, boolean canBeReached) {
        go(state().reaching(point, canBeReached));
    }

    /** Opens another board; where one has been stays with the other. */
    public void open(@Nullable Path file, Circuit board) {
        open(BenchState.atFirst(file, board));
    }

    /** Opens a repair where it was left. */
    public void open(BenchState first) {
        forward.set(Optional.empty());
        shown.set(Optional.empty());
        go(History.of(first));
    }

    /**
     * Takes a board that was drawn anew in its file; what is, or was, supposed and arranged stays as far as the board still has it.
     *
     * @return why the present sentence could not be kept; empty where it was
     */
    public Optional<String> redrawn(Circuit board) {
        if (board.equals(board())) {
            return Optional.empty();
        }
        Redrawn redrawn = Redrawn.of(history.get(), sentences(), new Sentences(board));
        go(redrawn.history());
        return redrawn.gone();
    }

    /** One back. */
    public void undo() {
        go(history.get().back());
    }

    /** One forward. */
    public void redo() {
        go(history.get().forward());
    }

    /** Whether readings at a glance follow the sentence while it moves: the bench has to stand as it was answered. */
    public boolean follows() {
        Glances eyes = glances;
        return eyes != null
                && eyes.prepared()
                        .question()
                        .arrangement()
                        .equals(sentence.get().arrangement());
    }

    /** Whether a hand holds the sentence away from what is kept. */
    public boolean moving() {
        return !sentence.get().equals(state().sentence());
    }

    /** Follows a hand: shows what the meter would say, without keeping the sentence. */
    public void drag(Sentence moving) {
        Glances eyes = glances;
        if (eyes != null && eyes.prepared().question().arrangement().equals(moving.arrangement())) {
            HashSet<Check> wanted = new HashSet<>(Asked.tags(board(), moving));
            glancing.start(turn -> {
                Optional<Glance> glance = eyes.at(moving.supposition(), wanted, turn::stopped);
                turn.show(() -> glanced.set(glance.map(g -> new Glanced(moving, g.readings()))));
            });
        }
        // last: whoever listens writes the sentence while the readings are already being worked out
        sentence.set(moving);
    }

    /** The hand lets go: the sentence is kept, and asked in earnest. */
    public void drop(Sentence moved) {
        glancing.stop();
        change(moved);
    }

    /** Looks at the board as it is after something has happened; empty for the present again. */
    public void lookForward(Optional<Forward> moment) {
        if (!forward.get().equals(moment)) {
            forward.set(moment);
            ask();
        }
    }

    /** Stops what is being worked out; the last good answer stays, marked out of date. */
    public void stop() {
        answering.stop();
        otherwise.stop();
        glancing.stop();
        glanced.set(Optional.empty());
        sentence.set(state().sentence());
        working.set(Working.NOTHING);
    }

    /** Asks again, as after a stop. */
    public void askAgain() {
        ask();
    }

    private void go(BenchState next) {
        go(history.get().plus(next));
    }

    private void go(History next) {
        BenchState before = state();
        history.set(next);
        glancing.stop();
        glanced.set(Optional.empty());
        if (!before.sameQuestion(state())) {
            forward.set(Optional.empty());
        }
        sentence.set(state().sentence());
        // what is shown may be fresh while the answer to what was undone, or its refusal, is still on its way
        if (freshness() != Freshness.FRESH || !new Inquiry(board(), asked()).equals(lastAsked)) {
            ask();
        }
    }

    private void ask() {
        begun = true;
        Circuit board = board();
        Sentence question = asked();
        lastAsked = new Inquiry(board, question);
        refusal.set(Optional.empty());
        working.set(Working.at(Working.Step.ANSWER));
        boolean known = shown.get()
                .filter(Shown::whole)
                .filter(s -> s.answers(board, question))
                .isPresent();
        answering.start(turn -> answer(turn, board, question, known));
        askOtherwise(board, question);
    }

    /** What has just been shown is often the very answer: the meter was turned from volts to ohms, and the plug came out. */
    private void askOtherwise(Circuit board, Sentence question) {
        Question other = Asked.otherwise(board, question);
        Optional<Shown> known = Stream.concat(shown.get().stream(), otherPower.get().stream())
                .filter(Shown::whole)
                .filter(s -> s.covers(other, question.supposition()))
                .findFirst();
        if (known.isPresent()) {
            otherwise.stop();
            otherPower.set(known);
            return;
        }
        // of the same supposition on another bench: it would pass for the answer
        if (otherPower
                .get()
                .filter(o -> o.sentence().supposition().equals(question.supposition()))
                .isPresent()) {
            otherPower.set(Optional.empty());
        }
        otherwise.start(turn -> answerOtherwise(turn, board, question));
    }

    /**
     * Answers a question, at first without what follows.
     *
     * @param known whether the whole answer is shown already: a first look in its place would take a danger off the screen
     */
    private void answer(Newest.Turn turn, Circuit board, Sentence question, boolean known) {
        Question asked = Asked.of(board, question);
        Preparation preparation = benches.of(
                asked,
                (done, of) -> turn.show(() -> working.set(new Working(true, Working.Step.HEALTHY, done, of))),
                turn::stopped);
        if (!(preparation instanceof Preparation.Ready ready)) {
            refuse(turn, ((Preparation.None) preparation).reason());
            return;
        }
        Prepared prepared = ready.prepared();
        turn.show(() -> {
            working.set(Working.at(Working.Step.ANSWER));
            if (glances == null || glances.prepared() != prepared) {
                glances = new Glances(prepared);
            }
        });
        if (known) {
            turn.show(() -> working.set(Working.NOTHING));
            return;
        }
        Answer first = prepared.answer(question.supposition(), null, turn::stopped);
        if (!(first instanceof Answer.Answered quick)) {
            refuse(turn, (Answer.Unanswered) first);
            return;
        }
        // also of a machine to which something has happened: what it does next may be worse
        boolean plays =
                question.arrangement().powerOn() && !question.supposition().isNothing();
        turn.show(() -> {
            shown.set(Optional.of(new Shown(board, question, quick.outcome(), !plays)));
            glanced.set(Optional.empty());
            working.set(plays ? Working.at(Working.Step.AFTERMATH) : Working.NOTHING);
        });
        if (plays) {
            Answer second = prepared.answer(question.supposition(), Asked.evening(), turn::stopped);
            turn.show(() -> {
                // what cannot be played forward stays a first look: nobody knows whether it is safe
                if (second instanceof Answer.Answered played) {
                    shown.set(Optional.of(new Shown(board, question, played.outcome(), true)));
                }
                working.set(Working.NOTHING);
            });
        }
    }

    private void answerOtherwise(Newest.Turn turn, Circuit board, Sentence question) {
        Preparation preparation = benches.of(Asked.otherwise(board, question), (done, of) -> {}, turn::stopped);
        boolean plays =
                !question.arrangement().powerOn() && !question.supposition().isNothing();
        if (preparation instanceof Preparation.Ready ready
                && ready.prepared().answer(question.supposition(), plays ? Asked.evening() : null, turn::stopped)
                        instanceof Answer.Answered answered) {
            turn.show(() -> otherPower.set(Optional.of(new Shown(board, question, answered.outcome(), true))));
        } else {
            turn.show(() -> otherPower.set(Optional.empty()));
        }
    }

    private void refuse(Newest.Turn turn, Answer.Unanswered reason) {
        if (!Benches.onRequest(reason)) {
            turn.show(() -> {
                refusal.set(Optional.of(reason));
                working.set(Working.NOTHING);
            });
        }
    }
}
