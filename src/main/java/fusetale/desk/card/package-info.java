/** A part's card: what it is, what it does here, how it fails and how the trade makes sure. */
@NullMarked
package fusetale.desk.card;

import org.jspecify.annotations.NullMarked;
