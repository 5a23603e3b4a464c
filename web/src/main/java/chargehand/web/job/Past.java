package chargehand.web.job;

import chargehand.book.job.Move;

/** Something that was done with a job: what, when and by whom. */
public record Past(String what, String note, String when, String who) {
    static Past of(Move move) {
        String what = move.from() == move.to()
                ? "Changed"
                : move.from().word() + " → " + move.to().word();
        return new Past(what, move.note(), Days.say(move.by().at()), move.by().who());
    }
}
