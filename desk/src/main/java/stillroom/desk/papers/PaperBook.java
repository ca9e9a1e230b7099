package stillroom.desk.papers;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillroom.formulary.material.Paper;
import stillroom.ledger.Ledger;
import stillroom.ledger.document.Drawer;

/**
 * The documents of the workshop as they were when this was asked for.
 *
 * @param all those first that are to be looked at first
 */
public record PaperBook(Drawer<Paper> drawer, List<Filed> all) {
    public PaperBook {
        all = List.copyOf(all);
    }

    public static PaperBook of(Ledger ledger) {
        Drawer<Paper> drawer = ledger.drawer("paper", Paper.class);
        List<Filed> all = drawer.all().entrySet().stream()
                .map(PaperBook::filed)
                .sorted(Comparator.comparing(
                                (Filed filed) -> filed.paper().reviewBy().orElse(LocalDate.MAX))
                        .thenComparing(Filed::key))
                .toList();
        return new PaperBook(drawer, all);
    }

    /** What a document is on; its code is part of the key and of addresses. */
    public enum On {
        MATERIAL("materials"),
        LOT("lots"),
        PRODUCT("products");

        private final String path;

        On(String path) {
            this.path = path;
        }

        String path() {
            return path;
        }

        static Optional<On> at(String path) {
            return List.of(values()).stream().filter(on -> on.path.equals(path)).findFirst();
        }
    }

    /** One document with the place where it lies. */
    public record Filed(On on, String of, int number, Paper paper) {
        public String path() {
            return "/papers/" + on.path() + "/" + of;
        }

        String key() {
            return on.path() + "/" + of + "/" + number;
        }
    }

    public List<Filed> on(On on, String of) {
        return all.stream()
                .filter(filed -> filed.on() == on && filed.of().equals(of))
                .toList();
    }

    /** Those to be looked at again by a day. */
    public List<Filed> dueBy(LocalDate day) {
        return all.stream().filter(filed -> filed.paper().dueBy(day)).toList();
    }

    /** Files a document after those that are there. */
    public void file(On on, String of, Paper paper) {
        int number = on(on, of).stream().mapToInt(Filed::number).max().orElse(0) + 1;
        drawer.write(new Filed(on, of, number, paper).key(), paper);
    }

    void remove(On on, String of, int number) {
        drawer.remove(on.path() + "/" + of + "/" + number);
    }

    private static Filed filed(Map.Entry<String, Paper> entry) {
        String key = entry.getKey();
        int first = key.indexOf('/');
        int last = key.lastIndexOf('/');
        return new Filed(
                On.at(key.substring(0, first)).orElseThrow(),
                key.substring(first + 1, last),
                Integer.parseInt(key.substring(last + 1)),
                entry.getValue());
    }
}
