package crumbclock.report.view;

import crumbclock.domain.plan.Finding;

/** A broken rule in a sentence. */
public final class FindingWords {

    private FindingWords() {
    }

    /** {@code R01 one thing at a time: Sat 10:00–10:15, Ann: …}; without the place where there is none. */
    public static String sentence(ClockText clock, Finding finding) {
        return told(clock, finding, finding.place().isEmpty() ? "" : ", " + finding.place());
    }

    /** The same, and the place is left to the message. */
    public static String withoutPlace(ClockText clock, Finding finding) {
        return told(clock, finding, "");
    }

    private static String told(ClockText clock, Finding finding, String place) {
        return finding.rule() + " " + finding.rule().title() + ": " + clock.daySpan(finding.when()) + place + ": " + finding.message();
    }
}
