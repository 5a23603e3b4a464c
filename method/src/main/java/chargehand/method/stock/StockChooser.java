package chargehand.method.stock;

import chargehand.method.plan.Method.PassedOver;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Rack;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;

/** Looks through the rack for what a part, or a number of them, can be made from. */
public final class StockChooser {
    private final Part part;
    private final int count;
    private final CuttingUp cuttingUp;
    private final Wanted wanted;

    private StockChooser(Part part, int count, CuttingUp cuttingUp) {
        this.part = part;
        this.count = count;
        this.cuttingUp = cuttingUp;
        this.wanted = Wanted.of(part);
    }

    /**
     * Every piece on the rack that the parts will come out of, best first, and why the others were passed over. The whole
     * count comes out of one entry of the rack; bars of different entries are not put together. A part that comes back to be
     * altered is its own stock.
     *
     * @param part what is to be made
     * @param count how many, at least one
     * @param rack what there is
     * @param cuttingUp how this shop cuts stock up
     */
    public static Candidates candidates(Part part, int count, Rack rack, CuttingUp cuttingUp) {
        if (count < 1) {
            throw new IllegalArgumentException("at least one part is made, not " + count);
        }
        return OldPart.candidates(part).orElseGet(() -> new StockChooser(part, count, cuttingUp).look(rack));
    }

    /** What becomes of one piece: candidates, or a reason why there are none. */
    private record Looked(List<Candidate> candidates, String why, boolean material) {
        static Looked passedOver(String why) {
            return new Looked(List.of(), why, true);
        }

        static Looked otherMaterial(String why) {
            return new Looked(List.of(), why, false);
        }
    }

    private Candidates look(Rack rack) {
        List<Candidate> fit = new ArrayList<>();
        List<PassedOver> passedOver = new ArrayList<>();
        List<PassedOver> otherMaterial = new ArrayList<>();
        for (Piece piece : rack.pieces()) {
            Looked looked = look(piece);
            fit.addAll(looked.candidates());
            if (looked.candidates().isEmpty()) {
                (looked.material() ? passedOver : otherMaterial)
                        .add(new PassedOver(piece.name(), piece.says() + ": " + looked.why() + "."));
            }
        }
        passedOver.addAll(otherMaterial);
        fit.sort(Thrift.bestFirst(part, count));
        return new Candidates(fit, passedOver);
    }

    private Looked look(Piece piece) {
        return switch (wanted.answeredBy(piece)) {
            case Answer.WillNotDo(String why) -> Looked.otherMaterial(why);
            case Answer.WillDo answer -> look(piece, answer);
        };
    }

    private Looked look(Piece piece, Answer.WillDo answer) {
        return switch (room(piece)) {
            case Room.NotEnough(String why) -> Looked.passedOver(why);
            case Room.Enough room -> cutUp(new Suitable(part, piece, answer, room));
        };
    }

    private Room room(Piece piece) {
        return switch (part.body()) {
            case Body.Turned body -> TurnedRoom.in(part, body, piece);
            case Body.Block block -> BlockRoom.in(part, block, piece);
        };
    }

    private Looked cutUp(Suitable suitable) {
        List<CuttingUp.Cut> cuts = cuts(suitable.room());
        if (cuts.isEmpty()) {
            return Looked.passedOver("it neither goes through a lathe's spindle to be parted off nor into the saw");
        }
        List<Candidate> candidates = cuts.stream()
                .flatMap(cut -> suitable.candidate(cut, count).stream())
                .toList();
        return new Looked(candidates, candidates.isEmpty() ? suitable.tooFew(cuts, count) : "", true);
    }

    private List<CuttingUp.Cut> cuts(Room.Enough room) {
        return switch (part.body()) {
            case Body.Turned body -> cuttingUp.forTurned(room.raw(), room.along());
            case Body.Block block -> cuttingUp.forBlock(room.raw(), room.along());
        };
    }
}
