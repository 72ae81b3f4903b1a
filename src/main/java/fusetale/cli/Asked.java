package fusetale.cli;

import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.circuit.MeterFunction;
import fusetale.explore.Question;
import fusetale.sentence.Leads;
import fusetale.sentence.Sentence;
import fusetale.sentence.SentenceException;
import fusetale.sentence.Sentences;
import fusetale.sentence.Setting;
import fusetale.sentence.Told;
import java.util.List;

/**
 * The sentence that a command line asks.
 *
 * @param sentences about its circuit
 * @param told what it says
 */
record Asked(Sentences sentences, Told told) {
    /**
     * What is supposed.
     *
     * @throws Refused where it cannot be understood
     */
    static Asked supposing(Circuit circuit, List<String> lines) throws Refused {
        return read(circuit, s -> s.supposing(Sentence.atFirst(circuit), lines));
    }

    /**
     * What is said of the bench.
     *
     * @throws Refused where it cannot be understood
     */
    static Asked arranging(Circuit circuit, List<String> lines) throws Refused {
        return read(circuit, s -> s.arranging(Sentence.atFirst(circuit), lines));
    }

    @FunctionalInterface
    private interface Reading {
        Told of(Sentences sentences) throws SentenceException;
    }

    private static Asked read(Circuit circuit, Reading reading) throws Refused {
        try {
            Sentences sentences = new Sentences(circuit);
            return new Asked(sentences, reading.of(sentences));
        } catch (SentenceException unclear) {
            throw new Refused(ExitCodes.UNUSABLE, String.valueOf(unclear.getMessage()));
        }
    }

    /** The whole sentence of a question, options included; without its meter where that is set to several functions. */
    String text(Question question) {
        List<MeterFunction> functions =
                question.checks().stream().map(Check::function).distinct().toList();
        Leads said = told.sentence().setting().leads();
        Leads held = said != null
                        && question.checks().stream()
                                .allMatch(c -> c.from().equals(said.red()) && c.to().equals(said.black()))
                ? said
                : null;
        MeterFunction function = functions.isEmpty() ? MeterFunction.DC_VOLTS : functions.get(0);
        Sentence sentence = new Sentence(
                question.supposition(), question.arrangement(), new Setting(question.meter(), function, held));
        return functions.size() == 1 ? sentences.text(sentence) : sentences.textWithoutMeter(sentence);
    }
}
