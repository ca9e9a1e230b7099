package stillroom.desk.imports;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Frame.Section;

/**
 * The files of an upload: what was understood, how far the work is, what became of them.
 *
 * @param working whether it is being read or stored at this moment
 * @param sound how many things can be stored without a question
 * @param storable how many can be stored at all
 */
public record UploadPage(
        Frame frame,
        String path,
        String stage,
        boolean working,
        boolean stopped,
        int done,
        int todo,
        List<Row> rows,
        List<Outcome> refused,
        List<Outcome> outcomes,
        int sound,
        int storable) {
    private static final int LISTED = 600;

    public UploadPage {
        rows = List.copyOf(rows);
        refused = List.copyOf(refused);
        outcomes = List.copyOf(outcomes);
    }

    /** @param state what is to be said about it in a few words */
    public record Row(String file, String sheet, String path, String what, int lines, String state, boolean sound) {}

    static UploadPage of(Desk desk, Context request, Upload upload) {
        List<Row> rows = new ArrayList<>();
        int sound = 0;
        int storable = 0;
        CardNames cards = CardNames.of(desk.ledger());
        for (HeldSheet sheet : upload.isWorking() ? List.<HeldSheet>of() : upload.sheets()) {
            for (SettledFormula formula : SettledFormula.all(sheet, cards)) {
                boolean stored = upload.isStored(sheet.number() + "/" + formula.number());
                sound += !stored && formula.isSound() ? 1 : 0;
                storable += !stored && formula.obstacles().isEmpty() ? 1 : 0;
                rows.add(row(upload, sheet, formula, stored));
            }
            if (!sheet.read().materials().isEmpty()) {
                List<SettledMaterial> list = SettledMaterial.all(sheet, cards);
                boolean stored = upload.isStored(sheet.number() + "/m");
                boolean clear = list.stream().allMatch(one -> one.doubts().isEmpty());
                sound += !stored && clear ? 1 : 0;
                storable += stored ? 0 : 1;
                rows.add(row(upload, sheet, list, stored, clear));
            }
            if (sheet.read().isEmpty()) {
                rows.add(new Row(
                        sheet.file(),
                        sheet.grid().name(),
                        path(upload, sheet),
                        "nothing understood",
                        0,
                        "look at it",
                        false));
            }
        }
        return new UploadPage(
                desk.frame(request, "Spreadsheets brought in", Section.PRODUCTS),
                "/import/" + upload.id(),
                upload.stage().words(),
                upload.isWorking(),
                upload.stage() == Upload.Stage.STOPPED,
                upload.done(),
                upload.todo(),
                rows.subList(0, Math.min(LISTED, rows.size())),
                upload.refused(),
                upload.outcomes(),
                sound,
                storable);
    }

    private static String path(Upload upload, HeldSheet sheet) {
        return "/import/" + upload.id() + "/sheets/" + sheet.number();
    }

    private static Row row(Upload upload, HeldSheet sheet, SettledFormula formula, boolean stored) {
        int open = formula.obstacles().size() + formula.doubts().size();
        String state = stored ? "stored" : open == 0 ? "clear" : open + (open == 1 ? " question" : " questions");
        return new Row(
                sheet.file(),
                sheet.grid().name(),
                path(upload, sheet),
                formula.title(),
                formula.lines().size(),
                state,
                open == 0);
    }

    private static Row row(Upload upload, HeldSheet sheet, List<SettledMaterial> list, boolean stored, boolean clear) {
        long open = list.stream().filter(one -> !one.doubts().isEmpty()).count();
        String state = stored ? "stored" : clear ? "clear" : open + (open == 1 ? " question" : " questions");
        return new Row(
                sheet.file(), sheet.grid().name(), path(upload, sheet), "list of materials", list.size(), state, clear);
    }

    /** How much of the work is done, 0 to 100. */
    public int percent() {
        return todo == 0 ? 100 : Math.min(100, done * 100 / todo);
    }

    public long storedCount() {
        return outcomes.stream().filter(Outcome::isStored).count();
    }
}
