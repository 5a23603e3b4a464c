package chargehand.method.search;

import chargehand.method.holding.Choice;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Saw;
import chargehand.method.plan.Method.PassedOver;
import chargehand.method.stock.Candidate;
import chargehand.method.stock.Candidates;
import chargehand.method.stock.Way;
import chargehand.method.task.Task;
import chargehand.method.wish.HolderName;
import chargehand.method.wish.Wish;
import chargehand.method.wish.Wishes;
import chargehand.method.work.Standing;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/** What somebody asks of a method, put to every choice that the search makes. */
final class Bidden {
    private final Wishes wishes;
    private final List<String> saws;
    private final List<Wish.HeldBy> grips;

    Bidden(Wishes wishes, Kit kit) {
        this.wishes = wishes;
        this.saws = kit.saws().stream().map(Saw::name).toList();
        this.grips = wishes.of(Wish.HeldBy.class).toList();
    }

    /** The candidates that may be used; the rest join those passed over. */
    Candidates among(Candidates all) {
        var fit = all.fit().stream().filter(this::allows).toList();
        var left = new ArrayList<>(all.passedOver());
        all.fit().stream()
                .map(Candidate::piece)
                .distinct()
                .filter(piece ->
                        fit.stream().noneMatch(candidate -> candidate.piece().equals(piece)))
                .forEach(piece -> left.add(new PassedOver(piece.name(), piece.says() + ": it was asked to be left.")));
        return new Candidates(fit, left);
    }

    private boolean allows(Candidate candidate) {
        return wishes.list().stream().allMatch(wish -> switch (wish) {
            case Wish.FromPiece from -> isOf(candidate, from.piece());
            case Wish.NotFromPiece from -> !isOf(candidate, from.piece());
            case Wish.WithoutParting off -> candidate.way() == Way.SAWN || candidate.way() == Way.AS_IT_CAME;
            case Wish.WithoutMachine without ->
                candidate.way() == Way.FROM_BAR || candidate.way() == Way.AS_IT_CAME || !isSaw(without.machine());
            case Wish.WithoutHolder holder -> true;
            case Wish.HeldBy grip -> true;
            case Wish.NotHeldBy grip -> true;
            case Wish.Before order -> true;
        });
    }

    private boolean isSaw(String machine) {
        return saws.stream().anyMatch(machine::equalsIgnoreCase);
    }

    private static boolean isOf(Candidate candidate, String piece) {
        return candidate.piece().name().equalsIgnoreCase(piece);
    }

    /** Whether the work may be held so. */
    boolean allows(Standing work, Choice choice) {
        return wishes.list().stream().allMatch(wish -> switch (wish) {
            case Wish.WithoutMachine without -> !isOn(choice, without.machine());
            case Wish.WithoutHolder without -> !isOn(choice, without.machine()) || !isIn(choice, without.holder());
            case Wish.NotHeldBy grip -> !isBy(work, choice, grip.feature());
            case Wish.HeldBy grip -> true;
            case Wish.FromPiece from -> true;
            case Wish.NotFromPiece from -> true;
            case Wish.WithoutParting off -> true;
            case Wish.Before order -> true;
        });
    }

    boolean allowsMachine(String name) {
        return wishes.of(Wish.WithoutMachine.class)
                .noneMatch(without -> without.machine().equalsIgnoreCase(name));
    }

    boolean allowsHolder(String machine, String holder) {
        return allowsMachine(machine)
                && wishes.of(Wish.WithoutHolder.class)
                        .noneMatch(without -> without.machine().equalsIgnoreCase(machine)
                                && without.holder().equalsIgnoreCase(holder));
    }

    private static boolean isOn(Choice choice, String machine) {
        return choice.machine().name().equalsIgnoreCase(machine);
    }

    private static boolean isIn(Choice choice, String holder) {
        return HolderName.of(choice.holding()).equalsIgnoreCase(holder);
    }

    private static boolean isBy(Standing work, Choice choice, String feature) {
        return Gripping.feature(work, choice).filter(feature::equalsIgnoreCase).isPresent();
    }

    /** The numbers of the wishes for a grip that a holding fulfils. */
    BitSet met(Standing work, Choice choice) {
        var met = new BitSet(grips.size());
        for (int i = 0; i < grips.size(); i++) {
            met.set(i, isBy(work, choice, grips.get(i).feature()));
        }
        return met;
    }

    /** Whether every grip that was asked for has come true. */
    boolean isMet(BitSet met) {
        return met.cardinality() == grips.size();
    }

    /** The tasks that must wait because something else is to be made in an earlier set-up. */
    BitSet waiting(Standing work) {
        var waiting = new BitSet(work.tasks().size());
        wishes.of(Wish.Before.class).forEach(order -> {
            BitSet first = tasks(work, order.first());
            first.andNot(work.done());
            if (!first.isEmpty()) {
                waiting.or(tasks(work, order.then()));
            }
        });
        return waiting;
    }

    private static BitSet tasks(Standing work, String feature) {
        var tasks = new BitSet(work.tasks().size());
        for (int i = 0; i < work.tasks().size(); i++) {
            Optional<String> name = FeatureName.of(work.tasks().get(i));
            tasks.set(
                    i,
                    name.filter(feature::equalsIgnoreCase).isPresent()
                            && isAsked(work.tasks().get(i)));
        }
        return tasks;
    }

    /** A centre hole is an aid to holding and no part of any feature. */
    private static boolean isAsked(Task task) {
        return !(task instanceof Task.CentreIn);
    }
}
