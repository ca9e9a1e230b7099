package stillroom.desk.shell;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import jakarta.servlet.ServletException;
import java.util.function.Function;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What a person sees when something cannot be answered: one sentence and a way on, never a stack trace. */
public final class Faults {
    private static final Logger LOG = LoggerFactory.getLogger(Faults.class);

    /**
     * The page of a fault.
     *
     * @param sentence what happened and what to do
     */
    public record FaultPage(Frame frame, int status, String sentence) {}

    private static final String TOO_LARGE =
            "What was sent is larger than Stillroom takes in one go. Nothing was changed; shorten it and send again.";
    private static final String BROKEN =
            "What was sent broke off or cannot be read. Nothing was changed; send it again.";

    private Faults() {}

    /** The server says only in words that a file was over its limit. */
    private static boolean tooLarge(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (String.valueOf(cause.getMessage()).contains("exceeded")) {
                return true;
            }
        }
        return false;
    }

    static void add(RoutesConfig routes, Pages pages, Function<String, Frame> frames) {
        routes.exception(HttpResponseException.class, (fault, request) -> {
            String sentence = fault.getMessage() == null || fault.getMessage().isBlank()
                    ? "This cannot be answered."
                    : fault.getMessage();
            answer(request, pages, frames, fault.getStatus(), sentence(fault.getStatus(), sentence));
        });
        routes.exception(
                ServletException.class,
                (fault, request) -> answer(
                        request, pages, frames, tooLarge(fault) ? 413 : 400, tooLarge(fault) ? TOO_LARGE : BROKEN));
        routes.exception(Exception.class, (fault, request) -> {
            LOG.error("{} {}", request.method(), request.path(), fault);
            answer(
                    request,
                    pages,
                    frames,
                    500,
                    "Stillroom has a fault here. Nothing that was confirmed before is lost; go back and try again.");
        });
    }

    /** The framework's own words for the cases that it finds itself are put into ours. */
    private static String sentence(int status, String given) {
        return switch (status) {
            case 404 ->
                given.startsWith("Endpoint") || given.equals("Not Found") ? "There is no page at this address." : given;
            case 405 -> "This address does not take what was sent.";
            case 413 -> TOO_LARGE;
            default -> given;
        };
    }

    private static void answer(
            Context request, Pages pages, Function<String, Frame> frames, int status, String sentence) {
        if (status == 413) {
            Transfer.takeOffTheLine(request);
        }
        request.status(status);
        if (request.header("HX-Request") != null) {
            request.contentType("text/plain; charset=utf-8").result(sentence);
            return;
        }
        request.html(pages.render("shell/fault.jte", new FaultPage(frames.apply(heading(status)), status, sentence)));
    }

    private static String heading(int status) {
        return switch (status) {
            case 403 -> "Not from here";
            case 404 -> "Not found";
            case 409 -> "Changed meanwhile";
            case 413 -> "Too large";
            default -> status < 500 ? "That does not go" : "A fault";
        };
    }
}
