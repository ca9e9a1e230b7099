package stillroom.desk.batches;

import stillroom.desk.shell.Format;

/** What the head of every page of a batch says. */
public record BatchHead(
        long id,
        String code,
        String product,
        long productId,
        String version,
        String stage,
        String stageStyle,
        boolean premix) {
    public static BatchHead of(BatchWork work) {
        return new BatchHead(
                work.batch().id(),
                work.batch().code(),
                work.product().name(),
                work.product().id(),
                work.batch().version().map(number -> "version " + number).orElse("free hand"),
                work.state().stage().words(),
                Format.style(work.state().stage()),
                PremixMark.of(work));
    }

    public String path() {
        return "/batches/" + id;
    }
}
