package crumbclock.report.html;

import freemarker.core.HTMLOutputFormat;
import freemarker.core.TemplateClassResolver;
import freemarker.core.TemplateHTMLOutputModel;
import freemarker.template.Configuration;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateModelException;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;

/** The program's page templates. Texts that end up in a page are escaped unless they are markup that the program made itself. */
public final class Templates {

    private static final Configuration TEMPLATES = templates();

    private Templates() {
    }

    private static Configuration templates() {
        var configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setClassForTemplateLoading(Templates.class, "/crumbclock/report");
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

    /** Reads a template, which is kept. */
    static void prepare(String template) {
        try {
            TEMPLATES.getTemplate(template);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Fills a template.
     *
     * @param values what it may use, by name
     * @throws IllegalStateException when a template of the program is broken
     */
    public static String render(String template, Map<String, Object> values) {
        var out = new StringWriter();
        try {
            TEMPLATES.getTemplate(template).process(values, out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (TemplateException e) {
            throw new IllegalStateException("the page's template failed: " + e.getMessageWithoutStackTop(), e);
        }
        return out.toString();
    }

    /** Markup of the program's own, such as a drawing, to be taken as it is. */
    public static TemplateHTMLOutputModel markup(String markup) {
        try {
            return HTMLOutputFormat.INSTANCE.fromMarkup(markup);
        } catch (TemplateModelException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
