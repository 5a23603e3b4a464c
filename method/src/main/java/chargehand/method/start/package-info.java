/** What is looked at before a machine is switched on, and where to stop before what cannot be undone. */
@NullMarked
package chargehand.method.start;

import org.jspecify.annotations.NullMarked;
