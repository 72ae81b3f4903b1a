package fusetale.desk.match;

import fusetale.bench.Arrangement;
import fusetale.bench.Check;
import fusetale.circuit.Circuit;
import fusetale.desk.state.FoundReader;
import fusetale.explore.Words;
import fusetale.match.Advice;
import fusetale.match.Ask;
import fusetale.match.Repair;
import fusetale.report.Pairs;
import fusetale.sentence.Sentence;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** An advice in words. */
final class AdviceWords {
    private static final Words WORDS = Words.of(AdviceWords.class);

    private AdviceWords() {}

    /** What to do, large: {@code D.c. volts at TP2}. */
    static String title(Circuit board, Ask ask) {
        if (ask instanceof Ask.Metered metered) {
            Check check = metered.check();
            String pair = Pairs.name(board, check);
            String key = pair.equals(check.from()) ? "title.at" : "title.across";
            return capital(WORDS.say(key, check.function().words(), pair));
        }
        Ask.Noticed noticed = (Ask.Noticed) ask;
        return WORDS.say("title." + noticed.aspect(), noticed.part());
    }

    /** Before the value in the line: {@code TP2 d.c. volts}. */
    static String prefix(Circuit board, Ask ask) {
        if (ask instanceof Ask.Metered metered) {
            return Pairs.name(board, metered.check()) + " "
                    + metered.check().function().words();
        }
        Ask.Noticed noticed = (Ask.Noticed) ask;
        return noticed.part() + " " + noticed.aspect().words();
    }

    /** {@code power off, about a minute}. */
    static String effort(Advice advice) {
        String power = WORDS.say(
                advice.ask().arrangement().powerOn()
                        ? advice.ask().arrangement().seriesLampWatts() == null ? "power.on" : "power.lamp"
                        : "power.off");
        long minutes = Math.round(advice.minutes());
        String time = advice.minutes() < 0.75
                ? WORDS.say("time.half")
                : minutes <= 1 ? WORDS.say("time.one") : WORDS.say("time", minutes);
        return WORDS.say("effort", power, time);
    }

    /** {@code While the power is off, also: ohms at TP2; diode test, TP1 to TP3.} */
    static String meanwhile(FoundReader reader, Advice advice, List<Advice> more) {
        String titles =
                more.stream().map(a -> small(title(reader.board(), a.ask()))).collect(Collectors.joining("; "));
        Arrangement bench = advice.ask().arrangement();
        Arrangement plain = bench.powerOn() ? Arrangement.powered(reader.board()) : Arrangement.unpowered();
        return Sentence.named(bench).equals(Sentence.named(plain))
                ? WORDS.say(bench.powerOn() ? "meanwhile.on" : "meanwhile.off", titles)
                : WORDS.say("meanwhile", small(reader.benchWords(bench)), titles);
    }

    /** {@code Power off. Take F201 out.}; the deeds, each a sentence. */
    static String deeds(Advice advice) {
        return advice.deeds().stream().map(d -> capital(d) + ".").collect(Collectors.joining(" "));
    }

    /** {@code take F201 out, then diode test TP1 to TP2}. */
    static String inOneLine(Advice advice) {
        List<String> all = new java.util.ArrayList<>(advice.deeds());
        all.add(advice.ask().words());
        return String.join(", ", all);
    }

    /**
     * What follows from an outcome: {@code change BR201}; of what was replaced already, {@code it was BR201}.
     *
     * @param done whether a repair was made already
     */
    static String then(Advice.Meaning meaning, Predicate<Repair> done) {
        if (meaning.somethingElse()) {
            return WORDS.say("then.else");
        }
        return meaning.repair().isNothing()
                ? WORDS.say("then.nothing")
                : WORDS.say(
                        done.test(meaning.repair()) ? "then.was" : "then.change",
                        meaning.repair().words());
    }

    /** {@code 85}: of 100 machines that read so. */
    static String share(Advice.Meaning meaning) {
        return CandidateWords.share(meaning.share());
    }

    /** With a small first letter, unless a name begins with it. */
    static String small(String words) {
        boolean name = words.length() > 1 && Character.isUpperCase(words.charAt(1));
        return words.isEmpty() || name ? words : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
    }

    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
