package stillroom.ledger.imports;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What parts the columns of a text. */
enum Separator {
    TAB('\t', "\t"),
    SEMICOLON(';', ";"),
    BAR('|', "\\|"),
    COMMA(',', ","),
    /** Columns that were lined up by hand. */
    BLANKS(' ', " {2,}"),
    NONE('\0', "\u0000");

    private static final int LINES_LOOKED_AT = 200;
    private static final Pattern DECLARED = Pattern.compile("\\A\"?sep=(.)\"?\\R");
    private static final Pattern ALL_QUOTED =
            Pattern.compile("\\A\\s*\"[^\"\\n]*\"(?:([,;\\t|])\"[^\"\\n]*\")(?:\\1\"[^\"\\n]*\")*\\s*\\R");
    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");

    private final char sign;
    private final String form;

    Separator(char sign, String form) {
        this.sign = sign;
        this.form = form;
    }

    char sign() {
        return sign;
    }

    /** As a regular expression. */
    String form() {
        return form;
    }

    /** The one that the text declares, or the one that parts most lines into the same number of columns. */
    static Separator of(String text) {
        Matcher declared = DECLARED.matcher(text);
        Matcher quoted = ALL_QUOTED.matcher(text);
        if (quoted.find()) {
            return of(quoted.group(1).charAt(0));
        }
        if (declared.find()) {
            return of(declared.group(1).charAt(0));
        }
        List<String> lines = text.lines()
                .filter(line -> !line.isBlank())
                .limit(LINES_LOOKED_AT)
                .map(line -> QUOTED.matcher(line).replaceAll("\"\""))
                .toList();
        return Arrays.stream(values())
                .filter(one -> one != NONE && one.isPlausible(lines))
                .max(Comparator.comparingDouble((Separator one) -> one.fitness(lines))
                        .thenComparing(one -> -one.ordinal()))
                .orElse(NONE);
    }

    private static Separator of(char sign) {
        return Arrays.stream(values())
                .filter(one -> one.sign == sign)
                .findFirst()
                .orElse(COMMA);
    }

    /** A line such as "sep=;" that some spreadsheets write in front. */
    static String withoutDeclaration(String text) {
        return DECLARED.matcher(text).replaceFirst("");
    }

    static long quotes(String text) {
        return text.chars().filter(sign -> sign == '"').count();
    }

    /** A comma or a gap here and there is language; as a separator it stands in many lines, a comma not only in decimals. */
    private boolean isPlausible(List<String> lines) {
        if (this != COMMA && this != BLANKS) {
            return parts(lines) > 0;
        }
        long parting = lines.stream()
                .map(line -> this == COMMA ? line.replaceAll("(?<=\\d),(?=\\d)", ".") : line)
                .filter(line -> count(line) > 0)
                .count();
        return parting * 3 >= lines.size();
    }

    private long parts(List<String> lines) {
        return lines.stream().filter(line -> count(line) > 0).count();
    }

    /** Lines that it parts, more so where it parts them alike; a comma may be a decimal and blanks may be a slip. */
    private double fitness(List<String> lines) {
        long parted = parts(lines);
        long alike = lines.stream()
                .map(this::count)
                .filter(count -> count > 0)
                .collect(java.util.stream.Collectors.groupingBy(count -> count, java.util.stream.Collectors.counting()))
                .values()
                .stream()
                .mapToLong(count -> count)
                .max()
                .orElse(0);
        double trust = switch (this) {
            case TAB, SEMICOLON -> 1;
            case BAR -> 0.95;
            case COMMA -> 0.6;
            case BLANKS -> 0.5;
            case NONE -> 0;
        };
        return trust * (parted + alike);
    }

    private long count(String line) {
        return this == BLANKS
                ? line.strip().split(" {2,}").length - 1L
                : line.chars().filter(one -> one == sign).count();
    }
}
