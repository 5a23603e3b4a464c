package chargehand.trade.thread;

/** The limits of the three diameters of one thread, outside or inside. */
public record DiameterLimits(SizeLimits major, SizeLimits effective, SizeLimits minor) {}
