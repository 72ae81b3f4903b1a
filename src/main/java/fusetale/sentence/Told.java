package fusetale.sentence;

/**
 * What some lines say, and what they leave to be asked.
 *
 * @param sentence the state after them
 * @param function whether they say what the meter is set to; if not, the state has what the power asks for
 * @param power whether they say that the power is on, or off
 */
public record Told(Sentence sentence, boolean function, boolean power) {}
