/**
 * The question as one line: reading it in either form, and writing it. Uses {@code quantity}, {@code circuit}, {@code
 * fault}. Start at {@link fusetale.sentence.SentenceParser}.
 */
@NullMarked
package fusetale.sentence;

import org.jspecify.annotations.NullMarked;
