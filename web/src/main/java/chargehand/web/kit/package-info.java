/** The page of what the shop has: machines and rack. */
@NullMarked
package chargehand.web.kit;

import org.jspecify.annotations.NullMarked;
