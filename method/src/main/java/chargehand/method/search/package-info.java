/** The search: from a part, a kit and a rack to the method that takes the least time, or the reasons why there is none. */
@NullMarked
package chargehand.method.search;

import org.jspecify.annotations.NullMarked;
