package crumbclock.domain.kitchen;

/** Where something may stand while nobody works on it. The first four are stores with shelves, the last two surfaces. */
public enum PlaceKind {
    FRIDGE, FREEZER, COOL_ROOM, AMBIENT, RACK, BENCH;

    /** Whether an item here counts as kept cold (rule R12): fridge or freezer. */
    public boolean keepsCold() {
        return this == FRIDGE || this == FREEZER;
    }

    /** Whether the place has shelves with positions (rule R10); otherwise only its area counts (rule R06). */
    public boolean hasShelves() {
        return this != RACK && this != BENCH;
    }
}
