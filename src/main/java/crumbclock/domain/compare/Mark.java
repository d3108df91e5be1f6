package crumbclock.domain.compare;

import java.util.Locale;

/** How a value stands among the others of its row. */
public enum Mark {
    NONE, BEST, WORST;

    /** For people; empty for none. */
    public String word() {
        return this == NONE ? "" : name().toLowerCase(Locale.ROOT);
    }
}
