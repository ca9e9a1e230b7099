package stillroom.formulary.imports;

import java.util.regex.Pattern;

/** Tells columns that keep an older state of a formula from their headings: "old %", "v1 (2019)", "Rev. 1 (alt)". */
final class OldColumns {
    private static final Pattern OLD = Pattern.compile(
            ".*\\b(old|older|before|previous(ly)?|former(ly)?|obsolete|outdated|superseded|withdrawn|original|do not use|don'?t use|not in use|alte?[rsn]?|bisher\\w*|vorher|veraltet|ungultig|nicht mehr|ancien(ne)?s?|avant|precedente?s?|obsolete?s?|perime|vecchi[oa]|prima|antigu[oa]s?|anterior(es)?|viej[oa]|oude?|vorige|vervallen)\\b.*");
    private static final Pattern NOT_OLD = Pattern.compile(
            ".*\\b(new|current|present|valid|now|in use|neu\\w*|aktuell\\w*|gultig|jetzt|nouve(au|lle)|actuel(le)?|nuov[oa]|attuale|nuev[oa]|actual|nieuwe?|huidige?)\\b.*");

    private OldColumns() {}

    static boolean isOld(String heading) {
        String folded = Folding.of(heading);
        return OLD.matcher(folded).matches() && !NOT_OLD.matcher(folded).matches();
    }
}
