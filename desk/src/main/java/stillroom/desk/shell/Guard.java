package stillroom.desk.shell;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Keeps other web sites out of a program that listens on this computer only: requests must name this computer (a
 * foreign name may have been rebound to it), and what changes something must come from one of our own pages.
 */
final class Guard {
    private static final Set<String> OWN_NAMES = Set.of("127.0.0.1", "localhost", "[::1]");
    private static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                    + " font-src 'self'; connect-src 'self'; manifest-src 'self'; form-action 'self'; frame-ancestors 'none';"
                    + " base-uri 'none'";

    private Guard() {}

    static void add(RoutesConfig routes) {
        routes.before(Guard::judge);
        routes.before(Guard::headers);
    }

    private static void judge(Context request) {
        if (!isOwn(request.header("Host"))) {
            throw new ForbiddenResponse("Stillroom answers only to this computer's own name, such as 127.0.0.1.");
        }
        boolean reads = request.method() == HandlerType.GET || request.method() == HandlerType.HEAD;
        if (!reads && !fromOwnPage(request)) {
            throw new ForbiddenResponse("This came from another web site, so nothing was changed.");
        }
    }

    private static boolean fromOwnPage(Context request) {
        String origin = request.header("Origin");
        if (origin != null) {
            return origin.equals("http://" + request.header("Host"));
        }
        String site = request.header("Sec-Fetch-Site");
        return site == null || site.equals("same-origin") || site.equals("none");
    }

    private static boolean isOwn(@Nullable String host) {
        if (host == null) {
            return false;
        }
        int port = host.lastIndexOf(':');
        boolean hasPort = port > host.lastIndexOf(']');
        return OWN_NAMES.contains((hasPort ? host.substring(0, port) : host).toLowerCase(Locale.ROOT));
    }

    private static void headers(Context request) {
        request.header("Content-Security-Policy", POLICY);
        request.header("X-Content-Type-Options", "nosniff");
        request.header("Referrer-Policy", "same-origin");
        request.header("Cross-Origin-Opener-Policy", "same-origin");
        request.header("Cross-Origin-Resource-Policy", "same-origin");
        request.header("Cache-Control", "no-store");
    }
}
