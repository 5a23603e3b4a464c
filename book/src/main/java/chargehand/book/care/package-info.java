/** Taking care of a book: a copy that can be put away, and a look at whether everything in it is whole. */
@NullMarked
package chargehand.book.care;

import org.jspecify.annotations.NullMarked;
