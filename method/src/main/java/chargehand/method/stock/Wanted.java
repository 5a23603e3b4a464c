package chargehand.method.stock;

import chargehand.method.rack.Piece;
import chargehand.method.rack.Piece.Sureness;
import chargehand.part.Part;
import chargehand.trade.material.Material;
import chargehand.trade.material.Materials;
import chargehand.trade.material.SteamFitness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The material a part is to be made from and what it must bear, and whether a piece on the rack answers it. */
final class Wanted {
    private final String written;
    private final Optional<Material> asked;
    private final Duty duty;

    private Wanted(String written, Duty duty) {
        this.written = written;
        this.asked = Materials.find(written);
        this.duty = duty;
    }

    static Wanted of(Part part) {
        return new Wanted(part.material(), Duty.of(part.duty()));
    }

    Answer answeredBy(Piece piece) {
        return piece.sure() == Sureness.UNKNOWN ? unknown(piece) : known(piece);
    }

    private Answer unknown(Piece piece) {
        if (duty != Duty.NONE) {
            return new Answer.WillNotDo("nobody knows its material, and for " + duty.words() + " it must be known");
        }
        Optional<Material> family = Materials.find(piece.material());
        boolean related = family.isPresent()
                && asked.isPresent()
                && family.get().group() == asked.get().group();
        return related
                ? new Answer.WillDo(
                        Candidate.Match.EQUIVALENT,
                        Optional.empty(),
                        List.of(piece.name() + " is taken to be "
                                + family.get().group().title()
                                + " of some sort: ask whoever wants the part whether that will do."))
                : new Answer.WillNotDo("nobody knows its material, and " + written + " is asked for");
    }

    private Answer known(Piece piece) {
        Optional<Material> material = Materials.find(piece.material());
        List<String> cautions = new ArrayList<>();
        Optional<Candidate.Match> match = match(piece, material, cautions);
        if (match.isEmpty()) {
            return new Answer.WillNotDo("it is " + piece.material() + ", and " + written + " is asked for");
        }
        Optional<String> unfit = unfit(piece, material);
        if (unfit.isPresent()) {
            return new Answer.WillNotDo(unfit.get());
        }
        addDoubts(piece, material, cautions);
        return new Answer.WillDo(match.get(), material, cautions);
    }

    private Optional<Candidate.Match> match(Piece piece, Optional<Material> material, List<String> cautions) {
        if (asked.isEmpty() || material.isEmpty()) {
            boolean sameWords = piece.material().trim().equalsIgnoreCase(written.trim());
            return sameWords ? Optional.of(Candidate.Match.SAME) : Optional.empty();
        }
        if (Equivalents.isKindOf(material.get(), asked.get())) {
            return Optional.of(Candidate.Match.SAME);
        }
        Optional<String> mind = Equivalents.mind(asked.get(), material.get(), duty);
        mind.ifPresent(say -> cautions.add(say + "; ask whoever wants the part."));
        return mind.map(say -> Candidate.Match.EQUIVALENT);
    }

    private Optional<String> unfit(Piece piece, Optional<Material> material) {
        if (duty.isCareful() && piece.sure() == Sureness.TAKEN_FOR) {
            return Optional.of("it is only taken to be " + piece.material() + ", and for " + duty.words()
                    + " the material must be known");
        }
        boolean spoilt = duty == Duty.STEAM
                && material.filter(each -> each.steam() == SteamFitness.NO).isPresent();
        return spoilt ? Optional.of(piece.material() + " is not used for steam") : Optional.empty();
    }

    private void addDoubts(Piece piece, Optional<Material> material, List<String> cautions) {
        if (piece.sure() == Sureness.TAKEN_FOR) {
            cautions.add(piece.name() + " is only taken to be " + piece.material()
                    + ": try a cut and a file on it before the job hangs on it.");
        }
        if (duty.isCareful() && piece.sure() == Sureness.MARKED) {
            cautions.add(piece.name() + " has no certificate: the competent person says whether it will do for "
                    + duty.words() + ".");
        }
        boolean ask = duty == Duty.STEAM
                && material.filter(each -> each.steam() == SteamFitness.ASK).isPresent();
        if (ask) {
            cautions.add("Whether " + piece.material() + " will do for this steam is for the competent person to say.");
        }
    }
}
