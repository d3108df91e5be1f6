package crumbclock.report.html;

import crumbclock.domain.day.DayNews;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.report.view.PlanView;
import freemarker.template.TemplateModelException;

/**
 * The plan as one self-contained page. A plan that the audit found fault with is shown too, and says so at its top and
 * in every section. Equal problem and plan give equal bytes.
 */
public final class PlanPage {

    private PlanPage() {
    }

    /** @throws IllegalStateException when a template of the program is broken */
    public static String render(Problem problem, Plan plan) {
        return render(new PageModel(new PlanView(problem, plan)));
    }

    /**
     * The same for a plan made during the day: what is different for each person stands first. What happened may have
     * broken rules; these are told apart from rules that the plan breaks from now on.
     *
     * @throws IllegalStateException when a template of the program is broken
     */
    public static String render(Problem problem, Plan plan, DayNews news) {
        return render(new PageModel(new PlanView(problem, plan), news));
    }

    private static String render(PageModel model) {
        try {
            return Templates.render("page.ftlh", model.values());
        } catch (TemplateModelException e) {
            throw new IllegalStateException("the page's values failed: " + e.getMessage(), e);
        }
    }
}
