package crumbclock.app.pace;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.pace.LeftOut;
import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.pace.SeenStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Real minutes from finished days. A step counts when somebody wrote down when it was started and when it was done, and nothing came
 * between; its person is the plan's. The order of days and of their lines does not count.
 */
public final class LearnPaces {

    private LearnPaces() {
    }

    /** @param kitchen whose people and paces in use are asked for */
    public static PaceReport learn(Kitchen kitchen, List<FinishedDay> days) {
        Set<String> known = kitchen.people().stream().map(Person::id).collect(Collectors.toUnmodifiableSet());
        List<SeenStep> seen = new ArrayList<>();
        List<LeftOut> leftOut = new ArrayList<>();
        int withoutStart = 0;
        int withoutTimes = 0;
        for (FinishedDay day : days) {
            var attempts = new Attempts(day.log());
            var real = new RealMinutes(day, attempts.all(), known);
            seen.addAll(real.seen());
            leftOut.addAll(real.leftOut());
            withoutStart += attempts.withoutStart();
            withoutTimes += attempts.withoutTimes();
        }
        return PaceReport.of(kitchen, days.size(), seen, leftOut, withoutStart, withoutTimes);
    }
}
