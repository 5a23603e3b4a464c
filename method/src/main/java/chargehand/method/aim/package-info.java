/** What a turner aims at: the sizes of a part set into the middle of their limits. */
@NullMarked
package chargehand.method.aim;

import org.jspecify.annotations.NullMarked;
