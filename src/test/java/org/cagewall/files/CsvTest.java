package org.cagewall.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Tables by the rules of RFC 4180, section 2; the numbers are those of its rules. */
class CsvTest {

    private final Csv csv = new Csv(List.of("aaa", "bbb", "ccc"));

    @Test
    void rules1To4ARecordALineEndedByCrLfAHeaderFirstCommasBetween() {
        csv.row("zzz", "yyy", "xxx");

        assertThat(csv.text()).isEqualTo("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n");
    }

    @Test
    void rule6FieldsWithLineBreaksQuotesAndCommasAreQuoted() {
        csv.row("b \r\nbb", "a,b", "a\nb");

        assertThat(csv.text()).endsWith("\"b \r\nbb\",\"a,b\",\"a\nb\"\r\n");
    }

    @Test
    void rule7AQuoteInsideAFieldIsDoubled() {
        csv.row("b\"bb", "", "");

        assertThat(csv.text()).endsWith("\"b\"\"bb\",,\r\n");
    }

    @Test
    void spacesBelongToTheFieldAndWhatIsMissingIsEmpty() {
        csv.row(" a ", Optional.empty(), Optional.of(7));

        assertThat(csv.text()).endsWith(" a ,,7\r\n");
    }

    @Test
    void aFieldThatASpreadsheetWouldReckonIsShownInstead() {
        csv.row("=1+1", "+49 555", "-2");
        csv.row("@SUM(A1)", "a=b", "\t=1");

        assertThat(csv.text()).endsWith("'=1+1,'+49 555,'-2\r\n'@SUM(A1),a=b,'\t=1\r\n");
    }
}
