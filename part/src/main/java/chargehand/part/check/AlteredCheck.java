package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Feature;
import chargehand.part.Section;
import chargehand.part.Size;
import java.util.Optional;

/** Judges what is said of a part that comes back to be altered: what is there already, and what is made of what. */
final class AlteredCheck {
    private final Body.Turned body;
    private final Findings findings;

    AlteredCheck(Body.Turned body, Findings findings) {
        this.body = body;
        this.findings = findings;
    }

    void judge() {
        if (body.features().stream().allMatch(Feature::isThere)) {
            findings.fault(
                    "outside",
                    PartFault.NOTHING_TO_MAKE,
                    "Everything here is made already: take 'made: already' off what is to be made.");
        }
        for (int i = 0; i < body.outside().size(); i++) {
            section(Paths.section(i), body.outside().get(i));
        }
    }

    private void section(String path, Section section) {
        Optional<Size> was = section.stretch().was();
        boolean reworked = body.isAltered() && !section.isThere();
        if (was.isPresent() && !reworked) {
            findings.fault(
                    path + ".was",
                    PartFault.WAS_NOT_WANTED,
                    "'was' is the size that a section has before it is altered, on a part of which the rest is 'made:"
                            + " already': take it out here.");
        } else if (was.isEmpty() && reworked) {
            findings.fault(
                    path,
                    PartFault.WAS_MISSING,
                    "This part comes back to be altered: write 'was' with the diameter that this section has now, or"
                            + " 'made: already' where it stays.");
        } else {
            was.ifPresent(size -> enough(path, section, size.length()));
        }
    }

    private void enough(String path, Section section, Length was) {
        Length most = Length.most(section.diameterTowardsA(), section.diameterTowardsB());
        if (was.isLessThan(most)) {
            findings.fault(
                    path + ".was",
                    PartFault.WAS_SMALLER,
                    "A section that was " + findings.say(was) + " cannot be turned to " + findings.say(most)
                            + ": build it up first, or take the next size down.");
        }
    }
}
