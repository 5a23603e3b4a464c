/** The lettering of drawings and sheets: weights of the one font, sizes, and how wide words are on paper. */
@NullMarked
package chargehand.drawing.lettering;

import org.jspecify.annotations.NullMarked;
