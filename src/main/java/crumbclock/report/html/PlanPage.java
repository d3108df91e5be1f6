package crumbclock.report.html;

import crumbclock.domain.day.DayNews;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.report.view.PlanView;

/**
 * The plan as one self-contained page. A plan that the audit found fault with is shown too, and says so at its top and
 * in every section. Equal problem and plan give equal bytes.
 */
public final class PlanPage {

    private static final String PAGE = "page.ftlh";

    private PlanPage() {
    }

    /** Reads the page's template; the first page does it otherwise. */
    public static void prepare() {
        Templates.prepare(PAGE);
    }

    /** @throws IllegalStateException when a template of the program is broken */
    public static String render(Problem problem, Plan plan) {
        return Templates.render(PAGE, new PageModel(new PlanView(problem, plan)).values());
    }

    /**
     * The same for a plan made during the day: what is different for each person stands first. What happened may have
     * broken rules; these are told apart from rules that the plan breaks from now on.
     *
     * @throws IllegalStateException when a template of the program is broken
     */
    public static String render(Problem problem, Plan plan, DayNews news) {
        return Templates.render(PAGE, new PageModel(new PlanView(problem, plan), news).values());
    }
}
