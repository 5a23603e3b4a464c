package chargehand.method.replay;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import java.util.Random;

/** Methods whose cuts lie anywhere, of any size: some of them nonsense. */
final class Wild {
    private static final double MOST_MM = 120;

    private final Random random;

    private Wild(Random random) {
        this.random = random;
    }

    /** A method with a few of its cuts thrown about. */
    static Method of(Method method, Random random) {
        var wild = new Wild(random);
        Method thrown = method;
        for (int i = 0; i < 3; i++) {
            SetUp setUp = method.setUps().get(random.nextInt(method.setUps().size()));
            int operation = 1 + random.nextInt(setUp.operations().size());
            thrown = Edits.in(thrown).cut(setUp.number(), operation, wild::thrown);
        }
        return thrown;
    }

    /** Anywhere within the bed, often just where it was. */
    private Length at(Length was) {
        return random.nextInt(3) > 0 ? was : Length.mm(MOST_MM * (random.nextDouble() - 0.3));
    }

    private Length size(Length was) {
        return random.nextInt(3) > 0 ? was : Length.mm(MOST_MM * random.nextDouble() * random.nextDouble());
    }

    private Angle angle(Angle was) {
        return random.nextInt(3) > 0 ? was : Angle.degrees(1 + 178 * random.nextDouble());
    }

    private Cut.EdgeForm form(Cut.EdgeForm was) {
        return switch (was) {
            case Cut.EdgeForm.Chamfer(Length length, Angle angle) ->
                new Cut.EdgeForm.Chamfer(size(length), Angle.degrees(1 + 88 * random.nextDouble()));
            case Cut.EdgeForm.Radius(Length radius) -> new Cut.EdgeForm.Radius(size(radius));
        };
    }

    private Cut thrown(Cut cut) {
        return switch (cut) {
            case Cut.FaceEnd c -> new Cut.FaceEnd(c.end(), at(c.at()));
            case Cut.CentreHole c -> new Cut.CentreHole(c.end(), size(c.diameter()));
            case Cut.DrillAxial c -> new Cut.DrillAxial(c.end(), size(c.diameter()), at(c.to()));
            case Cut.BoreTo c -> new Cut.BoreTo(c.end(), size(c.diameter()), at(c.to()));
            case Cut.ReamTo c -> new Cut.ReamTo(c.end(), size(c.diameter()), at(c.to()));
            case Cut.ConeInside c ->
                new Cut.ConeInside(c.end(), at(c.at()), size(c.mouth()), angle(c.included()), size(c.narrow()));
            case Cut.TurnDiameter c -> new Cut.TurnDiameter(at(c.from()), at(c.to()), size(c.diameter()));
            case Cut.TurnTaper c ->
                new Cut.TurnTaper(at(c.from()), at(c.to()), size(c.atFrom()), size(c.atTo()), c.way());
            case Cut.CutGroove c -> new Cut.CutGroove(at(c.from()), at(c.to()), size(c.diameter()));
            case Cut.FinishEdge c ->
                new Cut.FinishEdge(at(c.at()), size(c.diameter()), c.towards(), c.inside(), form(c.form()));
            case Cut.PartOff c -> new Cut.PartOff(at(c.from()), at(c.to()), c.partSide());
            case Cut.SawOff c -> new Cut.SawOff(at(c.from()), at(c.to()));
            case Cut.ThreadOutside c -> new Cut.ThreadOutside(c.thread(), at(c.from()), at(c.to()), c.way());
            case Cut.ThreadInside c -> new Cut.ThreadInside(c.thread(), c.end(), at(c.to()), c.way());
            case Cut.MillFlats c -> new Cut.MillFlats(c.sides(), size(c.flats()), at(c.from()), at(c.to()));
            case Cut.DrillAcross c ->
                new Cut.DrillAcross(at(c.at()), size(c.diameter()), c.around(), c.through(), size(c.depth()));
            case Cut.MillKeyway c ->
                new Cut.MillKeyway(at(c.from()), size(c.length()), size(c.width()), size(c.depth()), c.around());
            case Cut.SlotInBore c ->
                new Cut.SlotInBore(
                        c.end(),
                        at(c.from()),
                        at(c.to()),
                        size(c.bore()),
                        size(c.width()),
                        size(c.depth()),
                        c.around(),
                        c.form());
            case Cut.RecessInBore c -> new Cut.RecessInBore(c.end(), at(c.from()), at(c.to()), size(c.diameter()));
            case Cut.MillFace c -> new Cut.MillFace(c.face(), size(c.to()));
            case Cut.DrillHole c ->
                new Cut.DrillHole(at(c.x()), at(c.y()), size(c.diameter()), c.through(), size(c.depth()));
            case Cut.ReamHole c ->
                new Cut.ReamHole(at(c.x()), at(c.y()), size(c.diameter()), c.through(), size(c.depth()));
            case Cut.TapHole c -> new Cut.TapHole(at(c.x()), at(c.y()), c.thread(), c.through(), size(c.depth()));
            case Cut.CutTeeth c ->
                new Cut.CutTeeth(c.teeth(), size(c.pitchDiameter()), size(c.root()), at(c.from()), at(c.to()));
            case Cut.DrillCircle c ->
                new Cut.DrillCircle(
                        c.end(),
                        c.count(),
                        size(c.circle()),
                        c.around(),
                        size(c.diameter()),
                        c.through(),
                        size(c.depth()));
            case Cut.Deburr c -> c;
        };
    }
}
