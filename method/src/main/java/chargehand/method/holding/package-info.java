/** The ways this shop can hold the work as it stands, each with what it leaves clear and how true it holds. */
@NullMarked
package chargehand.method.holding;

import org.jspecify.annotations.NullMarked;
