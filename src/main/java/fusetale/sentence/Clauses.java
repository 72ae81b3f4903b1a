package fusetale.sentence;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** Cuts a line into sentences, and a sentence into clauses. */
final class Clauses {
    /** A full stop between two sentences, not that of "d.c. volts". */
    private static final Pattern STOP = Pattern.compile("(?<!\\b[adAD]\\.[cC])\\.\\s+");

    private static final Pattern PAIRED =
            Pattern.compile("(?i)\\b(clip|clip lead from|leads?(?: on)?) (\\S+)\\s+and\\s+(?=\\S)");
    private static final Pattern JOINED = Pattern.compile("(?i)\\s+and\\s+|[;\\n]+");
    private static final Pattern PARTED = Pattern.compile("(?=,)|\\s+(?=\\S+=)");

    private Clauses() {}

    /** Its sentences, without their full stops; none where it is blank. */
    static List<String> sentences(String line) {
        List<String> sentences = new ArrayList<>();
        for (String sentence : STOP.split(line.strip(), -1)) {
            String bare = sentence.strip();
            bare = bare.endsWith(".") ? bare.substring(0, bare.length() - 1).strip() : bare;
            if (!bare.isEmpty()) {
                sentences.add(bare);
            }
        }
        return sentences;
    }

    /**
     * The clauses of a sentence. "and" and a semicolon part them, and a comma before what may begin one: a comma also stands
     * before an amount and, in some hands, for the decimal point.
     *
     * @param begins whether a text begins with what may begin a clause
     */
    static List<String> of(String sentence, Predicate<String> begins) {
        List<String> clauses = new ArrayList<>();
        String text = PAIRED.matcher(sentence).replaceAll("$1 $2 to ");
        for (String joined : JOINED.split(text, -1)) {
            StringBuilder clause = new StringBuilder();
            for (String piece : PARTED.split(joined, -1)) {
                String bare = piece.replaceFirst("^,", "");
                if (clause.length() > 0 && begins.test(bare)) {
                    add(clauses, clause);
                    clause.append(bare);
                } else {
                    clause.append(piece);
                }
            }
            add(clauses, clause);
        }
        return clauses;
    }

    private static void add(List<String> clauses, StringBuilder clause) {
        String text = clause.toString().strip().replaceFirst("[,\\s]+$", "");
        if (!text.isEmpty()) {
            clauses.add(text);
        }
        clause.setLength(0);
    }
}
