package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Tooling;
import chargehand.method.kit.Tooling.Mandrel;
import chargehand.method.plan.Holding;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.End;
import chargehand.part.Section;
import chargehand.part.shape.Profile;
import chargehand.trade.sum.Step;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The ways one lathe can turn the work between its centres: by its own centre holes, or on a mandrel through its bore. */
final class CentreHoldings {
    private static final Length DOG_WIDTH = Length.mm(12);

    private final Lathe lathe;
    private final Standing work;
    private final Profile hollow;

    private CentreHoldings(Lathe lathe, Standing work, Profile hollow) {
        this.lathe = lathe;
        this.work = work;
        this.hollow = hollow;
    }

    /** @param hollow the inside of the finished part */
    static List<Choice> list(Lathe lathe, Standing work, List<Mandrel> mandrels, Profile hollow) {
        var holdings = new CentreHoldings(lathe, work, hollow);
        var choices = new ArrayList<Choice>();
        if (work.isOnBar()
                || LatheHoldings.largestSwing(work).isMoreThan(lathe.room().overSlide())) {
            return choices;
        }
        for (End driven : End.values()) {
            holdings.betweenCentres(driven).ifPresent(choices::add);
        }
        mandrels.forEach(mandrel -> holdings.onMandrel(mandrel).forEach(choices::add));
        return choices;
    }

    private Optional<Choice> betweenCentres(End driven) {
        boolean centred = work.isDone(new Task.CentreIn(End.A)) && work.isDone(new Task.CentreIn(End.B));
        Length length = work.shape().body().length();
        if (!centred || length.isMoreThan(lathe.room().betweenCentres()) || !takesDog(driven)) {
            return Optional.empty();
        }
        double slenderness = slenderness();
        if (slenderness > GripRules.MOST_CENTRED) {
            return Optional.empty();
        }
        Length face = work.face(driven);
        Length inner = driven.other().from(face, DOG_WIDTH);
        var dog = new Holding.Grip(Length.least(face, inner), Length.most(face, inner), dogDiameter(driven));
        var holding = new Holding.BetweenCentres(driven, dog, GripRules.CENTRES);
        Length stop = driven.other().from(inner, GripRules.CLEARANCE);
        Length end = driven.other().from(work.face(driven.other()), GripRules.CLEARANCE);
        return Optional.of(new Choice(
                lathe,
                holding,
                Choice.Work.TURNING,
                new Choice.Stretch(Length.least(stop, end), Length.most(stop, end)),
                Set.of(),
                new Choice.Gripped.OnCentres(),
                Costing.centres(),
                work.isOldPart()
                        ? HoldingWords.onOldCentres(dogDiameter(driven), lathe.unit())
                        : HoldingWords.betweenCentres(dogDiameter(driven), lathe.unit()),
                working(slenderness, GripRules.CENTRES)));
    }

    /** A dog wants a plain cylinder or raw stock as long as it is wide. */
    private boolean takesDog(End driven) {
        return isPlainUnderDog(driven)
                && lathe.holders()
                        .largestDog()
                        .filter(largest -> !dogDiameter(driven).isMoreThan(largest))
                        .isPresent();
    }

    private boolean isPlainUnderDog(End driven) {
        Shape shape = work.shape();
        Length covered = Length.ZERO;
        for (int i = driven == End.A ? 0 : shape.count() - 1;
                shape.isSection(i);
                i = shape.neighbour(i, driven.other())) {
            boolean plain = work.isRaw(i) || shape.section(i) instanceof Section.Round;
            if (!plain || !work.diameter(i).equals(dogDiameter(driven))) {
                return false;
            }
            covered = covered.plus(shape.section(i).length());
            if (!covered.isLessThan(DOG_WIDTH)) {
                return true;
            }
        }
        return false;
    }

    private Length dogDiameter(End driven) {
        return work.diameter(driven == End.A ? 0 : work.shape().count() - 1);
    }

    private double slenderness() {
        Shape shape = work.shape();
        double sum = 0;
        for (int i = 0; i < shape.count(); i++) {
            sum += shape.section(i).length().over(shape.diameter(i));
        }
        return sum;
    }

    private List<Choice> onMandrel(Mandrel mandrel) {
        return MandrelBore.list(work, mandrel, hollow).stream()
                .filter(bore -> bore.isHeldBy(mandrel) && isRoom(mandrel))
                .map(bore ->
                        mandrel.kind() == Tooling.MandrelKind.STUB ? onStub(mandrel, bore) : onMandrel(mandrel, bore))
                .toList();
    }

    private boolean isRoom(Mandrel mandrel) {
        Length length = work.shape().body().length();
        boolean within = mandrel.kind() == Tooling.MandrelKind.STUB || !length.isMoreThan(mandrel.length());
        return within && !length.isMoreThan(lathe.room().betweenCentres());
    }

    private Choice onMandrel(Mandrel mandrel, MandrelBore bore) {
        var holding =
                new Holding.OnMandrel(mandrel.name(), bore.diameter(), bore.from(), bore.to(), End.A, mandrel.runOut());
        return choice(mandrel, bore, holding, Set.of(End.A, End.B));
    }

    private Choice onStub(Mandrel mandrel, MandrelBore bore) {
        var holding = new Holding.OnStub(
                mandrel.name(), bore.diameter(), bore.from(), bore.to(), bore.headstock(), mandrel.runOut());
        return choice(mandrel, bore, holding, Set.of(bore.headstock().other()));
    }

    private Choice choice(Mandrel mandrel, MandrelBore bore, Holding holding, Set<End> faces) {
        return new Choice(
                lathe,
                holding,
                Choice.Work.TURNING,
                new Choice.Stretch(
                        End.A.from(work.face(End.A), GripRules.CLEARANCE),
                        End.B.from(work.face(End.B), GripRules.CLEARANCE)),
                faces,
                new Choice.Gripped.OnBore(bore.index()),
                Costing.mandrel(mandrel),
                HoldingWords.mandrel(mandrel, bore.diameter(), lathe.unit()),
                working(slenderness(), mandrel.runOut()));
    }

    private List<Step> working(double slenderness, Length runOut) {
        var working = new Working();
        working.fact(
                "Slenderness between centres, length over diameter added up",
                String.format(Locale.ROOT, "%.1f, up to %.0f allowed", slenderness, GripRules.MOST_CENTRED),
                GripRules.SOURCE);
        working.fact(
                "Run-out as held", LengthText.in(runOut, lathe.unit()) + " total indicator reading", GripRules.SOURCE);
        return working.steps();
    }
}
