package chargehand.book.store;

import chargehand.book.Signed;
import chargehand.book.shop.Shop;
import chargehand.book.shop.ShopTexts;
import java.util.Optional;

/** What the book holds of the shop itself. */
public interface ShopPages {
    /** The shop; {@link Shop#NEW} until it says something of itself. */
    Shop shop();

    void keep(Shop shop);

    /** The latest edition of the kit and rack; {@link ShopTexts#NONE} before there is any. */
    ShopTexts texts();

    /** The kit and rack as they were in one edition; empty when there was none of that number. */
    Optional<ShopTexts> texts(int edition);

    /** Adds an edition, which must be the one after the latest. */
    void add(ShopTexts texts, Signed by);
}
