/** Pages of a method: the whole, its sheet, and one operation at a time at the machine. */
@NullMarked
package chargehand.web.method;

import org.jspecify.annotations.NullMarked;
