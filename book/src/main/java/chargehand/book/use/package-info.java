/** What people do with the book. Each deed is one transaction that is either wholly kept or refused in plain words. */
@NullMarked
package chargehand.book.use;

import org.jspecify.annotations.NullMarked;
