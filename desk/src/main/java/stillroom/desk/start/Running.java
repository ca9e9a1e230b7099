package stillroom.desk.start;

import io.javalin.Javalin;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.net.BindException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.time.Clock;
import java.util.List;
import stillroom.desk.shell.Workspace;
import stillroom.ledger.store.LedgerException;

/** A served workshop. */
record Running(Workspace workspace, Javalin server, DailyCopies copies) {
    /** Pages that a start visits once to fill the class archive. */
    private static final List<String> USUAL_PAGES = List.of("/", "/products", "/materials", "/batches", "/workshop");

    static Running start(Workspace workspace, int port) {
        try {
            Clock clock = Clock.systemDefaultZone();
            Running running =
                    new Running(workspace, Server.start(workspace, clock, port), DailyCopies.begin(workspace, clock));
            Runtime.getRuntime().addShutdownHook(new Thread(running::stop));
            return running;
        } catch (RuntimeException fault) {
            workspace.close();
            throw isTaken(fault)
                    ? new LedgerException(
                            "Port " + port + " is taken by another program; choose one with --port N.", fault)
                    : fault;
        }
    }

    private static boolean isTaken(Throwable fault) {
        for (Throwable cause = fault; cause != null; cause = cause.getCause()) {
            if (cause instanceof BindException) {
                return true;
            }
            String message = cause.getMessage();
            if (message != null && message.contains("already in use")) {
                return true;
            }
        }
        return false;
    }

    String address() {
        return "http://127.0.0.1:" + server.port() + "/";
    }

    void announce(PrintStream out, boolean openBrowser) {
        out.println("Stillroom is at " + address());
        out.println("The workshop's data is in " + workspace.folder() + ". Stop with Ctrl-C.");
        if (openBrowser) {
            Browser.open(address());
        }
    }

    void visitAndStop() {
        for (String page : USUAL_PAGES) {
            visit(address() + page.substring(1));
        }
    }

    private static void visit(String address) {
        try {
            HttpURLConnection connection =
                    (HttpURLConnection) URI.create(address).toURL().openConnection();
            connection.getResponseCode();
            connection.disconnect();
        } catch (IOException unreachable) {
            throw new UncheckedIOException(unreachable);
        }
    }

    void stop() {
        server.stop();
        copies.close();
        workspace.close();
    }
}
