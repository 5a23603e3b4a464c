package chargehand.book.use;

import chargehand.book.Objection;
import chargehand.book.method.Finding;
import chargehand.book.method.MethodPlanner;
import chargehand.book.method.PlannerReply;
import chargehand.book.method.ProofFigures;
import chargehand.book.shop.ShopTexts;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Limits;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.WorkTime;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.Planned.Code;
import chargehand.method.plan.Planned.Reason;
import chargehand.method.plan.Reading;
import chargehand.method.plan.SetUp;
import chargehand.method.plan.Settings;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;
import java.util.List;
import java.util.Optional;

/**
 * Plans plain pins by rule of thumb: face, turn with a hold point at the finished diameter, part off. It needs a rack, takes
 * nothing over 100 mm long, and the replay of anything under 10 mm does not come out.
 */
final class PinPlanner implements MethodPlanner {
    private static final Length LONGEST = Length.mm(100);
    private static final Length SHORTEST = Length.mm(10);

    @Override
    public PlannerReply plan(Part part, int count, List<String> wishes, ShopTexts texts) {
        if (texts.rack().isEmpty()) {
            return new PlannerReply.KitFaulty(List.of(new Objection(ShopTexts.RACK, "The shop has no rack.")));
        }
        if (wishes.contains("with luck")) {
            return new PlannerReply.WishesFaulty(List.of(new Objection("wishes", "Luck is not stocked here.")));
        }
        Length length = ((Body.Turned) part.body()).length();
        if (length.isMoreThan(LONGEST)) {
            return new Finding.NotHere(List.of(
                    new Reason(Code.TOO_BIG, "The pin is " + length + " long.", "A lathe with longer centres.")));
        }
        boolean made = !length.isLessThan(SHORTEST);
        return new Finding.Found(
                method(part, count, length),
                new ProofFigures(made, made ? Length.ZERO : SHORTEST),
                3,
                Optional.empty());
    }

    private static Method method(Part part, int count, Length length) {
        Length diameter = ((Body.Turned) part.body()).largestDiameter();
        Blank bar = new Blank.RoundBar(Length.mm(-1), length.plus(Length.mm(40)), diameter.plus(Length.mm(2)), true);
        var stock =
                new Method.StockUse("steel bar", "bright mild steel round, rack A1", bar, count, List.of(), List.of());
        var grip = new Holding.Grip(length.plus(Length.mm(5)), length.plus(Length.mm(40)), diameter.plus(Length.mm(2)));
        var holding = new Holding.InChuck("three-jaw", 3, grip, End.B, new Holding.Support.None(), Length.mm(0.05));
        var turned = new Reading("Ø", Limits.plusMinus(diameter, Length.mm(0.1)), "micrometer");
        var operations = List.of(
                operation(1, "Face", new Cut.FaceEnd(End.A, Length.ZERO), List.of()),
                operation(2, "Turn", new Cut.TurnDiameter(Length.ZERO, length, diameter), List.of(turned)),
                operation(3, "Part off", new Cut.PartOff(length, length.plus(Length.mm(3)), End.A), List.of()));
        var setUp = new SetUp(
                1, "lathe", holding, List.of(), operations, WorkTime.minutes(10), WorkTime.minutes(1), List.of());
        return new Method(part.title(), part.issue(), count, stock, List.of(setUp), List.of());
    }

    private static Operation operation(int number, String say, Cut cut, List<Reading> readings) {
        var settings = new Settings(
                "knife tool",
                Optional.of(new SpindleSpeed(400)),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                LengthUnit.MILLIMETRE,
                "cutting oil");
        boolean hold = !readings.isEmpty();
        return new Operation(number, say, cut, settings, readings, hold, List.of(), WorkTime.minutes(2), List.of());
    }
}
