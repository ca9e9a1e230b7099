package stillroom.desk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;

/** Local does not mean open: foreign names and foreign pages are refused, and pages may run nothing but our own files. */
class GuardTest {
    @TempDir
    Path folder;

    private OpenDesk desk;

    @BeforeEach
    void open() {
        desk = OpenDesk.in(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    /** A request written by hand, as the ordinary client does not let one choose the host. */
    private String raw(String method, String path, String headers, String body) throws IOException {
        int port = URI.create(desk.address()).getPort();
        try (Socket socket = new Socket(InetAddress.getByName("127.0.0.1"), port)) {
            String request = method + " " + path + " HTTP/1.1\r\n" + headers + "Connection: close\r\nContent-Length: "
                    + body.length() + "\r\nContent-Type: application/x-www-form-urlencoded\r\n\r\n" + body;
            socket.getOutputStream().write(request.getBytes(StandardCharsets.UTF_8));
            InputStream in = socket.getInputStream();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private String ownHost() {
        return URI.create(desk.address()).getAuthority();
    }

    @Test
    void refusesAForeignHostName() throws IOException {
        assertThat(raw("GET", "/", "Host: workshop.example\r\n", "")).startsWith("HTTP/1.1 403");
        assertThat(raw("GET", "/", "Host: 127.0.0.1.example:80\r\n", "")).startsWith("HTTP/1.1 403");
        assertThat(raw("GET", "/", "Host: " + ownHost() + "\r\n", "")).startsWith("HTTP/1.1 200");
    }

    @Test
    void refusesAPostFromAnotherSite() throws IOException {
        String form = "name=Planted";
        String own = "Host: " + ownHost() + "\r\n";
        assertThat(raw("POST", "/products/new", own + "Origin: http://elsewhere.example\r\n", form))
                .startsWith("HTTP/1.1 403");
        assertThat(raw("POST", "/products/new", own + "Origin: null\r\n", form)).startsWith("HTTP/1.1 403");
        assertThat(raw("POST", "/products/new", own + "Sec-Fetch-Site: cross-site\r\n", form))
                .startsWith("HTTP/1.1 403");
        assertThat(desk.ledger().products().products()).isEmpty();
    }

    @Test
    void letsPagesRunOnlyOurOwnFiles() throws IOException {
        String answer = raw("GET", "/", "Host: " + ownHost() + "\r\n", "");
        assertThat(answer).contains("Content-Security-Policy: default-src 'none'; script-src 'self'; style-src 'self'");
        assertThat(answer).doesNotContain("unsafe-inline").doesNotContain("unsafe-eval");
        assertThat(answer).contains("X-Content-Type-Options: nosniff");
    }

    @Test
    void takesNoRequestOfTenMegabytes() {
        OpenDesk.Answer answer = desk.post("/products/new", Map.of("name", "x", "note", "n".repeat(10_000_000)));
        assertThat(answer.status()).isEqualTo(413);
        assertThat(answer.body()).contains("larger than Stillroom takes").doesNotContain("Exception");
        assertThat(desk.ledger().products().products()).isEmpty();
    }

    @Test
    void unknownAddressIsASentence() {
        OpenDesk.Answer answer = desk.get("/no/such/page");
        assertThat(answer.status()).isEqualTo(404);
        assertThat(answer.body()).contains("There is no page at this address.");
    }

    @Test
    void givesOnlyItsOwnFiles() {
        assertThat(desk.get("/assets/shell/stillroom.css").status()).isEqualTo(200);
        assertThat(desk.get("/assets/../application.properties").status()).isNotEqualTo(200);
        assertThat(desk.get("/assets/shell/Guard.class").status()).isEqualTo(404);
        assertThat(desk.get("/assets/fonts/no-such.ttf").status()).isEqualTo(404);
    }
}
