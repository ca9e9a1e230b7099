package stillroom.desk.law;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillroom.desk.law.LawPage.TableRow;
import stillroom.desk.law.LawPage.Turning;
import stillroom.desk.shell.Format;
import stillroom.formulary.formula.ProductType;
import stillroom.formulary.rule.Limit;
import stillroom.formulary.rule.MarketLaw;
import stillroom.formulary.rule.Rule;
import stillroom.formulary.rule.RuleBook;
import stillroom.formulary.rule.Scope;

/** The record of the law in words, as of a day. */
final class LawView {
    private LawView() {}

    /** The tables of a market, each with how many rows count, and how many were read. */
    static List<TableRow> tables(MarketLaw law, LocalDate day) {
        Map<String, List<Rule>> byTable = new LinkedHashMap<>();
        law.rules()
                .forEach(rule -> byTable.computeIfAbsent(rule.table(), key -> new ArrayList<>())
                        .add(rule));
        List<TableRow> rows = new ArrayList<>();
        byTable.forEach((table, rules) -> rows.add(table(table, rules, day)));
        return List.copyOf(rows);
    }

    private static TableRow table(String table, List<Rule> rules, LocalDate day) {
        List<Rule> counting =
                rules.stream().filter(rule -> rule.span().countsOn(day)).toList();
        long read = counting.stream().filter(Rule::isRead).count();
        String sources = rules.stream()
                .map(rule -> rule.citation().sourceKey())
                .distinct()
                .sorted()
                .collect(Collectors.joining(", "));
        String readOn = rules.stream()
                .flatMap(rule -> rule.citation().readOn().stream())
                .max(Comparator.naturalOrder())
                .map(Format::day)
                .orElse("never");
        return new TableRow(
                table,
                words(table),
                rules.size(),
                counting.size(),
                (int) read,
                (int) (counting.size() - read),
                (int) rules.stream()
                        .filter(rule -> begins(rule).filter(day::isBefore).isPresent())
                        .count(),
                sources,
                readOn);
    }

    static String words(String table) {
        return switch (table) {
            case "annex-ii" -> "Annex II: prohibited";
            case "annex-iii" -> "Annex III: restricted";
            case "annex-iv" -> "Annex IV: colourants";
            case "annex-v" -> "Annex V: preservatives";
            case "annex-vi" -> "Annex VI: UV filters";
            case "allergens" -> "Perfume allergens to be named";
            case "guidance" -> "Advice of scientific bodies, no law";
            case "cfr" -> "Code of Federal Regulations, title 21";
            case "colours" -> "Colour additives";
            default -> table;
        };
    }

    /** The days after this one on which a row begins, ends or runs out of stock time, soonest first. */
    static List<Turning> turnings(RuleBook rules, LocalDate after) {
        Map<LocalDate, Map<String, Integer>> days = new TreeMap<>();
        for (MarketLaw law : rules.laws().values()) {
            for (Rule rule : law.rules()) {
                begins(rule).ifPresent(day -> count(days, day, law.market() + " new products must satisfy"));
                rule.span().until().ifPresent(day -> count(days, day.plusDays(1), law.market() + " count no longer"));
                rule.span()
                        .stockUntil()
                        .ifPresent(day ->
                                count(days, day.plusDays(1), law.market() + " older stock may no longer be sold"));
            }
        }
        List<Turning> turnings = new ArrayList<>();
        days.forEach((day, counts) -> {
            if (day.isAfter(after)) {
                turnings.add(new Turning(day, Format.day(day), said(counts)));
            }
        });
        return List.copyOf(turnings);
    }

    private static Optional<LocalDate> begins(Rule rule) {
        return rule.span().from();
    }

    private static void count(Map<LocalDate, Map<String, Integer>> days, LocalDate day, String what) {
        days.computeIfAbsent(day, key -> new TreeMap<>()).merge(what, 1, Integer::sum);
    }

