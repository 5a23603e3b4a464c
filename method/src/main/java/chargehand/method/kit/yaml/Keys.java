package chargehand.method.kit.yaml;

import java.util.List;

/** The keys that stand at the head level of a kit file, of whichever kind. */
final class Keys {
    static final List<String> OF_FILES = List.of(
            "unit",
            "swing",
            "between-centres",
            "spindle-bore",
            "power",
            "speeds",
            "feeds",
            "screw-cutting",
            "dials",
            "top-slide-travel",
            "chucks",
            "collets",
            "faceplate",
            "tailstock",
            "dogs",
            "fixed-steady",
            "travelling-steady",
            "travels",
            "vices",
            "dividing-head",
            "capacity",
            "reach",
            "vees",
            "clamps",
            "largest",
            "kerf",
            "shortest-held",
            "out-of-square",
            "lathe-tools",
            "drills",
            "centre-drills",
            "reamers",
            "taps",
            "taper-taps",
            "dies",
            "solid-dies",
            "tailstock-die-holder",
            "countersinks",
            "milling-cutters",
            "mandrels",
            "gauges",
            "deburring",
            "source",
            "money",
            "hour",
            "machines",
            "material-added");

    private Keys() {}
}
