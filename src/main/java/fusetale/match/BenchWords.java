package fusetale.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Bench;
import fusetale.bench.Check;
import fusetale.bench.Meter;
import fusetale.bench.UnfitArrangement;
import fusetale.circuit.BenchSetting;
import fusetale.circuit.Circuit;
import fusetale.explore.Words;
import fusetale.fault.Supposition;
import fusetale.sentence.Piece;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import fusetale.sentence.Setting;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How the bench is set, in one cell: a named arrangement of the circuit file, or what one would say of the bench, {@code
 * power off, F201 out}. Arrangements come out with their deeds in order, so that equal ones are equal. Belongs to one thread.
 */
final class BenchWords {
    private static final Words WORDS = Words.of(BenchWords.class);

    private final Circuit circuit;
    private final Sentences sentences;
    private final Map<String, Arrangement> named = new HashMap<>();
    private final Map<String, Arrangement> read = new HashMap<>();
    private final Map<Arrangement, Bench> benches = new HashMap<>();

    BenchWords(Circuit circuit) {
        this.circuit = circuit;
        this.sentences = new Sentences(circuit);
        for (BenchSetting setting : circuit.settings()) {
            try {
                named.put(SightWords.plain(setting.name()), settled(Arrangement.of(circuit, setting)));
            } catch (UnfitArrangement unfit) {
                throw new IllegalArgumentException("a circuit with arrangements of another", unfit);
            }
        }
    }

    /** As drawn, with the power on or off. */
    Arrangement asFound(boolean powerOn) {
        return settled(powerOn ? Arrangement.powered(circuit) : Arrangement.unpowered());
    }

    private Arrangement settled(Arrangement arrangement) {
        return sentences
                .settled(new Sentence(Supposition.NOTHING, arrangement, Setting.usual()))
                .arrangement();
    }

    /**
     * What a cell says.
     *
     * @param powerOn what holds where it does not tell of the power
     * @throws SentenceException where it is not understood
     */
    Arrangement read(String cell, boolean powerOn) throws SentenceException {
        String plain = SightWords.plain(cell);
        if (plain.isEmpty() || plain.equals(WORDS.say("as-found"))) {
            return asFound(powerOn);
        }
        Arrangement known = named.get(plain);
        if (known == null) {
            return said(cell, plain, powerOn);
        }
        if (known.powerOn() == powerOn || powerOn) {
            return known;
        }
        // the name of an arrangement with the power on, over ohms: what it does is meant, and the plug goes without
        // saying
        try {
            return said(cell, plain, false);
        } catch (SentenceException aNameAlone) {
            return known;
        }
    }

    private Arrangement said(String cell, String plain, boolean powerOn) throws SentenceException {
        String key = powerOn + plain;
        Arrangement before = read.get(key);
        if (before == null) {
            Sentence base = new Sentence(Supposition.NOTHING, asFound(powerOn), Setting.usual());
            before = settled(sentences.arranging(base, List.of(cell)).sentence().arrangement());
            read.put(key, before);
        }
        return before;
    }

    /** Why a check cannot be made; empty where it can. */
    Optional<String> refusal(Arrangement arrangement, Check check, Meter meter) {
        try {
            Bench bench = benches.get(arrangement);
            if (bench == null || !bench.meter().equals(meter)) {
                bench = Bench.of(circuit, arrangement, meter);
                benches.put(arrangement, bench);
            }
            return bench.refusal(check);
        } catch (UnfitArrangement unfit) {
            return Optional.of(String.valueOf(unfit.getMessage()));
        }
    }

    /** A cell that reads as this arrangement: its name in the circuit file, or the pieces of a sentence. */
    String written(Arrangement arrangement) {
        Arrangement settled = settled(arrangement);
        for (BenchSetting setting : circuit.settings()) {
            if (settled.equals(named.get(SightWords.plain(setting.name())))) {
                return setting.name();
            }
        }
        return sentences.pieces(new Sentence(Supposition.NOTHING, settled, Setting.usual())).stream()
                .takeWhile(p -> p.kind() != Piece.Kind.METER)
                .filter(p -> p.kind() != Piece.Kind.WORDS)
                .map(Piece::text)
                .collect(Collectors.joining(", "));
    }

    /** As found, and the names of the circuit file, for messages. */
    List<String> names() {
        return Stream.concat(
                        Stream.of(WORDS.say("as-found")),
                        circuit.settings().stream().map(BenchSetting::name))
                .distinct()
                .toList();
    }
}
