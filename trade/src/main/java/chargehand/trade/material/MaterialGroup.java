package chargehand.trade.material;

/** Families of material that are cut and treated alike. */
public enum MaterialGroup {
    CARBON_STEEL("carbon steel"),
    ALLOY_STEEL("alloy steel"),
    TOOL_STEEL("tool steel"),
    STAINLESS("stainless"),
    CAST_IRON("cast iron"),
    BRONZE("bronze"),
    BRASS("brass"),
    COPPER("copper"),
    ALUMINIUM("aluminium"),
    TITANIUM("titanium"),
    PLASTIC("plastic");

    private final String title;

    MaterialGroup(String title) {
        this.title = title;
    }

    /** The family as a person calls it. */
    public String title() {
        return title;
    }

    /** Whether it belongs to the steels, stainless ones too. */
    public boolean isSteel() {
        return switch (this) {
            case CARBON_STEEL, ALLOY_STEEL, TOOL_STEEL, STAINLESS -> true;
            case CAST_IRON, BRONZE, BRASS, COPPER, ALUMINIUM, TITANIUM, PLASTIC -> false;
        };
    }

    static MaterialGroup of(String title) {
        for (MaterialGroup group : values()) {
            if (group.title.equals(title)) {
                return group;
            }
        }
        throw new IllegalStateException("no group of materials is called '" + title + "'");
    }
}
