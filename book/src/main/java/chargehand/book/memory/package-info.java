/**
 * A book that is kept in memory only and forgotten at the end, for tests and for trying things out. It keeps to the same
 * rules as the one on disk.
 */
@NullMarked
package chargehand.book.memory;

import org.jspecify.annotations.NullMarked;
