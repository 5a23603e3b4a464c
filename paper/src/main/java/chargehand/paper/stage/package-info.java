/** Pictures of the work in its holding, drawn from what the replay saw: what the sheet shows is what was proved. */
@NullMarked
package chargehand.paper.stage;

import org.jspecify.annotations.NullMarked;
