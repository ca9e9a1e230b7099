package stillroom.desk.reformulation;

import static org.assertj.core.api.Assertions.assertThat;

import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.desk.shell.Desk;
import stillroom.desk.shell.Pages;
import stillroom.formulary.reformulation.Answer;
import stillroom.formulary.reformulation.Reformulation;
import stillroom.formulary.reformulation.Result;
import stillroom.science.blend.Patience;
import stillroom.science.blend.Progress;

/** The page of a search that has an answer and would never end: it is shown, can be stopped, and keeps what it has. */
@Timeout(60)
class StopTest {
    private static final Progress STEP = new Progress(1, 0, 1);

    @TempDir
    Path folder;

    private final HttpClient client = HttpClient.newHttpClient();

    /** One real answer, then on and on. */
    private static Searching endless(Subjected subjected, Asked asked) {
        return Searching.begin((patience, found, curve) -> {
            List<Answer> answers = new Reformulation(subjected.recast(), subjected.shelf(asked), Patience.ENDLESS)
                    .solve(asked.wish(subjected))
                    .answers()
                    .subList(0, 1);
            answers.forEach(found);
            while (!patience.isOver(STEP)) {
                Thread.onSpinWait();
            }
            return new Result(answers, List.of(), List.of(), List.of(), true, true);
        });
    }

    @Test
    void aLongSearchShowsWhatItHasAndCanBeStopped() throws IOException, InterruptedException {
        try (OpenDesk workshop = OpenDesk.in(folder)) {
            workshop.post("/demonstration", Map.of());
            Desk desk =
                    new Desk(workshop.workspace(), Clock.fixed(OpenDesk.NOW, ZoneOffset.UTC), new Pages(), List::of);
            Javalin server = Javalin.create(config -> ReformulationRoutes.add(config.routes, desk, StopTest::endless))
                    .start("127.0.0.1", 0);
            try {
                stops("http://127.0.0.1:" + server.port() + "/products/1/versions/2/anew", "?aim=COST");
            } finally {
                server.stop();
            }
        }
    }

    private void stops(String address, String query) throws IOException, InterruptedException {
        String page = get(address + query);
        while (!page.contains("1 found so far")) {
            assertThat(page).contains("Still looking");
            page = get(address + query);
        }
        assertThat(page).contains("Still looking", "Stop looking", "What stands below is kept.", "1. With");
        HttpRequest stop = HttpRequest.newBuilder(URI.create(address + "/stop" + query))
                .POST(HttpRequest.BodyPublishers.noBody())
                .build();
        assertThat(client.send(stop, HttpResponse.BodyHandlers.ofString()).statusCode())
                .isEqualTo(303);
        String after = get(address + query);
        while (after.contains("Still looking")) {
            after = get(address + query);
        }
        assertThat(after).contains("Looking was stopped", "1. With", "Take this as a new draft version");
    }

    private String get(String address) throws IOException, InterruptedException {
        return client.send(HttpRequest.newBuilder(URI.create(address)).build(), HttpResponse.BodyHandlers.ofString())
                .body();
    }
}
