package stillroom.desk.demonstration;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import stillroom.desk.papers.PaperBook;
import stillroom.desk.papers.PaperBook.On;
import stillroom.desk.shell.Desk;
import stillroom.formulary.batch.BatchEvent;
import stillroom.formulary.concern.Concern;
import stillroom.formulary.material.Paper;
import stillroom.formulary.quantity.Grams;

/** What became of the invented hand wash once it was filled: checked, kept, sold, complained of; and the documents of the workshop. */
record Afterwards(Desk desk, Instant now) {
    private static final List<String> GROSS = List.of("285.7", "285.5", "286.0", "285.3", "285.5");

    private LocalDate daysAgo(int days) {
        return LocalDate.ofInstant(now, desk.zone()).minusDays(days);
    }

    /** On the day of filling: five bottles of 250 ml, at 1.02 g/ml. */
    void filled(BenchDay bench) {
        bench.write(concerned(new Concern.FillChecked(
                        Equipment.PUMP_BOTTLE,
                        Grams.of("255.0"),
                        GROSS.stream()
                                .map(gross -> new Concern.Container(Grams.of(gross), Grams.of("28.1")))
                                .toList(),
                        Grams.of("0.2"))))
                .write(concerned(new Concern.SampleKept(
                        2,
                        Optional.of(Grams.of("60.0")),
                        "cupboard by the door, second shelf",
                        daysAgo(11).plusYears(2),
                        "glass vials")));
    }

    void released(BenchDay bench) {
        bench.at(now.minus(Duration.ofDays(2)))
                .write(concerned(
                        new Concern.Moved(Concern.Move.SALE, 2, daysAgo(2), "Harbour market, stall 7 (invented)", "")))
                .write(concerned(new Concern.Moved(Concern.Move.GIFT, 1, daysAgo(2), "a neighbour (invented)", "")))
                .at(now.minus(Duration.ofHours(5)))
                .write(concerned(new Concern.Complained(
                        daysAgo(0), "a buyer at the market (invented)", "The pump sticks; the wash itself is liked.")));
    }

    private static BatchEvent concerned(Concern concern) {
        return new BatchEvent.Concerned(concern);
    }

    void papers(long toner) {
        PaperBook book = PaperBook.of(desk.ledger());
        String product = Long.toString(toner);
        book.file(
                On.PRODUCT,
                product,
                paper(
                        Paper.Kind.STABILITY_STUDY,
                        "Twelve weeks in the bottle",
                        30,
                        335,
                        "Invented: pH and look steady."));
        book.file(
                On.PRODUCT,
                product,
                paper(
                        Paper.Kind.CHALLENGE_TEST,
                        "Challenge test, version 1",
                        20,
                        1075,
                        "Invented result: criterion A met. A laboratory has to show it for a real product."));
        book.file(
                On.MATERIAL,
                "sles-27",
                paper(Paper.Kind.SAFETY_SHEET, "Safety data sheet, sodium laureth sulfate", 1080, 15, "Invented."));
        book.file(
                On.LOT,
                "SLE-02",
                paper(Paper.Kind.CERTIFICATE, "Certificate of the lot", 60, 300, "Invented: 27.2 % active matter."));
    }

    private Paper paper(Paper.Kind kind, String title, int dated, int reviewIn, String note) {
        return new Paper(
                kind, title, Optional.of(daysAgo(dated)), Optional.of(daysAgo(-reviewIn)), Optional.empty(), "", note);
    }
}
