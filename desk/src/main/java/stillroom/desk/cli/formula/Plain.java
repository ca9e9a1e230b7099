package stillroom.desk.cli.formula;

import java.util.ArrayList;
import java.util.List;

/** Text for a terminal of 80 columns; whatever a stranger's file says, it moves no cursor. */
final class Plain {
    private static final int COLUMNS = 80;

    private Plain() {}

    /** Without control characters. */
    static String text(String any) {
        return any.replaceAll("[\\p{Cntrl}\\p{Cf}]+", " ");
    }

    /** A paragraph; its first line begins with {@code first}, the others with as many blanks as {@code margin}. */
    static String paragraph(String first, int margin, String any) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean begun = false;
        for (String word : text(any).strip().split("\\s+")) {
            if (begun && line.length() + 1 + word.length() > COLUMNS) {
                lines.add(line.toString());
                line = new StringBuilder(" ".repeat(margin)).append(word);
            } else {
                line.append(begun ? " " : "").append(word);
            }
            begun = true;
        }
        lines.add(line.toString());
        return String.join("\n", lines) + "\n";
    }

    /** Cut where it is longer. */
    static String cut(String any, int most) {
        String plain = text(any);
        return plain.length() <= most ? plain : plain.substring(0, most - 3) + "...";
    }
}
