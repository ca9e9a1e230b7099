package stillroom.desk.shell;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Supplier;
import stillroom.desk.shell.Frame.RunningTimer;
import stillroom.desk.shell.Frame.Section;
import stillroom.ledger.Ledger;
import stillroom.ledger.workshop.Workshop;

/**
 * What all pages share: the ledger, the clock, the templates. Thread-safe.
 *
 * @param timers the timers that run at the bench now
 */
public record Desk(Workspace workspace, Clock clock, Pages pages, Supplier<List<RunningTimer>> timers) {
    public Ledger ledger() {
        return workspace.ledger();
    }

    public Instant now() {
        return clock.instant();
    }

    /** Today where the workshop is. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    public ZoneId zone() {
        return clock.getZone();
    }

    /** The frame of a page, with the notice that the request before asked for. */
    public Frame frame(Context request, String title, Section section) {
        String said = request.queryParam("did");
        return frame(title, section).withNotice(said == null ? "" : Notices.sentence(said));
    }

    public Frame frame(String title, Section section) {
        Workshop workshop = ledger().settings().read();
        return new Frame(title, section, workshop.name(), workshop.demonstration(), timers.get(), "");
    }

    /** A whole number in the path, such as an id; an address with anything else does not exist. */
    public static long id(Context request, String name) {
        try {
            return Long.parseLong(request.pathParam(name));
        } catch (NumberFormatException notANumber) {
            throw new NotFoundResponse("There is no page at this address.");
        }
    }
}
