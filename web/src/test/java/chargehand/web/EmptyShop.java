package chargehand.web;

import chargehand.book.Objection;
import chargehand.book.memory.MemoryBook;
import chargehand.book.method.PlannerReply;
import chargehand.book.use.Desk;
import chargehand.trade.sum.Sums;
import chargehand.web.serving.Counter;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;

/** A shop with an empty book and no kit, served. */
final class EmptyShop {
    private EmptyShop() {}

    static Server serve() {
        Desk desk = Desk.at(
                new MemoryBook(),
                (part, count, wishes, texts) ->
                        new PlannerReply.KitFaulty(List.of(new Objection("kit", "There is no kit."))),
                Clock.system(ZoneId.systemDefault()));
        return Server.start(new Counter(desk, Sums.load()), 0);
    }
}
