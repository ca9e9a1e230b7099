package stillroom.desk.workshop;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillroom.desk.shell.Choice;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Format;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Input;
import stillroom.desk.shell.Typed;
import stillroom.desk.workshop.MeterPage.CalibrationRow;
import stillroom.desk.workshop.MeterPage.MeterRow;
import stillroom.formulary.formula.Product;
import stillroom.formulary.meter.MeterBuffer;
import stillroom.formulary.meter.MeterCalibration;
import stillroom.formulary.meter.MeterStanding;
import stillroom.formulary.meter.PhMeter;
import stillroom.ledger.meter.MeterBook;

/** The pH meters of the workshop. */
final class MeterRoutes {
    private static final String TEMPLATE = "workshop/meter.jte";
    private static final int NEWEST = 50;

    private final Desk desk;

    private MeterRoutes(Desk desk) {
        this.desk = desk;
    }

    static void add(RoutesConfig routes, Desk desk) {
        MeterRoutes meters = new MeterRoutes(desk);
        routes.get("/workshop/meter", meters::show);
        routes.post("/workshop/meter", meters::calibrate);
        routes.post("/workshop/meter/add", meters::write);
    }

    private MeterBook book() {
        return desk.ledger().meters();
    }

    private void show(Context request) {
        desk.pages().show(request, TEMPLATE, page(request, Typed.NOTHING, Typed.NOTHING));
    }

    private void calibrate(Context request) {
        Input input = Input.of(request);
        Optional<MeterCalibration> calibration = new MeterForm(input).calibration(book().meters(), desk.now());
        if (calibration.isEmpty()) {
            desk.pages().showAgain(request, TEMPLATE, page(request, input.typed(), Typed.NOTHING));
            return;
        }
        book().add(calibration.get());
        request.redirect("/workshop/meter?did=added", HttpStatus.SEE_OTHER);
    }

    private void write(Context request) {
        Input input = Input.of(request);
        Optional<PhMeter> meter = new MeterForm(input).meter();
        if (meter.isEmpty()) {
            desk.pages().showAgain(request, TEMPLATE, page(request, Typed.NOTHING, input.typed()));
            return;
        }
        book().write(meter.get());
        request.redirect("/workshop/meter?did=saved", HttpStatus.SEE_OTHER);
    }

    private MeterPage page(Context request, Typed calibrate, Typed add) {
        List<PhMeter> meters = book().meters();
        List<MeterCalibration> calibrations = book().calibrations();
        return new MeterPage(
                desk.frame(request, "pH meter", Section.WORKSHOP),
                meters.stream().map(meter -> row(meter, calibrations)).toList(),
                meters.stream()
                        .map(meter -> new Choice(meter.name(), meter.name()))
                        .toList(),
                MeterForm.buffers(false),
                MeterForm.buffers(true),
                calibrate,
                add,
                calibrations.stream().limit(NEWEST).map(this::row).toList());
    }

    private MeterRow row(PhMeter meter, List<MeterCalibration> calibrations) {
        MeterStanding standing = MeterStanding.of(meter, calibrations, desk.now(), desk.zone());
        String holds = meter.holdsHours()
                .map(hours -> "a calibration holds " + hours + " h")
                .orElse("a calibration holds for its day");
        String says = standing.isSound()
                ? "Calibrated "
                        + standing.calibration()
                                .map(one -> Format.moment(one.at(), desk.zone()))
                                .orElse("")
                        + ", and it holds."
                : "Not to be relied on: " + standing.says().replace("before it", "so far") + ".";
        return new MeterRow(
                meter.name(),
                "repeatability " + meter.repeatability() + " pH · " + holds,
                standing.isSound(),
                says,
                standing.calibration().map(this::notBracketed).orElse(List.of()));
    }

    /** Two buffers bracket the target: what lies outside is read beyond what was set. */
    private List<String> notBracketed(MeterCalibration calibration) {
        List<String> outside = new ArrayList<>();
        for (Product product : desk.ledger().products().products()) {
            product.brief()
                    .phTarget()
                    .or(() -> product.brief().phBand().map(band -> band.middle()))
                    .filter(target -> !calibration.brackets(target))
                    .ifPresent(target -> outside.add(product.name() + " (pH " + Format.figure(target, 1) + ")"));
        }
        return outside;
    }

    private CalibrationRow row(MeterCalibration one) {
        return new CalibrationRow(
                Format.moment(one.at(), desk.zone()),
                one.meter(),
                said(one.low()) + "; " + said(one.high()),
                Format.figure(one.celsius(), 1),
                shown(one),
                one.faults(one.at().atZone(desk.zone()).toLocalDate()),
                one.by());
    }

    private static String shown(MeterCalibration one) {
        List<String> shown = new ArrayList<>();
        one.slopePercent()
                .ifPresent(slope -> shown.add("slope " + Format.figure(slope, 1) + " %, offset "
                        + Format.figure(one.offsetMillivolt().orElse(0.0), 1) + " mV"));
        one.checkBuffer()
                .ifPresent(buffer ->
                        shown.add("read " + Format.figure(one.checkRead().orElse(0.0), 2) + " in " + said(buffer)));
        return String.join("; ", shown);
    }

    private static String said(MeterBuffer buffer) {
        return buffer.name() + " = " + Format.figure(buffer.pH(), 2)
                + (buffer.lot().isEmpty() ? "" : ", lot " + buffer.lot())
                + buffer.expires().map(day -> ", to " + Format.day(day)).orElse("");
    }
}
