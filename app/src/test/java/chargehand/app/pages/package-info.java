/** The pages in a real browser, over the demo shop. */
@NullMarked
package chargehand.app.pages;

import org.jspecify.annotations.NullMarked;
