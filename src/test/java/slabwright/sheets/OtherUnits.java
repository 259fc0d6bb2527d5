package slabwright.sheets;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slabwright.drawing.TextBox;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;

/** Finds measures of the system of units that a paper does not go with. */
final class OtherUnits {
  private static final Pattern METRIC =
      Pattern.compile(
          "\\d[ \u00a0]?(m|mm|cm|m²|cm²|mm²|m³|m³/h|kg|g|L|l|mL|µm|°C|m2|mm2|km/h|bar)(?![\\w²³/′])"
              + "|(^|,)(m|mm|m²|L|kg)(,|$)");
  private static final Pattern FEET =
      Pattern.compile(
          "\\d[ \u00a0]?(ft|in|sq ft|sq in|gal|lb|lbs|oz|fl oz|mil|mils|cfm|mph|°F|psi)\\b|\\d[′″]"
              + "|(^|,)(ft|in|sq ft|gal|lb)(,|$)");

  /** Machines as the sample names them: a name is not a measure. */
  private static final String NAMED = "(floor grinder|edge machine), \\d+ in";

  private OtherUnits() {}

  /** The lines of words in which one stands. */
  static List<String> in(Stream<String> lines, PaperSize paper) {
    Pattern other = paper.inches() ? METRIC : FEET;
    return lines.filter(w -> other.matcher(w.replaceAll(NAMED, "")).find()).distinct().toList();
  }

  /** The words on pages in which one stands. */
  static List<String> on(List<PrintedPage> pages, PaperSize paper) {
    return in(words(pages), paper);
  }

  /** All words on pages. */
  static Stream<String> words(List<PrintedPage> pages) {
    return pages.stream().flatMap(p -> TextBox.of(p.drawing()).stream()).map(TextBox::words);
  }
}
