package crumbclock.units;

/** What a unit measures, and the base unit that the whole program counts in. */
public enum Dimension {
    LENGTH("mm"), AREA("mm²"), VOLUME("mL"), MASS("g");

    private final String base;

    Dimension(String base) {
        this.base = base;
    }

    /** Symbol of the base unit. */
    public String base() {
        return base;
    }
}
