package crumbclock.app.pace;

import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.TimetableBuilder.aTimetable;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.pace.PaceReport;
import crumbclock.domain.pace.PaceRow;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.problem.Problem;
import crumbclock.fixture.PersonBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.TimetableBuilder;
import java.util.ArrayList;
import java.util.List;

/** One person who coats seven cakes of 20 minutes each, at 60, 120, 180 ... ; what is written down differs. */
abstract class CoatedCakes {

    static final int CAKES = 7;
    static final int PLAIN = 20;

    final List<StepEvent> steps = new ArrayList<>();
    final List<KitchenEvent> kitchen = new ArrayList<>();
    final PersonBuilder ana = aPerson("ana").onShift(0, 600).onShift(900, 1400);

    static String cake(int number) {
        return "C" + number + "/coat";
    }

    static int at(int number) {
        return number * 60;
    }

    Problem problem() {
        ProblemBuilder problem = aProblem().person(ana);
        for (int i = 1; i <= CAKES; i++) {
            problem.step(handsOn(cake(i), PLAIN).kind("coating"));
        }
        return problem.build();
    }

    static TimetableBuilder plan() {
        var plan = aTimetable();
        for (int i = 1; i <= CAKES; i++) {
            plan.work(cake(i), at(i), at(i) + PLAIN, "ana");
        }
        return plan;
    }

    void line(int minute, String step, DayWord word) {
        steps.add(new StepEvent(steps.size() + 1, minute, List.of(step), word, word == DayWord.SLOWER ? 10 : 0));
    }

    void took(int number, int minutes) {
        line(at(number), cake(number), DayWord.STARTED);
        line(at(number) + minutes, cake(number), DayWord.DONE);
    }

    PaceReport learned() {
        return learned(problem(), plan().build());
    }

    PaceReport learned(Problem problem, Timetable timetable) {
        return LearnPaces.learn(problem.kitchen(), List.of(new FinishedDay(problem, timetable, new DayLog(steps, kitchen, List.of()))));
    }

    PaceRow coating() {
        return learned().paces().stream().filter(row -> row.workKind().equals("coating")).findFirst().orElseThrow();
    }

    List<String> reasons() {
        return learned().leftOut().stream().map(one -> one.stepId() + ": " + one.reason()).toList();
    }
}
