package stillroom.desk.safety;

import java.util.List;
import stillroom.desk.chemistry.Studied;
import stillroom.desk.safety.SafetyPage.Line;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.formulary.judgement.safety.SafetyTable;
import stillroom.ledger.workshop.Workshop;

/** The assessor's table as it is printed. */
public record SafetySheet(
        String workshop,
        boolean demonstration,
        String about,
        String printed,
        String kind,
        String exposure,
        String exposureSource,
        String missing,
        List<Line> lines) {
    public SafetySheet {
        lines = List.copyOf(lines);
    }

    public static SafetySheet of(Desk desk, Studied of) {
        SafetyTable table = SafetyBook.table(desk, of);
        Workshop workshop = desk.ledger().settings().read();
        return new SafetySheet(
                workshop.name(),
                workshop.demonstration(),
                of.about(),
                Format.day(desk.today()),
                of.product().brief().type().words(),
                SafetyView.exposure(table),
                table.exposureSource(),
                SafetyView.missing(table),
                SafetyView.lines(table));
    }
}
