package chargehand.method.replay;

import chargehand.measure.Volume;

/** The work as it stands between two operations. */
public sealed interface Work permits TurnedWork, BlockWork {
    /** Its volume; threads, centre holes and what is cut across turned work are not taken off. */
    Volume volume();
}
