/** What every part of the book shares: how an entry ended, what was objected to, who signed and when. */
@NullMarked
package chargehand.book;

import org.jspecify.annotations.NullMarked;
