package stillroom.desk.batches.bench;

import java.util.List;
import java.util.Optional;
import stillroom.desk.batches.BatchWork;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.ToolShed;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.hygiene.Cleaning;
import stillroom.formulary.hygiene.Standing;
import stillroom.formulary.hygiene.Tool;

/** Reads the form that makes a vessel ready, with what the workshop knows of the vessel. */
record Readying(BatchWork work, Input input) {
    BatchEvent.VesselReady event(String name, List<String> phases) {
        ToolShed shed = new ToolShed(work.desk());
        Optional<Tool> known = shed.tool(name);
        String agent = input.text("agent");
        if (!agent.isEmpty() && !name.isBlank() && input.isSound()) {
            Tool tool = known.orElseGet(() -> listed(shed, name));
            shed.note(tool, input.text("by"), Cleaning.Act.SANITISED, agent);
            known = Optional.of(tool);
        }
        Optional<Standing> standing = known.map(shed::standing);
        String clean = clean(shed, standing) + tools(shed);
        return new BatchEvent.VesselReady(
                name,
                input.grams("tare", "The empty weight")
                        .or(() -> standing.flatMap(one -> one.tool().tare())),
                input.grams("capacity", "What it holds")
                        .or(() -> standing.flatMap(one -> one.tool().capacity())),
                clean,
                phases,
                Optional.of(input.text("asItIs")).filter(why -> !why.isEmpty()));
    }

    /** The spatulas and stirrers that are taken, each with how clean it is; one that is not sanitised asks why. */
    private String tools(ToolShed shed) {
        StringBuilder said = new StringBuilder();
        for (Tool tool : taken(shed)) {
            Standing standing = shed.standing(tool);
            if (!standing.sanitised() && input.text("asItIs").isEmpty()) {
                input.refuse(
                        Panel.TOOL + tool.name(),
                        tool.name() + " is not sanitised (" + standing.state().words()
                                + "). Sanitise it first, or say below why it is used as it is.");
            }
            said.append(" With ").append(tool.name()).append(": ").append(shed.says(standing));
        }
        return said.toString();
    }

    private List<Tool> taken(ToolShed shed) {
        return shed.tools().list().stream()
                .filter(tool -> !tool.vessel() && input.has(Panel.TOOL + tool.name()))
                .toList();
    }

    /** What was taken is dirty from now on, until somebody cleans it. */
    void markUsed() {
        ToolShed shed = new ToolShed(work.desk());
        taken(shed)
                .forEach(tool -> shed.note(
                        tool,
                        input.text("by"),
                        Cleaning.Act.USED,
                        "batch " + work.batch().code()));
    }

    /** What the workshop knows stands before what is typed; where it knows nothing, something is typed, or why it is used as it is. */
    private String clean(ToolShed shed, Optional<Standing> standing) {
        if (standing.isEmpty() && input.text("asItIs").isEmpty()) {
            return input.required("clean", "How it was cleaned");
        }
        String typed = input.text("clean");
        return (standing.map(shed::says).orElse("") + " " + typed).strip();
    }

    private Tool listed(ToolShed shed, String name) {
        Tool tool = new Tool(
                name,
                true,
                input.grams("tare", "The empty weight"),
                input.grams("capacity", "What it holds"),
                Tool.USUAL_HOLD_HOURS,
                "");
        shed.tools().write(name, tool);
        return tool;
    }
}
