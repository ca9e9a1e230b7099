package stillroom.desk.materials;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What a maker looks for on the shelf.
 *
 * @param words any of name, INCI name, CAS number or function; all words must occur
 * @param family name of the family, empty for all
 * @param kind one of {@link #KINDS}
 * @param all whether to list however many there are
 */
public record ShelfQuery(String words, String family, String kind, boolean all) {
    static final String STOCKED = "stocked";
    static final String OWN = "own";
    static final String STARTER = "starter";
    static final List<String> KINDS = List.of("", STOCKED, OWN, STARTER);

    static ShelfQuery of(Context request) {
        return new ShelfQuery(
                text(request, "q"),
                text(request, "family"),
                text(request, "kind"),
                text(request, "all").equals("yes"));
    }

    private static String text(Context request, String name) {
        String given = request.queryParam(name);
        return given == null ? "" : given.strip();
    }

    /** Whether every word that was typed occurs in a text in lower case. */
    boolean isIn(String lowerCase) {
        return Arrays.stream(words.toLowerCase(Locale.ROOT).split("\\s+")).allMatch(lowerCase::contains);
    }

    /** The address of the same list without its limit. */
    public String addressOfAll() {
        return "/materials?all=yes&q=" + encoded(words) + "&family=" + encoded(family) + "&kind=" + encoded(kind);
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
