package stillroom.desk.start;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.config.SizeUnit;
import java.time.Clock;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import stillroom.desk.assessor.AssessorRoutes;
import stillroom.desk.batches.BatchRoutes;
import stillroom.desk.batches.bench.BenchRoutes;
import stillroom.desk.batches.bench.RunningTimers;
import stillroom.desk.batches.bulk.BulkRoutes;
import stillroom.desk.batches.cost.CostRoutes;
import stillroom.desk.batches.fill.FillRoutes;
import stillroom.desk.batches.freehand.FreeHandRoutes;
import stillroom.desk.batches.made.MadeRoutes;
import stillroom.desk.batches.plan.PlanRoutes;
import stillroom.desk.batches.premix.PremixRoutes;
import stillroom.desk.batches.units.UnitsRoutes;
import stillroom.desk.chemistry.ChemistryRoutes;
import stillroom.desk.classes.ClassRoutes;
import stillroom.desk.demonstration.DemonstrationRoutes;
import stillroom.desk.dosing.DosingRoutes;
import stillroom.desk.files.FormulaFileRoutes;
import stillroom.desk.imports.ImportRoutes;
import stillroom.desk.labels.LabelRoutes;
import stillroom.desk.law.LawRoutes;
import stillroom.desk.lots.LotRoutes;
import stillroom.desk.materials.MaterialRoutes;
import stillroom.desk.packs.PackRoutes;
import stillroom.desk.papers.PaperRoutes;
import stillroom.desk.patterns.PatternRoutes;
import stillroom.desk.pictures.PictureRoutes;
import stillroom.desk.products.ProductRoutes;
import stillroom.desk.recipes.RecipeRoutes;
import stillroom.desk.reformulation.ReformulationRoutes;
import stillroom.desk.safety.SafetyRoutes;
import stillroom.desk.scale.ScaleRoutes;
import stillroom.desk.sheets.SheetRoutes;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Frame.Section;
import stillroom.desk.shell.Pages;
import stillroom.desk.shell.Shell;
import stillroom.desk.shell.Workspace;
import stillroom.desk.sidebyside.SideBySideRoutes;
import stillroom.desk.today.TodayRoutes;
import stillroom.desk.trace.TraceRoutes;
import stillroom.desk.trials.TrialRoutes;
import stillroom.desk.weighout.WeighOutRoutes;
import stillroom.desk.workshop.WorkshopRoutes;
import stillroom.desk.workshop.vessels.VesselsRoutes;

/** The web server of one workshop, on this computer only. */
public final class Server {
    private static final long LARGEST_REQUEST_BYTES = 1_000_000;
    private static final int LARGEST_FILE_MEGABYTES = 40;

    private Server() {}

    /**
     * Starts serving on 127.0.0.1.
     *
     * @param port 0 for any free one
     */
    public static Javalin start(Workspace workspace, Clock clock, int port) {
        RunningTimers timers = new RunningTimers(workspace);
        Desk desk = new Desk(workspace, clock, new Pages(), timers);
        return Javalin.create(config -> configure(config, desk, timers)).start("127.0.0.1", port);
    }

    private static void configure(JavalinConfig config, Desk desk, RunningTimers timers) {
        config.startup.showJavalinBanner = false;
        config.http.maxRequestSize = LARGEST_REQUEST_BYTES;
        config.jetty.multipartConfig.maxFileSize(LARGEST_FILE_MEGABYTES, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(2 * LARGEST_FILE_MEGABYTES, SizeUnit.MB);
        config.jetty.multipartConfig.maxInMemoryFileSize(1, SizeUnit.MB);
        config.jetty.threadPool = new QueuedThreadPool(24, 2);
        addRoutes(config.routes, desk, timers);
    }

    private static void addRoutes(RoutesConfig routes, Desk desk, RunningTimers timers) {
        Shell.add(routes, desk.pages(), title -> desk.frame(title, Section.TODAY));
        TodayRoutes.add(routes, desk);
        MaterialRoutes.add(routes, desk);
        LotRoutes.add(routes, desk);
        WorkshopRoutes.add(routes, desk);
        FreeHandRoutes.add(routes, desk);
        BatchRoutes.add(routes, desk);
        PlanRoutes.add(routes, desk);
        PremixRoutes.add(routes, desk);
        BulkRoutes.add(routes, desk);
        BenchRoutes.add(routes, desk, timers);
        ScaleRoutes.add(routes, desk);
        DosingRoutes.add(routes, desk);
        ProductRoutes.add(routes, desk);
        ChemistryRoutes.add(routes, desk);
        SafetyRoutes.add(routes, desk);
        DemonstrationRoutes.add(routes, desk);
        MadeRoutes.add(routes, desk);
        FillRoutes.add(routes, desk);
        UnitsRoutes.add(routes, desk);
        CostRoutes.add(routes, desk);
        PackRoutes.add(routes, desk);
        VesselsRoutes.add(routes, desk);
        TraceRoutes.add(routes, desk);
        PatternRoutes.add(routes, desk);
        LabelRoutes.add(routes, desk);
        LawRoutes.add(routes, desk);
        SheetRoutes.add(routes, desk);
        RecipeRoutes.add(routes, desk);
        PictureRoutes.add(routes, desk);
        PaperRoutes.add(routes, desk);
        ClassRoutes.add(routes, desk);
        FormulaFileRoutes.add(routes, desk);
        AssessorRoutes.add(routes, desk);
        TrialRoutes.add(routes, desk);
        WeighOutRoutes.add(routes, desk);
        SideBySideRoutes.add(routes, desk);
        ImportRoutes.add(routes, desk);
        ReformulationRoutes.add(routes, desk);
    }
}
