/** Pages of a method: how it is made, why so, and the sheet to print. */
@NullMarked
package chargehand.web.method;

import org.jspecify.annotations.NullMarked;
