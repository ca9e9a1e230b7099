package stillroom.desk;

import io.javalin.Javalin;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillroom.desk.shell.Workspace;
import stillroom.desk.start.Server;
import stillroom.desk.start.Starter;
import stillroom.ledger.Ledger;

/** A served workshop in a folder of its own, with the real starter library and a clock that stands still. */
public final class OpenDesk implements AutoCloseable {
    /** What the clock of every test says. */
    public static final Instant NOW = Instant.parse("2026-11-25T09:30:00Z");

    private final Workspace workspace;
    private final Javalin server;
    private final HttpClient client = HttpClient.newHttpClient();

    private OpenDesk(Workspace workspace, Clock clock) {
        this.workspace = workspace;
        this.server = Server.start(workspace, clock, 0);
    }

    public static OpenDesk in(Path folder) {
        return at(folder, NOW);
    }

    public static OpenDesk at(Path folder, Instant now) {
        return new OpenDesk(Workspace.open(folder, Starter.LIBRARY), Clock.fixed(now, ZoneOffset.UTC));
    }

    /** What came back; a redirect is not followed. */
    public record Answer(int status, String body, String location) {}

    public Workspace workspace() {
        return workspace;
    }

    public Ledger ledger() {
        return workspace.ledger();
    }

    public String address() {
        return "http://127.0.0.1:" + server.port();
    }

    public Answer get(String path) {
        return send(request(path).GET().build());
    }

    public Answer post(String path, Map<String, String> form) {
        return postAll(
                path,
                form.entrySet().stream()
                        .collect(Collectors.toMap(Map.Entry::getKey, field -> List.of(field.getValue()))));
    }

    /** Posts a form in which a field may occur several times. */
    public Answer postAll(String path, Map<String, List<String>> form) {
        String body = form.entrySet().stream()
                .flatMap(
                        field -> field.getValue().stream().map(value -> encoded(field.getKey()) + "=" + encoded(value)))
                .collect(Collectors.joining("&"));
        return send(request(path)
                .header("Content-Type", "application/x-www-form-urlencoded")
                .header("Origin", address())
                .POST(HttpRequest.BodyPublishers.ofString(body))
                .build());
    }

    /** Posts a form with one file, as a browser does. */
    public Answer postFile(String path, Map<String, String> form, String field, String fileName, byte[] file) {
        String mark = "----a-mark-that-no-file-holds";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        form.forEach((name, value) -> body.writeBytes(
                ("--" + mark + "\r\nContent-Disposition: form-data; name=\"" + name + "\"\r\n\r\n" + value + "\r\n")
                        .getBytes(StandardCharsets.UTF_8)));
        body.writeBytes(("--" + mark + "\r\nContent-Disposition: form-data; name=\"" + field + "\"; filename=\""
                        + fileName + "\"\r\nContent-Type: application/octet-stream\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8));
        body.writeBytes(file);
        body.writeBytes(("\r\n--" + mark + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return send(request(path)
                .header("Content-Type", "multipart/form-data; boundary=" + mark)
                .header("Origin", address())
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                .build());
    }

    /** Posts files as a browser's form does; names by content. */
    public Answer upload(String path, Map<String, byte[]> files) {
        String boundary = "parted-by-this-line";
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        files.forEach((name, bytes) -> {
            body.writeBytes(("--" + boundary + "\r\nContent-Disposition: form-data; name=\"files\"; filename=\"" + name
                            + "\"\r\nContent-Type: application/octet-stream\r\n\r\n")
                    .getBytes(StandardCharsets.UTF_8));
            body.writeBytes(bytes);
            body.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
        });
        body.writeBytes(("--" + boundary + "--\r\n").getBytes(StandardCharsets.UTF_8));
        return send(request(path)
                .header("Content-Type", "multipart/form-data; boundary=" + boundary)
                .header("Origin", address())
                .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
                .build());
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create(address() + path));
    }

    private Answer send(HttpRequest request) {
        try {
            HttpResponse<String> response = client.send(request, HttpResponse.BodyHandlers.ofString());
            return new Answer(
                    response.statusCode(),
                    response.body(),
                    response.headers().firstValue("Location").orElse(""));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        server.stop();
        workspace.close();
    }
}
