/** What every view is made of: colours, typefaces, signs, scaling. Knows nothing of machines. */
@NullMarked
package fusetale.desk.kit;

import org.jspecify.annotations.NullMarked;
