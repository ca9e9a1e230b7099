package stillroom.ledger.exchange;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The fields of one object of a file. What cannot be read is noted with the place and passed over; what was never asked
 * for is kept by {@link #done()}. Lives for one reading.
 */
final class Fields {
    private static final JsonNode NONE = com.fasterxml.jackson.databind.node.MissingNode.getInstance();

    private final ObjectNode node;
    private final String pointer;
    private final List<String> path;
    private final String where;
    private final Notes notes;
    private final Set<String> asked;

    private Fields(ObjectNode node, String pointer, List<String> path, String where, Notes notes, Set<String> asked) {
        this.node = node;
        this.pointer = pointer;
        this.path = path;
        this.where = where;
        this.notes = notes;
        this.asked = asked;
    }

    static Fields root(ObjectNode node, Notes notes) {
        return new Fields(node, "", List.of(), "", notes, new HashSet<>());
    }

    /** The same object, spoken of otherwise. */
    Fields called(String words) {
        return new Fields(node, pointer, path, words, notes, asked);
    }

    boolean has(String name) {
        return !value(name).isMissingNode();
    }

    void problem(String name, String sentence) {
        notes.problem(pointer, name, said(sentence));
    }

    void remark(String name, String sentence) {
        notes.remark(pointer, name, said(sentence));
    }

    private String said(String sentence) {
        return where.isEmpty() ? sentence : where + ": " + sentence;
    }

    /** What was never asked for is kept, with a remark. */
    void done() {
        for (Iterator<String> names = node.fieldNames(); names.hasNext(); ) {
            String name = names.next();
            if (asked.contains(name) || name.equals("$schema") || name.startsWith("//")) {
                if (!asked.contains(name)) {
                    keep(name);
                }
                continue;
            }
            keep(name);
            remark(name, "\"" + Shown.brief(name) + "\" is not a field of this format; it is kept and not judged");
        }
    }

    private void keep(String name) {
        List<String> whole = new ArrayList<>(path);
        whole.add(name);
        notes.keep(whole, JsonText.text(node.get(name)));
    }

    /** Missing where it is absent or null. */
    JsonNode value(String name) {
        asked.add(name);
        JsonNode value = node.get(name);
        return value == null || value.isNull() ? NONE : value;
    }

    /** Empty where absent. */
    String text(String name) {
        JsonNode value = value(name);
        if (value.isMissingNode()) {
            return "";
        }
        if (!value.isValueNode()) {
            problem(name, name + " must be a text");
            return "";
        }
        return value.asText().strip();
    }

    String requiredText(String name, String meaning) {
        String text = text(name);
        if (text.isEmpty()) {
            problem(name, name + " is missing: " + meaning);
        }
        return text;
    }

    /** A list of texts; a single text counts as a list of one. */
    List<String> texts(String name) {
        JsonNode value = value(name);
        List<String> texts = new ArrayList<>();
        if (value.isTextual()) {
            texts.add(value.asText().strip());
        } else if (!value.isMissingNode() && !value.isArray()) {
            problem(name, name + " must be a list of texts");
        }
        for (JsonNode one : value.isArray() ? value : List.<JsonNode>of()) {
            if (one.isTextual()) {
                texts.add(one.asText().strip());
            } else {
                problem(name, name + " must hold texts only, has " + Shown.brief(one.toString()));
            }
        }
        texts.removeIf(String::isEmpty);
        return texts;
    }

    Optional<BigDecimal> decimal(String name, int least, int most) {
        JsonNode value = value(name);
        if (value.isMissingNode()) {
            return Optional.empty();
        }
        Optional<BigDecimal> number = Decimal.of(value)
                .filter(one ->
                        one.compareTo(BigDecimal.valueOf(least)) >= 0 && one.compareTo(BigDecimal.valueOf(most)) <= 0);
        if (number.isEmpty()) {
            problem(
                    name,
                    name + " must be a number from " + least + " to " + most + ", is " + Shown.brief(value.toString()));
        }
        return number;
    }

    Optional<Double> number(String name, int least, int most) {
        return decimal(name, least, most).map(BigDecimal::doubleValue);
    }

    boolean flag(String name) {
        JsonNode value = value(name);
        if (!value.isMissingNode() && !value.isBoolean()) {
            problem(name, name + " must be true or false");
        }
        return value.asBoolean(false);
    }

    Optional<LocalDate> day(String name) {
        String text = text(name);
        try {
            return text.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException trouble) {
            problem(name, name + " must be a day such as 2026-11-25, is \"" + Shown.brief(text) + "\"");
            return Optional.empty();
        }
    }

    /** One of a closed set of words, written with hyphens or spaces, in any case. */
    <E extends Enum<E>> Optional<E> word(String name, Class<E> words) {
        String text = text(name);
        return text.isEmpty() ? Optional.empty() : word(name, text, words);
    }

    <E extends Enum<E>> Set<E> words(String name, Class<E> words) {
        return texts(name).stream()
                .flatMap(text -> word(name, text, words).stream())
                .collect(Collectors.toSet());
    }

    private <E extends Enum<E>> Optional<E> word(String name, String text, Class<E> words) {
        String bare = Words.bare(text);
        for (E constant : words.getEnumConstants()) {
            if (Words.of(constant).equals(bare)) {
                return Optional.of(constant);
            }
        }
        problem(
                name,
                name + " \"" + Shown.brief(text) + "\" is not known; one of "
                        + Arrays.stream(words.getEnumConstants()).map(Words::of).collect(Collectors.joining(", ")));
        return Optional.empty();
    }

    Optional<Fields> object(String name) {
        JsonNode value = value(name);
        if (value.isMissingNode()) {
            return Optional.empty();
        }
        if (value instanceof ObjectNode object) {
            return Optional.of(child(object, name, name, where.isEmpty() ? name : where + ", " + name));
        }
        problem(name, name + " must be an object in braces");
        return Optional.empty();
    }

    /** The objects of a list, each called by the word and its number. */
    List<Fields> objects(String name, String word) {
        JsonNode value = value(name);
        List<Fields> objects = new ArrayList<>();
        if (!value.isMissingNode() && !value.isArray()) {
            problem(name, name + " must be a list in brackets");
        }
        int index = 0;
        for (JsonNode one : value.isArray() ? value : List.<JsonNode>of()) {
            String called = (where.isEmpty() ? "" : where + ", ") + word + " " + (index + 1);
            if (one instanceof ObjectNode object) {
                List<String> step = new ArrayList<>(path);
                step.add(name);
                step.add(Kept.step(object, index));
                objects.add(
                        new Fields(object, pointer + "/" + name + "/" + index, step, called, notes, new HashSet<>()));
            } else {
                problem(name, word + " " + (index + 1) + " must be an object in braces");
            }
            index++;
        }
        return objects;
    }

    private Fields child(ObjectNode object, String name, String step, String called) {
        List<String> deeper = new ArrayList<>(path);
        deeper.add(step);
        return new Fields(object, pointer + "/" + name, deeper, called, notes, new HashSet<>());
    }
}
