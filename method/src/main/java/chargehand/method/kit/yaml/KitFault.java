package chargehand.method.kit.yaml;

/** What can be wrong with a kit beyond the reading of its files. */
public enum KitFault {
    /** Two machines, or two chucks of one machine, of the same name. */
    NAME_TWICE,
    /** Sizes that contradict each other or cannot be. */
    CANNOT_BE,
    /** No machine in any file. */
    NO_MACHINE,
    /** No tooling in any file. */
    NO_TOOLING
}
