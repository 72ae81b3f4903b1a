package fusetale.desk.line;

import fusetale.desk.state.DeskModel;
import fusetale.fault.AmountRange;
import fusetale.fault.Fault;
import fusetale.quantity.Quantity;
import fusetale.sentence.Completion;
import fusetale.sentence.Piece;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import fusetale.sentence.Understood;
import java.util.List;
import java.util.Optional;

/** What can be done with the sentence: taking pieces away, dragging amounts, typing into it. Knows no scene. */
public final class LineModel {
    private final DeskModel desk;

    /** The sentence of a desk. */
    public LineModel(DeskModel desk) {
        this.desk = desk;
    }

    /** The sentence in pieces. */
    public List<Piece> pieces() {
        return desk.sentences().pieces(desk.sentenceProperty().get());
    }

    /** The sentence as a screen reader says it. */
    public String spoken() {
        return desk.sentences().spoken(desk.sentenceProperty().get());
    }

    /** What a line that is being typed would do. */
    public Understood understood(String line) {
        return desk.sentences().understood(desk.state().sentence(), line);
    }

    /** How it may go on. */
    public List<Completion> completions(String line) {
        return desk.sentences().completions(desk.state().sentence(), line);
    }

    /**
     * Takes a typed line.
     *
     * @throws SentenceException where it is not understood
     */
    public void take(String line) throws SentenceException {
        desk.type(line);
    }

    /** Takes a piece out of the sentence. */
    public void putBack(Piece piece) {
        desk.change(desk.sentences().without(desk.state().sentence(), piece));
    }

    /** Takes the last thing supposed away; nothing where nothing is. */
    public void putBackLast() {
        List<Piece> supposed = pieces().stream()
                .filter(p -> p.kind() == Piece.Kind.FAULT || p.kind() == Piece.Kind.SWAP)
                .toList();
        if (!supposed.isEmpty()) {
            putBack(supposed.get(supposed.size() - 1));
        }
    }

    /** The fault a piece tells of. */
    public Optional<Fault> fault(Piece piece) {
        return desk.sentences().fault(piece);
    }

    /** A piece as the sentence that is kept has it now, whatever its amount was; empty where it is gone. */
    public Optional<Piece> now(Piece piece) {
        return desk.sentences().pieces(desk.state().sentence()).stream()
                .filter(p -> p.kind() == piece.kind() && p.index() == piece.index())
                .findFirst();
    }

    /** What the amount of a piece may be; empty where it has none. */
    public Optional<AmountScale> scale(Piece piece) {
        return desk.sentences().range(piece).map(AmountScale::new);
    }

    /** Where the amount of a piece stands on its scale, 0 to 1. */
    public double position(Piece piece) {
        Optional<AmountRange> range = desk.sentences().range(piece);
        if (range.isEmpty()) {
            return 0;
        }
        double said = desk.sentences()
                .amount(desk.state().sentence(), piece)
                .map(Quantity::si)
                .orElse(range.get().usualSi());
        return new AmountScale(range.get()).position(said);
    }

    /** Follows a hand that drags the amount of a piece. */
    public void drag(Piece piece, double position) {
        scale(piece).ifPresent(s -> desk.drag(with(piece, s.at(position))));
    }

    /** The hand lets the amount go. */
    public void drop(Piece piece, double position) {
        scale(piece).ifPresent(s -> desk.drop(with(piece, s.at(position))));
    }

    /** The hand lets the amount go where it had taken it up: nothing changes. */
    public void dropBack() {
        desk.drop(desk.state().sentence());
    }

    private Sentence with(Piece piece, Quantity amount) {
        Sentences sentences = desk.sentences();
        return sentences.withAmount(desk.state().sentence(), piece, amount);
    }
}
