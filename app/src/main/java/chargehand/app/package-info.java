/** Wiring: the one place where everything is put together. */
@NullMarked
package chargehand.app;

import org.jspecify.annotations.NullMarked;
