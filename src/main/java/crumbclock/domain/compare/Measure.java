package crumbclock.domain.compare;

/** What a figure counts, and so how it is shown. A moment is a minute from the problem's start. */
public enum Measure {
    COUNT, MINUTES, MOMENT, PERCENT, POINTS
}
