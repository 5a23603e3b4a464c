package chargehand.book.memory;

import chargehand.book.Signed;
import chargehand.book.shop.Shop;
import chargehand.book.shop.ShopTexts;
import chargehand.book.store.ShopPages;
import java.util.Optional;

/** The shop's own pages in memory. */
final class MemoryShop implements ShopPages {
    private final Rows<ShopTexts> editions;
    private Shop shop;

    MemoryShop() {
        this(Shop.NEW, new Rows<ShopTexts>().add(0, ShopTexts.NONE));
    }

    private MemoryShop(Shop shop, Rows<ShopTexts> editions) {
        this.shop = shop;
        this.editions = editions;
    }

    MemoryShop copy() {
        return new MemoryShop(shop, editions.copy());
    }

    @Override
    public Shop shop() {
        return shop;
    }

    @Override
    public void keep(Shop kept) {
        shop = kept;
    }

    @Override
    public ShopTexts texts() {
        return editions.last().orElse(ShopTexts.NONE);
    }

    @Override
    public Optional<ShopTexts> texts(int edition) {
        return editions.find(edition);
    }

    @Override
    public void add(ShopTexts texts, Signed by) {
        editions.add(texts.edition(), texts);
    }
}
