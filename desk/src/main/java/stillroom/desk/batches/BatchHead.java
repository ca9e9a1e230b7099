package stillroom.desk.batches;

import java.util.Optional;
import stillroom.desk.shell.Format;
import stillroom.desk.trials.Studies;
import stillroom.desk.trials.Studies.Study;
import stillroom.formulary.batch.Yield;

/**
 * What the head of every page of a batch says.
 *
 * @param run of trials that is made in it
 */
public record BatchHead(
        long id,
        String code,
        String product,
        long productId,
        String version,
        Optional<Study> run,
        String stage,
        String stageStyle,
        boolean premix,
        Optional<Blend> blend) {
    /** The batch with which this one is made to be blended, and the way there. */
    public record Blend(String code, String href) {}

    public static BatchHead of(BatchWork work) {
        return new BatchHead(
                work.batch().id(),
                work.batch().code(),
                work.product().name(),
                work.product().id(),
                work.batch().version().map(number -> "version " + number).orElse("free hand"),
                work.batch()
                        .version()
                        .flatMap(number ->
                                Studies.run(work.desk(), work.product().id(), number)),
                work.state().stage().words(),
                Format.style(work.state().stage()),
                PremixMark.of(work),
                blend(work));
    }

    /** Until something was handed over. */
    private static Optional<Blend> blend(BatchWork work) {
        return new Blends(work.desk())
                .of(work.batch().id())
                .filter(partner -> work.state().decision().isEmpty()
                        && Yield.of(work.state()).handedOver().isZero()
                        && work.state().pours().stream().findAny().isPresent())
                .map(partner -> new Blend(partner.code(), work.path() + "/bulk?with=" + partner.code()));
    }

    public String path() {
        return "/batches/" + id;
    }
}
