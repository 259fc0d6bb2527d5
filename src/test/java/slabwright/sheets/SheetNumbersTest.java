package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.Text;
import slabwright.sheets.json.InlayJson;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.TypeSizes;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.WorkPlan;

/** Whatever number sheets 5 to 8 and the handovers print is in the JSON. */
class SheetNumbersTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();

  private static final Pattern NUMBERED =
      Pattern.compile(
          "page-\\d\\d-(quantities|day-plan|rolling-order|air|scope|placement-approval|reopening|load|walkthrough).*");

  /** What is printed and is no result: each with its reason. */
  private static final Set<String> EXCEPTIONS =
      Set.of(
          // the sheet's own number, beside its title
          "[5-8]",
          // the ticks of a chart's axis, days and shares
          "[A-Z][a-z]{2} \\d+ [A-Z][a-z]{2}",
          // the code's own paragraph, in the key
          "25 % of LEL: not to be passed \\(NFPA 30, IMC 502\\.7\\.3\\.3\\)",
          // the year in which a chart was revised
          ".*Chart (before|since) 2017.*",
          // dye in laying order: a list's number and the colour's name
          "\\d\\. [a-z -]+");

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"TABLOID", "A4"})
  void every_number_of_sheets_5_to_8_and_the_handovers_is_in_the_json(PaperSize paper) {
    PrintedNumbers json = new PrintedNumbers(json(paper, true));
    assertThat(notIn(json, paper)).isEmpty();
  }

  @Test
  void without_the_work_json_most_numbers_are_missed() {
    PrintedNumbers json = new PrintedNumbers(json(PaperSize.TABLOID, false));
    assertThat(notIn(json, PaperSize.TABLOID)).hasSizeGreaterThan(100);
  }

  private static List<String> notIn(PrintedNumbers json, PaperSize paper) {
    List<String> missing = new ArrayList<>();
    for (PrintedPage page : HALL.on(paper)) {
      if (NUMBERED.matcher(page.name()).matches()) {
        printed(page, paper)
            .forEach(
                t ->
                    json.missing(t).forEach(n -> missing.add(page.name() + ": " + n + " in " + t)));
      }
    }
    return missing;
  }

  /** The title strip and, over it, what says or checks the scale are left out. */
  private static Stream<String> printed(PrintedPage page, PaperSize paper) {
    PageFrame frame = PageFrame.of(paper);
    return page.drawing().plain().stream()
        .filter(Text.class::isInstance)
        .map(Text.class::cast)
        .filter(t -> t.at().y() < frame.titleStrip().minY())
        .filter(t -> t.at().y() < frame.drawn().maxY() || !isScale(t, frame))
        .filter(t -> !isTick(t, frame.type()))
        .map(Text::words)
        .filter(w -> EXCEPTIONS.stream().noneMatch(w::matches));
  }

  /** In the band left of the tables that only pages with a drawing have. */
  private static boolean isScale(Text t, PageFrame frame) {
    return t.words().contains("this line measures")
        || (t.words().matches("1:\\d+|[\\d/ ]+″ = 1′ 0″|[\\d.]+( (ft|in|m|mm))?")
            && t.at().x() < frame.side().minX()
            && t.style().size() == frame.type().small().size());
  }

  private static boolean isTick(Text t, TypeSizes type) {
    return t.style().equals(type.small()) && t.words().matches("[\\d.]+ %");
  }

  private static List<String> json(PaperSize paper, boolean work) {
    UnitSystem units = paper.inches() ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
    var shown = HALL.site().withUnits(units);
    List<String> files = new ArrayList<>();
    files.add(
        TallyJson.write(
            shown, HALL.results().stream().map(AreaResult::ways).toList(), Words.english()));
    for (AreaResult a : HALL.results()) {
      a.inlays().forEach(i -> files.add(InlayJson.placed(i, a.takeoff(), units, Words.english())));
    }
    WorkPlan plan = HALL.work(shown);
    if (work) {
      files.add(WorkJson.write(plan, Words.english()));
    }
    return files;
  }
}
