/** The templates, made into classes when the program is built. */
@NullMarked
package chargehand.web.leaf;

import org.jspecify.annotations.NullMarked;
