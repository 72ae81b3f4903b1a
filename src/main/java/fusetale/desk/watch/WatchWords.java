package fusetale.desk.watch;

import fusetale.explore.Words;

/** What is told of a file that changed. */
public final class WatchWords {
    private static final Words WORDS = Words.of(WatchWords.class);

    private WatchWords() {}

    /** One line: that the board was read anew, or why the last good one still stands, with file and line. */
    public static String line(Watched watched) {
        if (watched.current()) {
            return WORDS.say("read-anew", watched.file().getFileName());
        }
        String obstacle = watched.obstacle().map(Object::toString).orElse("");
        String first = WORDS.say(watched.board() == null ? "none-yet" : "last-kept", obstacle);
        int more = watched.furtherObstacles();
        return more == 0 ? first : first + " " + WORDS.say(more == 1 ? "one-more" : "more", more);
    }
}
