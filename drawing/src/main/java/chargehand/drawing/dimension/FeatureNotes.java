package chargehand.drawing.dimension;

import chargehand.measure.Angle;
import chargehand.measure.AngleText;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Feature;
import chargehand.part.HoleCircle;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Section;
import chargehand.part.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What the notes of a drawing say of features that no view shows: what is cut into bores and faces, and what is there
 * already on a part that comes back to be altered.
 */
record FeatureNotes(Body.Turned body, SizeText text) {
    List<String> all() {
        List<String> notes = new ArrayList<>();
        body.inBores().forEach(feature -> notes.add(inBore(feature) + "."));
        body.onEnds().forEach(feature -> notes.add(onEnd(feature) + "."));
        if (body.isAltered()) {
            notes.add("There already as the part comes in: "
                    + body.features().stream()
                            .filter(Feature::isThere)
                            .map(Feature::name)
                            .collect(Collectors.joining(", "))
                    + ".");
            body.outside().forEach(section -> was(section, notes));
        }
        return notes;
    }

    private void was(Section section, List<String> notes) {
        section.stretch()
                .was()
                .ifPresent(was -> notes.add(
                        capital(section.name()) + " was " + text.words(was) + " in diameter and is turned down."));
    }

    private String inBore(InBore feature) {
        String in = capital(feature.name()) + ", in " + feature.bore() + ": ";
        return in
                + switch (feature) {
                    case InBore.Keyway keyway ->
                        text.words(keyway.width()) + " wide, " + text.words(keyway.depth())
                                + " deep above the bore, all along it" + around(keyway.around());
                    case InBore.OilGroove groove ->
                        text.words(groove.width()) + " wide, " + text.words(groove.depth())
                                + " deep, round at the bottom, " + run(groove.run()) + around(groove.around());
                    case InBore.Recess recess ->
                        text.words(recess.diameter()) + " diameter, " + text.words(recess.width()) + " wide, beginning "
                                + text.words(recess.from()) + " from end A";
                };
    }

    private String run(InBore.Run run) {
        return switch (run) {
            case InBore.Run.Open() -> "open at both ends of the bore";
            case InBore.Run.Part(Size from, Size length) ->
                text.words(length) + " long, beginning " + text.words(from) + " from end A";
        };
    }

    private String onEnd(OnEnd feature) {
        String name = capital(feature.name()) + ", from end " + feature.end() + ": ";
        return name
                + switch (feature) {
                    case OnEnd.Drilled drilled ->
                        circle(drilled.circle(), text.words(drilled.diameter()) + " diameter", drilled.depth());
                    case OnEnd.Tapped tapped ->
                        circle(tapped.circle(), SectionWays.threadName(tapped.thread(), tapped.fit()), tapped.depth());
                };
    }

    private String circle(HoleCircle circle, String hole, Depth depth) {
        String deep = switch (depth) {
            case Depth.Through() -> "through";
            case Depth.Blind(Size size) -> text.words(size) + " deep";
        };
        return circle.count() + " × " + hole + ", " + deep + ", evenly on a circle of " + text.words(circle.diameter())
                + " diameter" + around(circle.around());
    }

    private static String around(Angle around) {
        return ", at " + AngleText.seconds(around) + " round the axis";
    }

    private static String capital(String name) {
        return AcrossWays.capital(name);
    }
}
