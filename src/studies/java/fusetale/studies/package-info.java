/** Benchmarks and long studies; how to run them is told in {@code DEVELOPERS.md}. */
@NullMarked
package fusetale.studies;

import org.jspecify.annotations.NullMarked;
