/** A shop to try things out in: a book filled from the files of an imaginary workshop, as any shop's could be. */
@NullMarked
package chargehand.book.demo;

import org.jspecify.annotations.NullMarked;
