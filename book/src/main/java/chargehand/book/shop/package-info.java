/** The shop itself: its name, its own unit, and the descriptions of its kit and rack as they were written. */
@NullMarked
package chargehand.book.shop;

import org.jspecify.annotations.NullMarked;
