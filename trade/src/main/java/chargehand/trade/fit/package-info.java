/** Limits and fits by ISO 286: tolerance grades, fundamental deviations, and what a hole and a shaft make together. */
@NullMarked
package chargehand.trade.fit;

import org.jspecify.annotations.NullMarked;
