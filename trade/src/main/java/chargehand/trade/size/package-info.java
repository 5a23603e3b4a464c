/** Any size a person may write, in inches, millimetres and 64ths. */
@NullMarked
package chargehand.trade.size;

import org.jspecify.annotations.NullMarked;
