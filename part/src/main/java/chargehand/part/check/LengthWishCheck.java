package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.FaceAt;
import chargehand.part.LengthWish;
import chargehand.part.Part;
import chargehand.part.Section;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Judges what is wanted of lengths on the drawing: faces that are there, each length once, none that limits stand on. */
final class LengthWishCheck {
    private static final int MOST_NAMED = 12;

    private final Part part;
    private final Findings findings;

    LengthWishCheck(Part part, Findings findings) {
        this.part = part;
        this.findings = findings;
    }

    void judge() {
        List<LengthWish> wishes = part.drafting().lengths();
        if (wishes.isEmpty()) {
            return;
        }
        switch (part.body()) {
            case Body.Turned turned -> turned(turned, wishes);
            case Body.Block block ->
                findings.fault(
                        "lengths",
                        PartFault.LENGTH_UNWANTED,
                        "Lengths are moved, bracketed or added along the axis of a turned part; a block takes none of this.");
        }
    }

    private void turned(Body.Turned body, List<LengthWish> wishes) {
        Map<List<Integer>, Integer> seen = new HashMap<>();
        for (int i = 0; i < wishes.size(); i++) {
            String path = Paths.length(i);
            Optional<Integer> from = face(body, path + ".from", wishes.get(i).from());
            Optional<Integer> to = face(body, path + ".to", wishes.get(i).to());
            if (from.isPresent() && to.isPresent()) {
                int one = Math.min(from.orElseThrow(), to.orElseThrow());
                int other = Math.max(from.orElseThrow(), to.orElseThrow());
                between(body, path, wishes.get(i), List.of(one, other));
                twice(path, seen.getOrDefault(List.of(one, other), i), i);
                seen.put(List.of(one, other), i);
            }
        }
    }

    private Optional<Integer> face(Body.Turned body, String path, FaceAt face) {
        Optional<Integer> number = face.number(body);
        if (number.isEmpty()) {
            String known =
                    body.outside().stream().map(Section::name).limit(MOST_NAMED).collect(Collectors.joining(", "));
            findings.fault(
                    path,
                    PartFault.LENGTH_FACE,
                    "No section is named '" + face.section() + "': the sections here are " + known + ".");
        }
        return number;
    }

    private void between(Body.Turned body, String path, LengthWish wish, List<Integer> faces) {
        int one = faces.getFirst();
        int other = faces.getLast();
        if (one == other) {
            findings.fault(
                    path + ".to",
                    PartFault.LENGTH_NONE,
                    "A length runs from one face to another, and these are the same.");
        }
        boolean isGiven = wish.giving()
                .filter(giving -> giving != LengthWish.Giving.PLAIN)
                .isEmpty();
        if (other == one + 1
                && !isGiven
                && body.outside().get(one).stretch().length().isToleranced()) {
            Length length = body.outside().get(one).length();
            findings.fault(
                    path + ".give",
                    PartFault.LENGTH_LIMITS,
                    "The " + findings.say(length) + " of '"
                            + body.outside().get(one).name()
                            + "' has limits of its own, so it is given plain: what stands in brackets has no limits.");
        }
    }

    private void twice(String path, int other, int index) {
        if (other != index) {
            findings.fault(
                    path,
                    PartFault.LENGTH_TWICE,
                    "What is wanted of this length stands at " + Paths.length(other)
                            + " already: put both into one entry.");
        }
    }
}
