package chargehand.part.check;

import chargehand.part.Body;
import java.util.HashMap;
import java.util.Map;

/** Judges whether every feature of a part has a name of its own. */
final class NameCheck {
    private final Findings findings;
    private final Map<String, String> pathsByName = new HashMap<>();

    NameCheck(Findings findings) {
        this.findings = findings;
    }

    void judge(Body body) {
        switch (body) {
            case Body.Turned turned -> {
                for (int i = 0; i < turned.outside().size(); i++) {
                    name(Paths.section(i), turned.outside().get(i).name());
                }
                for (int i = 0; i < turned.inside().size(); i++) {
                    name(Paths.bore(i), turned.inside().get(i).name());
                }
                for (int i = 0; i < turned.across().size(); i++) {
                    name(Paths.across(i), turned.across().get(i).name());
                }
                for (int i = 0; i < turned.inBores().size(); i++) {
                    name(Paths.inBore(i), turned.inBores().get(i).name());
                }
                for (int i = 0; i < turned.onEnds().size(); i++) {
                    name(Paths.onEnd(i), turned.onEnds().get(i).name());
                }
            }
            case Body.Block block -> {
                for (int i = 0; i < block.holes().size(); i++) {
                    name(Paths.hole(i), block.holes().get(i).name());
                }
                for (int i = 0; i < block.cuts().size(); i++) {
                    name(Paths.cut(i), block.cuts().get(i).name());
                }
            }
        }
    }

    private void name(String path, String name) {
        String other = pathsByName.putIfAbsent(name, path);
        if (other != null) {
            findings.fault(
                    path + ".name",
                    PartFault.NAME_TWICE,
                    "'" + name + "' already names " + other + ": give it another.");
        }
    }
}
