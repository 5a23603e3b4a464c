/**
 * What a part asks to have done: one task for each surface that must be made exactly once to its finish size, and which
 * tasks must come before which. Nothing here knows machines.
 */
@NullMarked
package chargehand.method.task;

import org.jspecify.annotations.NullMarked;
