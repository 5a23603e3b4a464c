package chargehand.book.use;

import chargehand.book.Entered;
import chargehand.book.shop.Shop;
import chargehand.book.shop.ShopAsWritten;
import chargehand.book.store.Book;

/** Keeps what the shop says of itself: its name, its own unit, the number of its first job. */
public final class KeepShop {
    private final Book book;

    public KeepShop(Book book) {
        this.book = book;
    }

    public Shop shop() {
        return book.read(ledger -> ledger.shop().shop());
    }

    /** The shop as it is known from now on. */
    public Entered<Shop> keep(ShopAsWritten written) {
        return book.change(ledger -> {
            Entered<Shop> read = written.read(ledger.shop().shop());
            if (read instanceof Entered.Done<Shop>(Shop shop)) {
                ledger.shop().keep(shop);
            }
            return read;
        });
    }
}
