package stillroom.desk.workshop.vessels;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.ToolShed;
import stillroom.desk.shell.Typed;
import stillroom.desk.workshop.vessels.VesselsPage.Done;
import stillroom.desk.workshop.vessels.VesselsPage.One;
import stillroom.desk.workshop.vessels.VesselsPage.Row;
import stillroom.formulary.hygiene.Cleaning;
import stillroom.formulary.hygiene.HoldLimits;
import stillroom.formulary.hygiene.Standing;
import stillroom.formulary.hygiene.Tool;

/** The vessels and tools of the workshop. */
public final class VesselsRoutes {
    private static final String PATH = "/workshop/vessels";
    private static final int LONGEST_HOLD_HOURS = 10_000;

    private final Desk desk;
    private final ToolShed shed;

    private VesselsRoutes(Desk desk) {
        this.desk = desk;
        this.shed = new ToolShed(desk);
    }

    public static void add(RoutesConfig routes, Desk desk) {
        VesselsRoutes vessels = new VesselsRoutes(desk);
        routes.get(PATH, request -> vessels.list(request, Typed.NOTHING, vessels.limits()));
        routes.post(PATH, vessels::add);
        routes.post(PATH + "/limits", vessels::changeLimits);
        routes.get(PATH + "/{name}", vessels::one);
        routes.post(PATH + "/{name}", vessels::act);
        routes.post(PATH + "/{name}/remove", vessels::remove);
    }

    private void list(Context request, Typed fresh, Typed limits) {
        VesselsPage page = new VesselsPage(
                desk.frame(request, "Vessels and tools", Section.WORKSHOP),
                shed.standings().stream().map(this::row).toList(),
                fresh,
                limits);
        request.html(desk.pages().render("workshop/vessels/vessels.jte", page));
    }

    private Row row(Standing standing) {
        return new Row(
                standing.tool().name(),
                path(standing.tool()),
                what(standing.tool()),
                standing.state().words(),
                standing.sanitised(),
                shed.says(standing));
    }

    private static String path(Tool tool) {
        return PATH + "/"
                + URLEncoder.encode(tool.name(), StandardCharsets.UTF_8).replace("+", "%20");
    }

    private static String what(Tool tool) {
        return (tool.vessel() ? "vessel" : "tool")
                + tool.tare()
                        .map(tare -> ", empty " + Format.grams(tare) + " g")
                        .orElse("")
                + tool.capacity()
                        .map(most -> ", holds " + Format.grams(most) + " g")
                        .orElse("")
                + ", counts as sanitised for " + tool.holdHours() + " h"
                + (tool.note().isBlank() ? "" : ". " + tool.note());
    }

    private void add(Context request) {
        Input input = Input.of(request);
        String name = input.required("name", "The name");
        if (name.length() > 60 || name.contains("/")) {
            input.refuse("name", "A name has up to 60 characters and no slash.");
        }
        if (shed.tool(name).isPresent()) {
            input.refuse("name", "Another bears this name.");
        }
        Optional<Integer> hold = input.whole("hold", "The hold time", 1, LONGEST_HOLD_HOURS);
        if (!input.isSound()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            list(request, input.typed(), limits());
            return;
        }
        Tool tool = new Tool(
                name,
                !input.text("kind").equals("tool"),
                input.grams("tare", "The empty weight"),
                input.grams("capacity", "What it holds"),
                hold.orElse(Tool.USUAL_HOLD_HOURS),
                input.text("note"));
        shed.tools().write(name, tool);
        request.redirect(PATH + "?did=added", HttpStatus.SEE_OTHER);
    }

    private Typed limits() {
        HoldLimits limits = shed.limits();
        return new Typed(
                Map.of(
                        "phase", Integer.toString(limits.phase()),
                        "bulk", Integer.toString(limits.bulk()),
                        "slurry", Integer.toString(limits.slurry()),
                        "premix", Integer.toString(limits.premix())),
                List.of());
    }

    private void changeLimits(Context request) {
        Input input = Input.of(request);
        List<Optional<Integer>> hours = new ArrayList<>();
        for (String field : List.of("phase", "bulk", "slurry", "premix")) {
            Optional<Integer> read = input.whole(field, "The time", 1, LONGEST_HOLD_HOURS);
            if (read.isEmpty() && !input.hasProblem(field)) {
                input.refuse(field, "The time is missing.");
            }
            hours.add(read);
        }
        if (!input.isSound()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            list(request, Typed.NOTHING, input.typed());
            return;
        }
        shed.writeLimits(new HoldLimits(
                hours.get(0).orElseThrow(),
                hours.get(1).orElseThrow(),
                hours.get(2).orElseThrow(),
                hours.get(3).orElseThrow()));
        request.redirect(PATH + "?did=saved", HttpStatus.SEE_OTHER);
    }

    private Tool tool(Context request) {
        return shed.tool(request.pathParam("name"))
                .orElseThrow(() -> new NotFoundResponse("No vessel or tool bears this name."));
    }

    private void one(Context request) {
        show(request, tool(request), Typed.NOTHING);
    }

    private void show(Context request, Tool tool, Typed typed) {
        List<Done> history = new ArrayList<>(shed.history(tool).stream()
                .map(act -> new Done(
                        Format.moment(act.at(), desk.zone()),
                        words(act.act()) + (act.agent().isBlank() ? "" : ": " + act.agent()),
                        act.by()))
                .toList());
        Collections.reverse(history);
        One page = new One(
                desk.frame(request, tool.name(), Section.WORKSHOP),
                tool.name(),
                path(tool),
                what(tool),
                shed.says(shed.standing(tool)),
                typed,
                Choice.of(Cleaning.Act.class, VesselsRoutes::words),
                history);
        request.html(desk.pages().render("workshop/vessels/vessel.jte", page));
    }

    private static String words(Cleaning.Act act) {
        return switch (act) {
            case USED -> "used, dirty";
            case CLEANED -> "cleaned";
            case SANITISED -> "sanitised";
        };
    }

    private void act(Context request) {
        Tool tool = tool(request);
        Input input = Input.of(request);
        String by = input.required("by", "Who did it");
        Optional<Cleaning.Act> act = input.choice("act", "What was done", Cleaning.Act.class);
        String agent = input.text("agent");
        if (act.isEmpty() && !input.hasProblem("act")) {
            input.refuse("act", "Say what was done.");
        }
        if (act.equals(Optional.of(Cleaning.Act.SANITISED)) && agent.isEmpty()) {
            input.refuse("agent", "Say with what it was sanitised.");
        }
        if (!input.isSound() || act.isEmpty()) {
            request.status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(request, tool, input.typed());
            return;
        }
        shed.note(tool, by, act.get(), agent);
        request.redirect(path(tool) + "?did=saved", HttpStatus.SEE_OTHER);
    }

    private void remove(Context request) {
        shed.tools().remove(tool(request).name());
        request.redirect(PATH + "?did=saved", HttpStatus.SEE_OTHER);
    }
}
