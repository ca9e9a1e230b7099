package stillroom.ledger.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What is gathered while a file is read. Lives for one reading. */
final class Notes {
    private final Map<String, Integer> textLines;
    private final List<FileProblem> problems = new ArrayList<>();
    private final List<FileProblem> remarks = new ArrayList<>();
    private final List<Kept> kept = new ArrayList<>();

    /** @param textLines text line by JSON pointer */
    Notes(Map<String, Integer> textLines) {
        this.textLines = textLines;
    }

    void problem(String pointer, String field, String sentence) {
        problems.add(new FileProblem(textLine(pointer + "/" + field, pointer), field, sentence));
    }

    void remark(String pointer, String field, String sentence) {
        remarks.add(new FileProblem(textLine(pointer + "/" + field, pointer), field, sentence));
    }

    void keep(List<String> path, String json) {
        kept.add(new Kept(path, json));
    }

    boolean isSound() {
        return problems.isEmpty();
    }

    List<FileProblem> problems() {
        return problems;
    }

    List<FileProblem> remarks() {
        return remarks;
    }

    List<Kept> kept() {
        return kept;
    }

    private int textLine(String pointer, String orElse) {
        Integer line = textLines.get(pointer);
        return line == null ? textLines.getOrDefault(orElse, 0) : line;
    }
}
