package chargehand.drawing.dimension;

import chargehand.drawing.view.BoreGroove;
import chargehand.measure.Angle;
import chargehand.measure.AngleText;
import chargehand.part.Body;
import chargehand.part.Edge;
import chargehand.part.Feature;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What the notes of a drawing say because no size says it: how features lie round the axis to each other, what is there
 * already on a part that comes back to be altered, and keyways that stand aslant.
 */
record FeatureNotes(Subject subject) {
    List<String> all() {
        List<String> notes = new ArrayList<>(angles());
        Body.Turned body = subject.body();
        aslant(notes);
        if (body.inBores().stream().anyMatch(InBore.OilGroove.class::isInstance)) {
            notes.add("Oil grooves are round at the bottom.");
        }
        if (body.outside().stream().anyMatch(Section.Knurled.class::isInstance)) {
            notes.add("Knurls by the letters of DIN 82: RAA straight, RGE diamonds raised.");
        }
        if (body.outside().stream().anyMatch(FeatureNotes::isForWelding)) {
            notes.add("Welding signs after ISO 2553, system A; the weld itself is made elsewhere.");
        }
        if (body.onEnds().stream().anyMatch(OnEnd.Centre.class::isInstance)) {
            notes.add(body.onEnds().stream()
                    .filter(OnEnd.Centre.class::isInstance)
                    .map(feature -> "in end " + feature.end() + " "
                            + ((OnEnd.Centre) feature).stays().text() + " stay")
                    .collect(Collectors.joining(", ", "Centre holes, sizes in millimetres: ", ".")));
        }
        if (body.isAltered()) {
            notes.add("There already as the part comes in, drawn in lines of a dash and two dots: "
                    + body.features().stream()
                            .filter(Feature::isThere)
                            .map(Feature::name)
                            .collect(Collectors.joining(", "))
                    + ".");
            body.outside().forEach(section -> was(section, notes));
        }
        return notes;
    }

    private static boolean isForWelding(Section section) {
        return section.stretch().atA() instanceof Edge.WeldPreparation
                || section.stretch().atB() instanceof Edge.WeldPreparation;
    }

    private void was(Section section, List<String> notes) {
        section.stretch()
                .was()
                .ifPresent(was -> notes.add(capital(section.name()) + " was "
                        + subject.text().words(was) + " in diameter and is turned down."));
    }

    /** Keyways of bores that lie square to nothing in the end view. */
    private void aslant(List<String> notes) {
        for (BoreGroove groove : BoreGroove.of(subject.body(), subject.look().solid())) {
            if (groove.feature() instanceof InBore.Keyway keyway && !EndCallouts.isSquare(subject.look(), groove)) {
                notes.add(capital(keyway.name()) + ", in " + keyway.bore() + ": "
                        + subject.text().words(keyway.width()) + " wide, "
                        + subject.text().words(keyway.depth()) + " deep above the bore, all along it.");
            }
        }
    }

    /** Something that lies at an angle round the axis. */
    private record Turned(String name, double degrees) {}

    private List<String> angles() {
        List<Turned> turned = turned();
        List<String> notes = new ArrayList<>();
        for (Turned one : turned.stream().skip(1).toList()) {
            double apart = one.degrees - turned.getFirst().degrees;
            if (apart != 0) {
                notes.add("%s lies %s round the axis from %s."
                        .formatted(
                                capital(one.name),
                                AngleText.seconds(Angle.degrees(Math.abs(apart))),
                                turned.getFirst().name));
            }
        }
        return notes;
    }

    private List<Turned> turned() {
        List<Turned> turned = new ArrayList<>();
        subject.body()
                .across()
                .forEach(feature ->
                        turned.add(new Turned(feature.name(), feature.around().degrees())));
        BoreGroove.of(subject.body(), subject.look().solid())
                .forEach(groove -> turned.add(new Turned(groove.feature().name(), groove.around())));
        subject.body().onEnds().forEach(feature -> turned(feature).ifPresent(turned::add));
        return turned;
    }

    private static Optional<Turned> turned(OnEnd feature) {
        return switch (feature) {
            case OnEnd.Holes holes ->
                Optional.of(new Turned(
                        "the first of " + holes.name(), holes.circle().around().degrees()));
            case OnEnd.Slot slot ->
                Optional.of(new Turned(slot.name(), slot.around().degrees()));
            case OnEnd.Centre centre -> Optional.empty();
        };
    }

    private static String capital(String name) {
        return AcrossWays.capital(name);
    }
}
