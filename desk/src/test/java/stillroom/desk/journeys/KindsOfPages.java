package stillroom.desk.journeys;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stillroom.desk.OpenDesk;

/** Follows the links of a workshop from its start page, one address of each kind: new pages are found by themselves. */
final class KindsOfPages {
    private static final Pattern LINK = Pattern.compile("<a\\b[^>]*\\bhref=\"(/[^\"#]*)");
    /** What makes another page of the same address; other words in the address only fill it. */
    private static final Pattern TELLING = Pattern.compile("(?:^|&)((?:do|kind|purpose|by)=[^&]*)");

    /** What is taken away rather than looked at. */
    private static final Pattern FILE = Pattern.compile("\\.(pdf|html|jpg|zip|csv|json|txt)(\\?|$)");

    private static final int MOST = 400;

    private final OpenDesk desk;
    private final Map<String, String> found = new LinkedHashMap<>();

    private KindsOfPages(OpenDesk desk) {
        this.desk = desk;
    }

    /** An address of each kind. */
    static List<String> of(OpenDesk desk) {
        KindsOfPages kinds = new KindsOfPages(desk);
        kinds.walk();
        return List.copyOf(kinds.found.values());
    }

    private void walk() {
        Deque<String> open = new ArrayDeque<>();
        keep("/", open);
        while (!open.isEmpty()) {
            links(desk.get(open.poll()).body()).forEach(address -> keep(address, open));
        }
    }

    private void keep(String address, Deque<String> open) {
        boolean isPage =
                !address.startsWith("/assets") && !FILE.matcher(address).find();
        if (isPage && found.size() < MOST && found.putIfAbsent(kind(address), address) == null) {
            open.add(address);
        }
    }

    private static List<String> links(String html) {
        return LINK.matcher(html)
                .results()
                .map(match -> match.group(1).replace("&amp;", "&"))
                .toList();
    }

    /** The address without what only says which one: {@code /lots/{lot}}, {@code /products/{number}/brief}. */
    static String kind(String address) {
        String[] parts = address.split("\\?", 2);
        String path = parts[0].replaceAll("^/(lots|materials)/(?!new(?:/|$))[^/]+", "/$1/{one}")
                .replaceAll("/products/\\d+", "/products/{number}")
                .replaceAll("/versions/\\d+", "/versions/{number}")
                .replaceAll("^/trials/t\\d+", "/trials/{one}")
                .replaceAll("/safety/[^/]+", "/safety/{one}")
                .replaceAll("/balances/\\d+", "/balances/{number}");
        Matcher telling = TELLING.matcher(parts.length > 1 ? parts[1] : "");
        String query = telling.results().map(MatchResult::group).collect(Collectors.joining());
        // Batches stand at different stages: their plain pages are all looked at, each act of the bench once.
        return query.isEmpty() ? path : path.replaceAll("/batches/\\d+", "/batches/{number}") + "?" + query;
    }
}
