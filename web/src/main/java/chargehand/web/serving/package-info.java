/** What every page stands on: views, forms, protection against other sites' posts, plain fault pages. */
@NullMarked
package chargehand.web.serving;

import org.jspecify.annotations.NullMarked;
