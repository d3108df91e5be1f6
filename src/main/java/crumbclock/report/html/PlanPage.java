package crumbclock.report.html;

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
        try {
            return Templates.render("page.ftlh", new PageModel(new PlanView(problem, plan)).values());
        } catch (TemplateModelException e) {
            throw new IllegalStateException("the page's values failed: " + e.getMessage(), e);
        }
    }
}
