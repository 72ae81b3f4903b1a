package fusetale.desk.trouble;

import fusetale.explore.Words;
import fusetale.store.Saved;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Instant;
import java.util.Optional;

/**
 * Something unforeseen.
 *
 * @param kept what became of the repair, which was kept first; nothing where nothing had changed since it was kept last
 * @param text everything that somebody who mends the program needs, to be copied
 */
public record Trouble(Optional<Saved> kept, String text) {
    private static final Words WORDS = Words.of(Trouble.class);

    /**
     * Of a mistake in the program.
     *
     * @param sentence the whole question as one line
     * @param system version, Java and operating system
     */
    public static Trouble of(Throwable mistake, Optional<Saved> kept, String sentence, Instant time, String system) {
        StringWriter stack = new StringWriter();
        mistake.printStackTrace(new PrintWriter(stack));
        return new Trouble(
                kept,
                WORDS.say("report", system, time, sentence, stack.toString().strip()));
    }

    /** Version, Java and operating system of this program. */
    public static String system() {
        String version = Trouble.class.getPackage().getImplementationVersion();
        return WORDS.say(
                "system",
                version == null ? WORDS.say("no-version") : version,
                System.getProperty("java.version"),
                System.getProperty("os.name"),
                System.getProperty("os.version"));
    }

    /** Whether and where the work is kept, in one sentence. */
    public String where() {
        Saved saved = kept.orElse(null);
        if (saved instanceof Saved.There there) {
            return WORDS.say("kept", there.file());
        }
        if (saved instanceof Saved.Elsewhere elsewhere) {
            return WORDS.say("kept", elsewhere.file());
        }
        return saved instanceof Saved.Failed failed ? WORDS.say("not-kept", failed.why()) : WORDS.say("kept-before");
    }
}
