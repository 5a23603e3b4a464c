package chargehand.method.replay;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.InBore;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The slots that a part asks for in the walls of its bores, and whether the work has these and no others. */
final class SlotsCheck {
    private final Body.Turned body;

    SlotsCheck(Body.Turned body) {
        this.body = body;
    }

    /** The slots of a body, as they would be cut; what turns is in its profile. */
    List<Cut.SlotInBore> asked() {
        return body.inBores().stream().flatMap(inBore -> asked(inBore).stream()).toList();
    }

    void check(List<Cut.SlotInBore> made, FaultList faults) {
        var missing = new ArrayList<>(asked());
        for (Cut.SlotInBore slot : made) {
            boolean found = missing.stream()
                    .filter(place -> isSame(slot, place))
                    .findFirst()
                    .map(missing::remove)
                    .orElse(false);
            faults.unless(
                    found, Fault.Code.NOT_AS_DRAWN, () -> "a slot is made in a bore that the part does not have so");
        }
        faults.unless(
                missing.isEmpty(),
                Fault.Code.NOT_AS_DRAWN,
                () -> "a slot in a bore of the part is not made: " + missing.size());
    }

    private static boolean isSame(Cut.SlotInBore made, Cut.SlotInBore asked) {
        return Stream.of(
                                made.from().minus(asked.from()),
                                made.to().minus(asked.to()),
                                made.bore().minus(asked.bore()),
                                made.width().minus(asked.width()),
                                made.depth().minus(asked.depth()))
                        .noneMatch(off -> off.abs().isMoreThan(Deviation.ALLOWED))
                && made.form() == asked.form()
                && Math.abs(made.around().degrees() - asked.around().degrees()) <= Believable.ANGLE_NEAR;
    }

    private Optional<Cut.SlotInBore> asked(InBore inBore) {
        return switch (inBore) {
            case InBore.Keyway keyway ->
                Optional.of(slot(
                        whole(bore(keyway)),
                        keyway,
                        new Section(keyway.width().length(), keyway.depth().length(), keyway.around()),
                        Cut.SlotForm.SQUARE));
            case InBore.OilGroove groove ->
                Optional.of(slot(
                        run(groove),
                        groove,
                        new Section(groove.width().length(), groove.depth().length(), groove.around()),
                        Cut.SlotForm.ROUND));
            case InBore.Recess recess -> Optional.empty();
        };
    }

    private record Section(Length width, Length depth, Angle around) {}

    private Cut.SlotInBore slot(Span over, InBore inBore, Section section, Cut.SlotForm form) {
        Bore bore = bore(inBore);
        return new Cut.SlotInBore(
                bore.from(),
                over.from(),
                over.to(),
                Solid.mouthDiameter(bore),
                section.width(),
                section.depth(),
                section.around(),
                form);
    }

    private Bore bore(InBore inBore) {
        return body.inside().stream()
                .filter(bore -> bore.name().equals(inBore.bore()))
                .findFirst()
                .orElseThrow();
    }

    private Span run(InBore.OilGroove groove) {
        return switch (groove.run()) {
            case InBore.Run.Open open -> whole(bore(groove));
            case InBore.Run.Part(var from, var length) ->
                new Span(from.length(), from.length().plus(length.length()));
        };
    }

    private Span whole(Bore bore) {
        Length deep = bore.depth() instanceof Depth.Blind(var size) ? size.length() : body.length();
        return bore.from() == End.A
                ? new Span(Length.ZERO, deep)
                : new Span(body.length().minus(deep), body.length());
    }
}
