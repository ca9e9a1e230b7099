package stillroom.formulary.imports;

import java.util.regex.Pattern;

/** Tells sentences about the work from names. */
final class Talk {
    private static final Pattern MEASURED = Pattern.compile(
            ".*\\d\\s*(°\\s*[cf]?|[cf]\\b|grad|degrees|min\\b|mins\\b|minut\\w*|sec\\b|sek\\b|seconds?|sekunden|stunden|std\\b|hours?|heures?|horas?|ore\\b|rpm|u/min|tr/min|giri)(?!\\p{L}).*");
    private static final Pattern SENTENCE =
            Pattern.compile(".*\\p{L}{3,}[.!?]\\s+\\p{Lu}.*|(\\S+\\s+){3,}\\S*\\p{L}{3}[.!]|(\\S+\\s+){4,}\\S+[.!]");

    private Talk() {}

    /** Whether a text speaks of times, temperatures and speeds, or is a sentence. */
    static boolean is(String text) {
        return MEASURED.matcher(Folding.of(text)).matches()
                || SENTENCE.matcher(text).matches();
    }
}
