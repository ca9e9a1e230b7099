package stillroom.desk.shell;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.http.Context;
import java.util.Map;

/** Turns a page record into HTML by its template. Thread-safe. */
public final class Pages {
    private final TemplateEngine templates =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "stillroom.desk.templates");

    /** Answers with a page. {@code template} is its path below the desk package, such as {@code today/today.jte}. */
    public void show(Context request, String template, Object page) {
        request.html(render(template, page));
    }

    /** Answers a form that could not be taken: the page again with what was typed and why. */
    public void showAgain(Context request, String template, Object page) {
        request.status(422).html(render(template, page));
    }

    /** The HTML of a template with several parameters, by name. */
    public String render(String template, Map<String, Object> parameters) {
        StringOutput html = new StringOutput(16_384);
        templates.render(template, parameters, html);
        return html.toString();
    }

    /** The HTML of a page or of a sheet to be printed. */
    public String render(String template, Object page) {
        StringOutput html = new StringOutput(16_384);
        templates.render(template, page, html);
        return html.toString();
    }
}
