package chargehand.trade.material;

import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;

/** The kind of field that holds a material. */
public final class MaterialKind {
    /** A material by any of the names it goes by. */
    public static final Kind<Material> MATERIAL = Kinds.by("material", Materials::get, Material::name);

    private MaterialKind() {}
}
