package stillroom.desk.shell;

import java.util.List;
import java.util.Optional;
import stillroom.formulary.hygiene.Cleaning;
import stillroom.formulary.hygiene.HoldLimits;
import stillroom.formulary.hygiene.Standing;
import stillroom.formulary.hygiene.Tool;
import stillroom.formulary.hygiene.Use;
import stillroom.ledger.document.Drawer;
import stillroom.ledger.document.Happenings;

/** The vessels and tools on the workshop's list, how clean each is now, and how long things may stand. */
public record ToolShed(Desk desk) {
    private static final String LIMITS = "workshop";

    public Drawer<Tool> tools() {
        return desk.ledger().drawer("tool", Tool.class);
    }

    private Happenings<Cleaning> cleanings() {
        return desk.ledger().happenings("tool", Cleaning.class);
    }

    /** How clean each is now, by name. */
    public List<Standing> standings() {
        return tools().list().stream().map(this::standing).toList();
    }

    /** Names are told apart without regard to capitals. */
    public Optional<Tool> tool(String name) {
        return tools().list().stream()
                .filter(tool -> tool.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }

    public Standing standing(Tool tool) {
        Optional<Use> use = desk.ledger()
                .batches()
                .lastUse(tool.name())
                .map(used ->
                        new Use(used.at(), used.row().batch().code(), used.row().productName()));
        return Standing.of(tool, history(tool), use, desk.now());
    }

    /** What was done to it, oldest first. */
    public List<Cleaning> history(Tool tool) {
        return cleanings().of(tool.name());
    }

    /** Notes that something was done to it now. */
    public void note(Tool tool, String by, Cleaning.Act act, String agent) {
        cleanings().add(tool.name(), desk.now(), new Cleaning(desk.now(), by, act, agent));
    }

    private Drawer<HoldLimits> limitsDrawer() {
        return desk.ledger().drawer("hold-times", HoldLimits.class);
    }

    public HoldLimits limits() {
        return limitsDrawer().read(LIMITS).orElse(HoldLimits.USUAL);
    }

    public void writeLimits(HoldLimits limits) {
        limitsDrawer().write(LIMITS, limits);
    }

    /** How clean it is, in one sentence. */
    public String says(Standing standing) {
        String last = standing.last()
                .map(act -> act.agent().isBlank()
                        ? ""
                        : (act.act() == Cleaning.Act.USED ? ", used for " : " with ") + act.agent())
                .orElse("");
        String when = standing.last()
                .map(act -> ", " + Format.moment(act.at(), desk.zone()) + last)
                .orElse("");
        return switch (standing.state()) {
            case UNKNOWN -> "Nothing is noted about it.";
            case DIRTY ->
                "Dirty"
                        + standing.lastUse()
                                .map(use -> ": last held " + use.product() + ", batch " + use.batchCode() + ", "
                                        + Format.moment(use.at(), desk.zone()))
                                .orElse(when)
                        + ".";
            case CLEAN -> "Clean, not sanitised" + when + ".";
            case SANITISED ->
                "Sanitised" + when + "; counts until "
                        + standing.expires()
                                .map(at -> Format.moment(at, desk.zone()))
                                .orElse("") + ".";
            case EXPIRED -> "Sanitised too long ago" + when + ".";
        };
    }
}
