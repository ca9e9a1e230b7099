package stillroom.desk.shell;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/** Styles, behaviour, fonts and kept libraries, from the program's own jar and nowhere else. */
public final class Assets {
    private static final Pattern NAME = Pattern.compile("([a-z]+/){1,3}[A-Za-z0-9.\\-]+\\.(css|js|ttf|svg|png)");
    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "ttf", "font/ttf",
            "svg", "image/svg+xml",
            "png", "image/png");
    private static final Map<String, byte[]> KEPT = new ConcurrentHashMap<>();

    private Assets() {}

    static void add(RoutesConfig routes) {
        routes.get("/assets/<name>", Assets::answer);
        routes.get("/favicon.ico", request -> request.redirect("/assets/shell/icon.svg"));
    }

    private static void answer(Context request) {
        String name = request.pathParam("name");
        byte[] body = read(name).orElseThrow(() -> new NotFoundResponse("There is no such file."));
        String tag = "\"" + Integer.toHexString(Arrays.hashCode(body)) + "\"";
        request.header("Cache-Control", "no-cache");
        request.header("ETag", tag);
        if (tag.equals(request.header("If-None-Match"))) {
            request.status(304);
            return;
        }
        request.contentType(TYPES.getOrDefault(name.substring(name.lastIndexOf('.') + 1), "text/plain"));
        request.result(body);
    }

    /** The bytes of an asset such as {@code shell/stillroom.css} or {@code fonts/Lato-Regular.ttf}. */
    public static Optional<byte[]> read(String name) {
        if (!NAME.matcher(name).matches()) {
            return Optional.empty();
        }
        return Optional.ofNullable(KEPT.computeIfAbsent(name, Assets::load));
    }

    @SuppressWarnings("NullAway") // a null is not kept by computeIfAbsent: the file stays absent
    private static byte[] load(String name) {
        boolean own = !name.startsWith("vendor/") && !name.startsWith("fonts/");
        try (InputStream file = Assets.class.getResourceAsStream(own ? "/stillroom/desk/" + name : "/" + name)) {
            return file == null ? null : file.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
