/** What a store must do for the book, whatever it keeps its pages in. */
@NullMarked
package chargehand.book.store;

import org.jspecify.annotations.NullMarked;
