package fusetale.cli;

import fusetale.explore.Words;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Options that an answer has no place for: refused with what to leave out, for an answer without them is another one. */
final class LeftOut {
    private static final Words WORDS = Words.of(LeftOut.class);

    private final Map<String, Boolean> given = new LinkedHashMap<>();

    /** Has no place for an option, where it is given. */
    LeftOut no(String option, boolean isGiven) {
        given.put(option, isGiven);
        return this;
    }

    /** All options it has no place for, given or not. */
    List<String> names() {
        return List.copyOf(given.keySet());
    }

    /**
     * Refuses what was given.
     *
     * @param why words with a place for the names of the options
     * @throws Refused where any was given
     */
    void check(String why) throws Refused {
        List<String> names = given.keySet().stream().filter(given::get).toList();
        if (!names.isEmpty()) {
            throw new Refused(ExitCodes.UNUSABLE, WORDS.say(why, String.join(", ", names)));
        }
    }
}
