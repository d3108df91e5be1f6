package crumbclock.domain.plan;

/** The rules that a sound plan never breaks. One rule, one number, everywhere. */
public enum Rule {
    R01("order of work"),
    R02("not too long"),
    R03("hands"),
    R04("touches"),
    R05("presence"),
    R06("equipment and surfaces"),
    R07("oven room"),
    R08("oven heat"),
    R09("oven door"),
    R10("shelf fit"),
    R11("store class"),
    R12("life"),
    R13("allergens"),
    R14("not before, not when shut"),
    R15("what happened stays"),
    R16("hand-over"),
    R17("complete");

    private final String title;

    Rule(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
