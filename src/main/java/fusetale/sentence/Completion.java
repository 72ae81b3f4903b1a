package fusetale.sentence;

/**
 * One way in which a line that is being typed may go on.
 *
 * @param line the line as it would stand then
 * @param words what that would say: the words of the sentence, or what is still to be typed behind it
 */
public record Completion(String line, String words) {}
