package stillroom.formulary.imports;

import java.util.regex.Pattern;

/** Tells sentences about the work from names. */
final class Talk {
    private static final Pattern MEASURED = Pattern.compile(
            ".*\\d\\s*(°\\s*[cf]?|[cf]\\b|grad|degrees|min\\b|mins\\b|minut\\w*|sec\\b|sek\\b|seconds?|sekunden|stunden|std\\b|hours?|heures?|horas?|ore\\b|rpm|u/min|tr/min|giri)(?!\\p{L}).*");
    private static final Pattern SENTENCE = Pattern.compile(
            ".*\\p{L}{3,}[.!?]\\s+\\p{Lu}\\p{L}.*|(\\S+\\s+){3,}\\S*\\p{L}{3}[.!]|(\\S+\\s+){4,}\\S+[.!]");

    /** What is done at the bench: in most languages the sentence begins with it, in some it ends with it. */
    private static final Pattern DONE = Pattern.compile(
            "(\\d+[.)]\\s*|then |dann |puis )?(heat|warm|melt|mix|stir|blend|add|pour|homogeni[sz]e|disperse|dissolve|combine|whisk|sprinkle|hydrate|adjust|check|fill|weigh|let|leave|keep|wait"
                    + "|chauffe[rz]|melange[rz]|ajoute[rz]|remue[rz]|refroidi[rs]|fondre|verse[rz]|calentar|mezclar|anadir|agitar|enfriar|fundir"
                    + "|scaldare|mescolare|aggiungere|raffreddare|sciogliere) .+"
                    + "|.+ (erhitzen|erwarmen|schmelzen|mischen|ruhren|verruhren|zugeben|hinzugeben|hinzufugen|einruhren|abkuhlen|losen|auflosen|homogenisieren|dispergieren|quellen|abfullen|lassen"
                    + "|verwarmen|mengen|roeren|toevoegen|afkoelen|smelten)[.!]?");

    private Talk() {}

    /** Whether a text speaks of times, temperatures and speeds, or is a sentence. */
    static boolean is(String text) {
        return MEASURED.matcher(Folding.of(text)).matches()
                || DONE.matcher(Folding.of(text)).matches()
                || SENTENCE.matcher(text).matches();
    }
}
