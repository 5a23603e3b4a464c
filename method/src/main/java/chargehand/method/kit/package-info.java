/**
 * What this shop really has: its machines with their limits and accessories as on the plate or as measured, and the tools,
 * taps, dies, drills and gauges it owns. Plain facts for the search to choose from, and how they are read from files.
 */
@NullMarked
package chargehand.method.kit;

import org.jspecify.annotations.NullMarked;
