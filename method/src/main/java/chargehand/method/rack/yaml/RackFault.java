package chargehand.method.rack.yaml;

/** What can be wrong with a rack beyond the reading of its file. */
public enum RackFault {
    /** Two pieces of the same name. */
    NAME_TWICE
}
