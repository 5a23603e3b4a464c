/** Pages for the one at the machine: one operation at a time, its readings and its hold point. */
@NullMarked
package chargehand.web.machine;

import org.jspecify.annotations.NullMarked;
