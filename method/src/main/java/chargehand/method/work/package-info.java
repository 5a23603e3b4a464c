/** The work as planning sees it: which tasks are done, what it measures now, and what was done in one holding. */
@NullMarked
package chargehand.method.work;

import org.jspecify.annotations.NullMarked;
