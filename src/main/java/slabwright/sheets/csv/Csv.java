package slabwright.sheets.csv;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Tables as CSV (RFC 4180): comma, CRLF, quotes where needed. Cells that a spreadsheet would take
 * for a formula are made harmless by an apostrophe in front; plain numbers are left alone.
 */
final class Csv {
  private Csv() {}

  static String write(List<List<String>> rows) {
    return rows.stream()
        .map(r -> r.stream().map(Csv::cell).collect(Collectors.joining(",")) + "\r\n")
        .collect(Collectors.joining());
  }

  static String cell(String text) {
    String safe = isFormula(text) ? "'" + text : text;
    return safe.matches("(?s).*[\",\r\n].*") ? "\"" + safe.replace("\"", "\"\"") + "\"" : safe;
  }

  private static boolean isFormula(String text) {
    return text.matches("(?s)[=+\\-@\t\r].*") && !text.matches("-?\\d+(\\.\\d+)?");
  }
}
