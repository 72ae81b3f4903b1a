/**
 * From readings back to what is wrong: suppositions weighed against what was read and seen, look-alikes, what to measure
 * next. No rules and no tables of symptoms: every expected reading comes from {@code explore}.
 */
@NullMarked
package fusetale.match;

import org.jspecify.annotations.NullMarked;
