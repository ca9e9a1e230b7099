package stillroom.ledger.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillroom.formulary.formula.Amount;
import stillroom.formulary.quantity.Percent;

class FormulaFaultTest {
    private static Reading read(String line) {
        return FormulaFileReader.read(
                "{\"brief\": {\"type\": \"toner\"},\n \"lines\": [\n  {\"inci\": \"Aqua\", \"qs\": \"100\"},\n  " + line
                        + "\n]}");
    }

    private static String said(Reading reading) {
        assertThat(reading.file()).isEmpty();
        assertThat(reading.problems()).isNotEmpty();
        return reading.problems().stream().map(FileProblem::words).collect(Collectors.joining("; "));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "{'inci':'Glycerin','percent':-2} | line 2 (Glycerin): percent must be a number from 0 to 100, is -2 (text line 4)",
                "{'inci':'Glycerin','percent':101} | line 2 (Glycerin): percent must be a number from 0 to 100, is 101 (text line 4)",
                "{'inci':'Glycerin','percent':1e999999999} | line 2 (Glycerin): percent must be a number from 0 to 100",
                "{'inci':'Glycerin','percent':1e-999999999} | line 2 (Glycerin): percent must be a number from 0 to 100",
                "{'inci':'Glycerin','percent':'NaN'} | line 2 (Glycerin): percent must be a number from 0 to 100",
                "{'inci':'Glycerin','percent':NaN} | this is not JSON",
                "{'inci':'Glycerin','percent':'1,250'} | line 2 (Glycerin): percent must be a number from 0 to 100",
                "{'inci':'Glycerin','percent':[2]} | line 2 (Glycerin): percent must be a number from 0 to 100",
                "{'inci':'Glycerin'} | line 2 (Glycerin): percent is missing",
                "{'percent':2} | line 2: one of material, inci or cas is missing",
                "{'inci':'Glycerin','cas':'56-81-5','percent':2} | line 2: only one of",
                "{'inci':'Glycerin','qs':'colour','percent':2} | line 2 (Glycerin): qs \"colour\" is not known",
                "{'inci':'Glycerin','qs':'ph'} | line 2 (Glycerin): a line q.s. to a reading needs",
                "{'inci':'Glycerin','qs':'ph','percent':1,'low':2,'high':3} | line 2 (Glycerin): low, percent and high must ascend",
                "{'inci':'Glycerin','qs':'100','percent':3} | line 2 (Glycerin): a line q.s. to 100 has no percent",
                "{'inci':'Glycerin','percent':3,'percent':4} | this is not JSON: Duplicate field",
                "'Glycerin' | line 2 must be an object in braces"
            })
    void faultOfALineIsToldWithLineAndField(String line, String expected) {
        assertThat(said(read(line.replace('\'', '"')))).contains(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\0',
            value = {
                "{ | this is not JSON",
                "[] | a formula file is one object in braces",
                "null | a formula file is one object in braces",
                "{} | brief is missing",
                "{'brief':{}} | brief: type is missing",
                "{'brief':{'type':'cake'},'lines':[]} | type \"cake\" is not known",
                "{'brief':{'type':'toner','use':'rinse-off'},'lines':[]} | use is rinse-off",
                "{'brief':{'type':'toner','ph':{'low':6,'high':4}},'lines':[]} | ph must be a number",
                "{'brief':{'type':'toner','ph':[4,5]},'lines':[]} | the formula has no lines",
                "{'brief':{'type':'toner','market':'../EU'},'lines':[]} | market must be a code",
                "{'stillroom':'workshop','brief':{'type':'toner'}} | this file holds \"workshop\"",
                "{'brief':{'type':'toner'},'lines':{}} | lines must be a list",
                "{'brief':{'type':'toner'},'lines':[]} trailing | this is not JSON",
                "{'brief':{'type':'toner'},'materials':[{'key':'../../etc/passwd'}]} | key must be small letters",
                "{'brief':{'type':'toner'},'materials':[{'key':'a','composition':[{'material':'b','percent':100}]},{'key':'b','composition':[{'material':'a','percent':100}]}]} | a material contains itself: a → b → a",
                "{'brief':{'type':'toner'},'materials':[{'key':'a','composition':[{'inci':'Aqua','percent':70},{'inci':'Glycerin','percent':70}]}]} | more than 100 %",
                "{'brief':{'type':'toner'},'materials':[{'key':'a'},{'key':'a'}]} | key a stands there twice",
                "{'brief':{'type':'toner'},'materials':[{'key':'a','strength':{'percent':30}}]} | a strength needs its basis",
                "{'brief':{'type':'toner'},'substances':[{'key':'a','inci':'A','cas':['56-81-6']}]} | its check digit is wrong"
            })
    void faultOfAFileIsToldInASentence(String text, String expected) {
        assertThat(said(FormulaFileReader.read(text.replace('\'', '"')))).contains(expected);
    }

    @Test
    void everyFaultIsToldAtOnce() {
        assertThat(read("{\"inci\":\"A\",\"percent\":-1},\n{\"inci\":\"B\",\"percent\":\"x\"}")
                        .problems())
                .extracting(FileProblem::textLine)
                .containsExactly(4, 5);
    }

    @ParameterizedTest
    @ValueSource(strings = {"2.5", "\"2.5\"", "\"2,5\"", "\"2.5 %\"", "2.50"})
    void percentIsReadAsPeopleTypeIt(String percent) {
        Reading reading = read("{\"inci\":\"Glycerin\",\"percent\":" + percent + "}");
        assertThat(reading.file().orElseThrow().formula().lines().get(1).amount())
                .isEqualTo(new Amount.Fixed(Percent.of("2.5")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\"qs\":\"100\"", "\"qs\":100", "\"qs\":\"to 100\"", "\"percent\":\"q.s.\"", "\"qs\":true"})
    void upToHundredIsReadAsPeopleTypeIt(String amount) {
        String text = "{\"brief\": {\"type\": \"Face Cream\"}, \"lines\": [{\"inci\":\"Aqua\"," + amount + "}]}";
        assertThat(FormulaFileReader.read(text)
                        .file()
                        .orElseThrow()
                        .formula()
                        .lines()
                        .get(0)
                        .amount())
                .isEqualTo(new Amount.ToHundred());
    }

    @Test
    void tooLargeTooDeepOrTruncatedIsRefused() {
        byte[] large = new byte[JsonText.MOST_BYTES + 1];
        Arrays.fill(large, (byte) ' ');
        assertThat(said(FormulaFileReader.read(large))).contains("larger than 2 MB");
        assertThat(said(FormulaFileReader.read("{\"a\":".repeat(500)))).contains("not JSON");
        assertThat(said(FormulaFileReader.read("[".repeat(100_000)))).contains("not JSON");
        byte[] latin = "{\"name\": \"Créme\"}".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(said(FormulaFileReader.read(latin))).contains("not JSON");
        String whole = "{\"brief\":{\"type\":\"toner\"},\"lines\":[{\"inci\":\"Aqua\",\"qs\":\"100\"}]}";
        for (int end = 0; end < whole.length(); end++) {
            assertThat(FormulaFileReader.read(whole.substring(0, end)).problems())
                    .isNotEmpty();
        }
    }

    @Test
    void aSignOfByteOrderIsPassedOver() {
        String text = "\uFEFF{\"brief\":{\"type\":\"toner\"},\"lines\":[{\"inci\":\"Aqua\",\"qs\":\"100\"}]}";
        assertThat(FormulaFileReader.read(text).problems()).isEmpty();
    }
}
