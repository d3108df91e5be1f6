package crumbclock.report.html;

import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.report.view.PlanView;
import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * The plan as one self-contained page. A plan that the audit found fault with is shown too, and says so at its top and
 * in every section. Equal problem and plan give equal bytes.
 */
public final class PlanPage {

    private static final Configuration TEMPLATES = templates();

    private PlanPage() {
    }

    private static Configuration templates() {
        var configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setClassForTemplateLoading(PlanPage.class, "/crumbclock/report");
        configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
        configuration.setLocale(Locale.ROOT);
        configuration.setNumberFormat("computer");
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setInterpolationSyntax(Configuration.DOLLAR_INTERPOLATION_SYNTAX);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        return configuration;
    }

    /** @throws IllegalStateException when a template of the program is broken */
    public static String render(Problem problem, Plan plan) {
        var out = new StringWriter();
        try {
            TEMPLATES.getTemplate("page.ftlh").process(new PageModel(new PlanView(problem, plan)).values(), out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TemplateException e) {
            throw new IllegalStateException("the page's template failed: " + e.getMessageWithoutStackTop(), e);
        }
        return out.toString();
    }
}
