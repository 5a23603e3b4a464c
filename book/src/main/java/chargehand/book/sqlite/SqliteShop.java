package chargehand.book.sqlite;

import chargehand.book.Signed;
import chargehand.book.shop.Shop;
import chargehand.book.shop.ShopTexts;
import chargehand.book.store.ShopPages;
import chargehand.measure.LengthUnit;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;

/** The shop's own pages in their tables. */
record SqliteShop(Handle handle) implements ShopPages {
    @Override
    public Shop shop() {
        return handle.createQuery("select * from shop")
                .map(SqliteShop::read)
                .findOne()
                .orElse(Shop.NEW);
    }

    private static Shop read(ResultSet row, StatementContext context) throws SQLException {
        boolean inch = LengthUnit.INCH.symbol().equals(row.getString("unit"));
        return new Shop(
                row.getString("name"), inch ? LengthUnit.INCH : LengthUnit.MILLIMETRE, Columns.job(row, "first_job"));
    }

    @Override
    public void keep(Shop shop) {
        String keep = """
                insert into shop (id, name, unit, first_job) values (1, :name, :unit, :firstJob)
                on conflict (id) do update set name = :name, unit = :unit, first_job = :firstJob
                """;
        handle.createUpdate(keep)
                .bind("name", shop.name())
                .bind("unit", shop.unit().symbol())
                .bind("firstJob", shop.firstJob().number())
                .execute();
    }

    @Override
    public ShopTexts texts() {
        return texts(edition()).orElse(ShopTexts.NONE);
    }

    private int edition() {
        return handle.createQuery("select coalesce(max(edition), 0) from shop_edition")
                .mapTo(Integer.class)
                .one();
    }

    @Override
    public Optional<ShopTexts> texts(int edition) {
        boolean known = handle.createQuery("select count(*) from shop_edition where edition = :edition")
                        .bind("edition", edition)
                        .mapTo(Integer.class)
                        .one()
                > 0;
        if (!known) {
            return edition == 0 ? Optional.of(ShopTexts.NONE) : Optional.empty();
        }
        Map<String, String> files = new HashMap<>();
        handle.createQuery("select name, text from shop_text where edition = :edition")
                .bind("edition", edition)
                .map((row, context) -> Map.entry(row.getString("name"), row.getString("text")))
                .forEach(file -> files.put(file.getKey(), file.getValue()));
        return Optional.of(new ShopTexts(edition, files));
    }

    @Override
    public void add(ShopTexts texts, Signed by) {
        Columns.sign(
                        handle.createUpdate("insert into shop_edition (edition, who, at) values (:edition, :who, :at)"),
                        by)
                .bind("edition", texts.edition())
                .execute();
        texts.files()
                .forEach((name, text) -> handle.createUpdate(
                                "insert into shop_text (edition, name, text) values (:edition, :name, :text)")
                        .bind("edition", texts.edition())
                        .bind("name", name)
                        .bind("text", text)
                        .execute());
    }
}
