package stillroom.desk.batches;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.formulary.batch.BatchStage;
import stillroom.ledger.batch.BatchPage;
import stillroom.ledger.batch.BatchQuery;
import stillroom.ledger.batch.BatchRow;

/**
 * The list of batches, newest first, one page of it.
 *
 * @param total how many there are that fit the filter
 * @param newer, older addresses of the neighbouring pages, empty where there is none
 * @param filtered whether only some batches are asked for
 */
public record BatchListPage(
        Frame frame,
        Typed typed,
        List<Choice> stages,
        List<Choice> products,
        List<Row> rows,
        int total,
        String from,
        String newer,
        String older,
        boolean filtered) {
    private static final int SIZE = 50;

    public BatchListPage {
        stages = List.copyOf(stages);
        products = List.copyOf(products);
        rows = List.copyOf(rows);
    }

    /** One batch of the list. */
    public record Row(
            long id, String code, String product, String version, String stage, String stageStyle, String when) {}

    static BatchListPage of(Desk desk, Frame frame, Input input) {
        Optional<BatchStage> stage = input.choice("stage", "The stage", BatchStage.class);
        Optional<Long> product =
                input.whole("product", "The product", 1, Integer.MAX_VALUE).map(Integer::longValue);
        String code = input.text("code");
        BatchQuery query = new BatchQuery(stage.map(Set::of).orElse(Set.of()), product, code);
        int number = input.whole("page", "The page", 1, 1_000_000).orElse(1);
        int offset = (number - 1) * SIZE;
        BatchPage page = desk.ledger().batches().page(query, offset, SIZE);
        String filter = "&stage=" + stage.map(Enum::name).orElse("") + "&product="
                + product.map(String::valueOf).orElse("") + "&code="
                + java.net.URLEncoder.encode(code, java.nio.charset.StandardCharsets.UTF_8);
        return new BatchListPage(
                frame,
                input.typed(),
                stageChoices(),
                productChoices(desk),
                page.rows().stream().map(row -> row(desk, row)).toList(),
                page.total(),
                page.rows().isEmpty()
                        ? ""
                        : (offset + 1) + " to " + (offset + page.rows().size()),
                number > 1 ? "/batches?page=" + (number - 1) + filter : "",
                offset + page.rows().size() < page.total() ? "/batches?page=" + (number + 1) + filter : "",
                !query.equals(BatchQuery.ALL));
    }

    private static List<Choice> stageChoices() {
        List<Choice> stages = new ArrayList<>(List.of(new Choice("", "any stage")));
        stages.addAll(Choice.of(BatchStage.class, BatchStage::words));
        return stages;
    }

    private static List<Choice> productChoices(Desk desk) {
        List<Choice> products = new ArrayList<>(List.of(new Choice("", "any product")));
        desk.ledger().products().products().stream()
                .map(product -> new Choice(Long.toString(product.id()), product.name()))
                .forEach(products::add);
        return products;
    }

    private static Row row(Desk desk, BatchRow row) {
        String when = row.due()
                .map(due -> "look again " + Format.moment(due, desk.zone()))
                .or(() -> row.lastAt().map(at -> "last entry " + Format.moment(at, desk.zone())))
                .orElse("opened " + Format.day(row.batch().openedOn()));
        return new Row(
                row.batch().id(),
                row.batch().code(),
                row.productName(),
                row.batch().version().map(number -> "version " + number).orElse("free hand"),
                row.stage().words(),
                Format.style(row.stage()),
                when);
    }
}
