package crumbclock.report.view;

import crumbclock.domain.day.DayNews.Change;

/** One change for one person, in words. */
public final class ChangeWords {

    private ChangeWords() {
    }

    /** {@code fill (B06), was 12:34}, or who it is taken over from or by. */
    public static String of(PlanView view, Change change) {
        String what = (change.touch().isEmpty() ? "" : change.touch() + ": ") + view.stepName(change.stepId()) + ", "
                + view.ownerLabel(view.ownerId(change.stepId()));
        String others = String.join(" and ", change.others());
        return switch (change.kind()) {
            case MOVED -> what + ", was " + view.clock().timeSeenFrom(change.minute(), change.beforeMinute());
            case NEW -> what + (others.isEmpty() ? ", new" : ", instead of " + others);
            case GONE -> "not " + what + (others.isEmpty() ? ", it is not done" : ", " + others + " does it");
        };
    }
}
