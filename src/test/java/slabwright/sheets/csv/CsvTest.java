package slabwright.sheets.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CsvTest {
  /** RFC 4180, section 2: rows end in CRLF; fields with commas, quotes or breaks are quoted. */
  @Test
  void follows_rfc_4180() {
    assertThat(Csv.write(List.of(List.of("aaa", "b \"bb", "c,cc"), List.of("x", "y\r\nz", ""))))
        .isEqualTo("aaa,\"b \"\"bb\",\"c,cc\"\r\nx,\"y\r\nz\",\r\n");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      quoteCharacter = '~',
      value = {
        "=1+1; '=1+1",
        "+49; '+49",
        "@me; '@me",
        "-cmd; '-cmd",
        "-12.5; -12.5",
        "plain; plain"
      })
  void what_a_spreadsheet_would_run_is_made_harmless(String text, String cell) {
    assertThat(Csv.cell(text)).isEqualTo(cell.replace("''", "'"));
  }
}
