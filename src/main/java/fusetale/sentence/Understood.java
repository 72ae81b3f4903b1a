package fusetale.sentence;

import java.util.List;

/** What a typed line would do. */
public sealed interface Understood permits Understood.Means, Understood.Unclear {
    /**
     * It is understood.
     *
     * @param after the state after it
     * @param words what it changes, in the words of the sentence, to stand under the line
     */
    record Means(Sentence after, String words) implements Understood {}

    /**
     * It is not, or not yet.
     *
     * @param problem what to change
     * @param near what may have been meant, nearest first; may be empty
     */
    record Unclear(String problem, List<String> near) implements Understood {
        /** Copies the list. */
        public Unclear {
            near = List.copyOf(near);
        }
    }
}
