package stillroom.desk.cli.formula;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.Spec.Target;
import stillroom.desk.shell.Law;
import stillroom.formulary.formula.Brief;
import stillroom.formulary.material.StarterLibrary;
import stillroom.formulary.quantity.Grams;
import stillroom.formulary.rule.RuleBook;
import stillroom.formulary.rule.RuleTables;

/** What all commands on formula files are asked with. */
final class FormulaOptions {
    private static final BigDecimal MOST_GRAMS = BigDecimal.valueOf(100_000_000);

    @Parameters(paramLabel = "FILE", arity = "1..*", description = "Formula files; - for standard input.")
    private List<String> files = List.of();

    @Option(
            names = "--market",
            paramLabel = "CODE",
            description = "Market whose law is asked: EU, UK or US. Usually the file's own.")
    private @Nullable String market;

    @Option(
            names = "--as-of",
            paramLabel = "DAY",
            description = "Day whose law is asked, such as 2026-11-25. Usually today.")
    private @Nullable String day;

    @Option(names = "--json", description = "One JSON object a line, one for each file, in their order.")
    private boolean json;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "Folder of a workshop whose own cards are used besides the starter library.")
    private @Nullable Path data;

    @Spec(Target.MIXEE)
    @SuppressWarnings("NullAway.Init") // set by the command line parser
    private CommandSpec spec;

    List<String> files() {
        return files;
    }

    /** The day that was asked, else today. */
    LocalDate asOf() {
        if (day == null) {
            return LocalDate.now(Clock.systemDefaultZone());
        }
        try {
            return LocalDate.parse(day.strip());
        } catch (DateTimeParseException trouble) {
            throw slip("\"" + Plain.text(day) + "\" is no day; write it as 2026-11-25");
        }
    }

    private CommandLine.ParameterException slip(String sentence) {
        return new CommandLine.ParameterException(spec.commandLine(), sentence);
    }

    /** A mass above 0 that was typed for an option [g]. */
    Grams grams(String option, String typed) {
        if (typed.length() <= 20 && typed.matches("\\d+([.,]\\d+)?")) {
            BigDecimal grams = new BigDecimal(typed.replace(',', '.'));
            if (grams.signum() > 0 && grams.compareTo(MOST_GRAMS) <= 0) {
                return new Grams(grams);
            }
        }
        throw slip(option + " must be grams above 0, such as 500, is \"" + Plain.cut(typed, 40) + "\"");
    }

    /** The law on record, with the own countries of the workshop whose folder was named. */
    RuleBook rules() {
        return data == null ? RuleTables.standard() : Law.bookWith(data);
    }

    boolean json() {
        return json;
    }

    CommandSpec spec() {
        return spec;
    }

    Library library(RuleBook rules) {
        return Library.open(data, StarterLibrary.load(), rules);
    }

    /** Refuses a market that no rule table knows, and a day that is none, as slips of the command line. */
    void check(RuleBook rules) {
        asOf();
        market().filter(code -> rules.law(code).isEmpty()).ifPresent(code -> {
            throw slip("No rule tables are recorded for the market \"" + Plain.text(code) + "\"; choose one of "
                    + String.join(", ", new TreeSet<>(rules.laws().keySet())));
        });
    }

    /** The brief, for the market that was asked. */
    Brief asked(Brief brief) {
        return market().map(code -> new Brief(
                        brief.type(),
                        brief.people(),
                        brief.where(),
                        brief.feel(),
                        brief.phBand(),
                        brief.phTarget(),
                        brief.priceCeilingPer100g(),
                        brief.claims(),
                        brief.pack(),
                        code))
                .orElse(brief);
    }

    private Optional<String> market() {
        return Optional.ofNullable(market)
                .map(code -> code.strip().toUpperCase(Locale.ROOT))
                .map(code -> code.equals("GB") ? "UK" : code);
    }
}
