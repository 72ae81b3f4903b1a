/** The schematic as nodes: every part can have the keyboard, and what is supposed is marked on it. */
@NullMarked
package fusetale.desk.drawing;

import org.jspecify.annotations.NullMarked;
