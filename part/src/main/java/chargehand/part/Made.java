package chargehand.part;

/** Whether a feature is made in this job or was there when the work came in. */
public enum Made {
    /** To be made. */
    HERE,
    /** There already: the part comes back to be altered, and this is left as it is. */
    ALREADY
}
