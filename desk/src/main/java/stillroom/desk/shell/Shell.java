package stillroom.desk.shell;

import io.javalin.config.RoutesConfig;
import java.util.function.Function;

/** Puts the frame around all routes: who may ask, what files there are, what a fault looks like. */
public final class Shell {
    private Shell() {}

    /** @param frames makes a frame for a page title, for pages that belong to no slice */
    public static void add(RoutesConfig routes, Pages pages, Function<String, Frame> frames) {
        Guard.add(routes);
        Assets.add(routes);
        Faults.add(routes, pages, frames);
    }
}