    private static String said(Map<String, Integer> counts) {
        return counts.entrySet().stream()
                .map(one -> {
                    int space = one.getKey().indexOf(' ');
                    String market = one.getKey().substring(0, space);
                    return market + ": " + one.getValue() + (one.getValue() == 1 ? " row, " : " rows, ")
                            + one.getKey().substring(space + 1);
                })
                .collect(Collectors.joining("; "));
    }

    /** What a row asks, in words. */
    static String asks(Rule rule) {
        List<String> parts = new ArrayList<>();
        parts.add(kind(rule.kind()));
        Limit limit = rule.limit();
        limit.percent()
                .ifPresent(most -> parts.add("at most " + reckoned(most) + " %"
                        + (limit.expressedAs().isEmpty() ? "" : " as " + expressed(limit.expressedAs()))
                        + (limit.counting() == Limit.Counting.SUM
                                        && rule.substances().size() > 1
                                ? " together"
                                : "")));
        limit.phMin().ifPresent(least -> parts.add("pH at least " + reckoned(least)));
        limit.phMax().ifPresent(most -> parts.add("pH at most " + reckoned(most)));
        if (!limit.notWith().isEmpty()) {
            parts.add("not beside "
                    + limit.notWith().stream().sorted().map(LawView::expressed).collect(Collectors.joining(", ")));
        }
        return String.join("; ", parts);
    }

    /** A figure of the law as it is written there, no zeros added. */
    private static String reckoned(double figure) {
        return BigDecimal.valueOf(figure).stripTrailingZeros().toPlainString();
    }

    private static String expressed(String key) {
        return key.replace("ion:", "")
                .replace("element:", "")
                .replace("other-line:", "")
                .replace('-', ' ');
    }

    private static String kind(Rule.Kind kind) {
        return switch (kind) {
            case PROHIBITED -> "prohibited";
            case LIMIT -> "restricted";
            case LISTED -> "allowed on its conditions";
            case ALLERGEN -> "to be named on the label";
            case GUIDANCE -> "advice";
            case NOTICE -> "to be looked at";
        };
    }

    /** For which products and people a row speaks. */
    static String scope(Rule rule) {
        Scope scope = rule.scope();
        List<String> parts = new ArrayList<>();
        int types = ProductType.values().length;
        if (scope.products().size() < types) {
            parts.add(products(scope));
        }
        if (!scope.onlyFor().isEmpty()) {
            parts.add("for "
                    + scope.onlyFor().stream().sorted().map(Format::words).collect(Collectors.joining(", ")));
        }
        if (!scope.notFor().isEmpty()) {
            parts.add("not for "
                    + scope.notFor().stream().sorted().map(Format::words).collect(Collectors.joining(", ")));
        }
        if (scope.purpose() != Scope.Purpose.ANY) {
            parts.add("purpose: " + Format.words(scope.purpose()));
        }
        return parts.isEmpty() ? "all products" : String.join("; ", parts);
    }

    private static String products(Scope scope) {
        boolean allLeaveOn = scope.products().stream().allMatch(ProductType::leaveOn);
        boolean noneLeaveOn = scope.products().stream().noneMatch(ProductType::leaveOn);
        long leaveOn =
                Arrays.stream(ProductType.values()).filter(ProductType::leaveOn).count();
        if (allLeaveOn && scope.products().size() == leaveOn) {
            return "left on";
        }
        if (noneLeaveOn && scope.products().size() == ProductType.values().length - leaveOn) {
            return "rinsed off";
        }
        return scope.products().stream().sorted().map(ProductType::words).collect(Collectors.joining(", "));
    }

    /** The days on which a row counts. */
    static String days(Rule rule) {
        String from = begins(rule).map(day -> "from " + Format.day(day)).orElse("");
        String until =
                rule.span().until().map(day -> "until " + Format.day(day)).orElse("");
        String stock = rule.span()
                .stockUntil()
                .map(day -> "older stock until " + Format.day(day))
                .orElse("");
        String all = Stream.of(from, until, stock).filter(one -> !one.isEmpty()).collect(Collectors.joining(", "));
        return all.isEmpty() ? "in force" : all;
    }
}
