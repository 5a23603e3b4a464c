package chargehand.trade.material;

/** Whether a material is usual for steam and hot-water fittings. */
public enum SteamFitness {
    /** Usual for it; the duty's own rules still decide. */
    YES,
    /** Not to be used: it dezincifies, rusts through or softens. */
    NO,
    /** Depends on the duty: ask the competent person. */
    ASK
}
