/** What a person asks of a method beside the part: what it must use, what it must do without, and what comes before what. */
@NullMarked
package chargehand.method.wish;

import org.jspecify.annotations.NullMarked;
