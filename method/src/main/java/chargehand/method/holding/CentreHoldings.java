package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Tooling.Mandrel;
import chargehand.method.plan.Holding;
import chargehand.method.task.Bores;
import chargehand.method.task.Shape;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Bore;
import chargehand.part.End;
import chargehand.part.Section;
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

    private CentreHoldings(Lathe lathe, Standing work) {
        this.lathe = lathe;
        this.work = work;
    }

    static List<Choice> list(Lathe lathe, Standing work, List<Mandrel> mandrels) {
        var holdings = new CentreHoldings(lathe, work);
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
                HoldingWords.betweenCentres(dogDiameter(driven), lathe.unit()),
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
        var choices = new ArrayList<Choice>();
        List<Bore> inside = work.shape().body().inside();
        for (int i = 0; i < inside.size(); i++) {
            if (isMandrelBore(inside.get(i), i, mandrel)) {
                choices.add(onMandrel(mandrel, i, Bores.diameter(inside.get(i))));
            }
        }
        return choices;
    }

    private boolean isMandrelBore(Bore bore, int index, Mandrel mandrel) {
        boolean plain = switch (bore) {
            case Bore.Bored bored -> true;
            case Bore.Reamed reamed -> true;
            case Bore.Drilled drilled -> false;
            case Bore.Counterbored counterbored -> false;
            case Bore.Tapped tapped -> false;
            case Bore.Coned coned -> false;
        };
        Length length = work.shape().body().length();
        return plain
                && Bores.isThrough(bore)
                && work.isDone(new Task.Inside(index, bore))
                && mandrel.bore().contain(Bores.diameter(bore))
                && !length.isMoreThan(mandrel.length())
                && !length.isMoreThan(lathe.room().betweenCentres());
    }

    private Choice onMandrel(Mandrel mandrel, int bore, Length diameter) {
        Length length = work.shape().body().length();
        var holding = new Holding.OnMandrel(mandrel.name(), diameter, Length.ZERO, length, End.A, mandrel.runOut());
        return new Choice(
                lathe,
                holding,
                Choice.Work.TURNING,
                new Choice.Stretch(
                        End.A.from(work.face(End.A), GripRules.CLEARANCE),
                        End.B.from(work.face(End.B), GripRules.CLEARANCE)),
                Set.of(End.A, End.B),
                new Choice.Gripped.OnBore(bore),
                Costing.mandrel(),
                HoldingWords.mandrel(mandrel.name()),
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
