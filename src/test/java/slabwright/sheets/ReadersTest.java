package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.Fill;
import slabwright.drawing.Palette;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextBox;
import slabwright.figures.MarkStyles;
import slabwright.figures.StencilInks;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.InlayPlan;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.site.MarkType;
import slabwright.site.Site;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.prep.FillerGap;

/** What those who hold a page must find on it, or must not find. */
class ReadersTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();

  private static List<PrintedPage> packet(Packet packet) {
    return HALL.packet(packet, PaperSize.LETTER).pages();
  }

  private static Stream<Text> texts(PrintedPage page) {
    return page.drawing().plain().stream().filter(Text.class::isInstance).map(Text.class::cast);
  }

  private static Stream<Stroke> strokes(PrintedPage page) {
    return page.drawing().plain().stream().filter(Stroke.class::isInstance).map(Stroke.class::cast);
  }

  /** Pages of days, before the posters, of which the first one lies. */
  private static List<PrintedPage> days(List<PrintedPage> pages) {
    return pages.stream()
        .takeWhile(p -> p.drawing().bounds().height() > p.drawing().bounds().width())
        .toList();
  }

  @Test
  void every_page_of_a_crews_day_says_when_to_stop_also_where_the_day_goes_on() {
    List<PrintedPage> pages = new ArrayList<>(days(packet(Packet.CREW)));
    pages.addAll(
        days(SheetSamples.sample("bike-workshop").packet(Packet.CREW, PaperSize.A4).pages()));
    assertThat(pages).anyMatch(p -> p.title().endsWith("continued"));
    for (PrintedPage page : pages) {
      assertThat(texts(page))
          .as(page.name())
          .anyMatch(t -> t.words().startsWith("Stop") && t.style().colour().equals(Palette.WHITE));
    }
  }

  @Test
  void a_doorway_that_the_plan_takes_as_sealed_stands_on_every_day_on_which_something_is_laid() {
    Site site =
        HALL.site()
            .withAreas(
                HALL.site().areas().stream()
                    .map(
                        a ->
                            a.withDoorways(
                                a.doorways().stream()
                                    .map(
                                        d ->
                                            d.id().equals("yard")
                                                ? d.withPassage(d.passage().withSealed(true))
                                                : d)
                                    .toList()))
                    .toList());
    PacketContents job =
        new PacketContents(
            site,
            HALL.results(),
            HALL.work(site),
            PaperSize.LETTER,
            SheetSamples.DAY,
            Words.english());
    List<PrintedPage> laid =
        days(PacketSet.of(Packet.CREW, job).pages()).stream()
            .filter(p -> texts(p).anyMatch(t -> t.words().contains("coat 1 of")))
            .toList();
    assertThat(laid).isNotEmpty();
    for (PrintedPage page : laid) {
      assertThat(new PageRules(page).words())
          .as(page.name())
          .contains("A tapes this shut before the first coat and it stays so: yard door.");
    }
    assertThat(PacketSet.of(Packet.FIRE_AND_SAFETY, job).pages())
        .extracting(p -> new PageRules(p).words())
        .anyMatch(w -> w.contains("A tapes this shut before the first coat"));
  }

  @Test
  void nothing_is_red_where_nothing_stops_people() {
    for (Packet packet : List.of(Packet.CREW, Packet.SIGN_SHOP, Packet.CLIENT, Packet.OFFICE)) {
      for (PrintedPage page : packet(packet)) {
        // the crew's copy of the fire plan marks what lights vapour as the fire packet does
        List<String> lights =
            page.title().equals("Air and gas meter") ? List.of("water heater") : List.of();
        assertThat(texts(page).filter(t -> t.style().colour().equals(Palette.RED)))
            .as(page.name())
            .extracting(Text::words)
            .isEqualTo(lights);
        assertThat(strokes(page).filter(s -> s.pen().equals(StencilInks.seamPen())))
            .allMatch(s -> !s.pen().colour().equals(Palette.RED));
      }
    }
    assertThat(MarkStyles.WAY_IN.colour()).isNotEqualTo(Palette.RED);
  }

  @Test
  void the_client_signs_for_a_place_without_seams_or_paper_on_it() {
    List<PrintedPage> sheets = HALL.on(PaperSize.TABLOID);
    assertThat(named(sheets, "inlay-placement").flatMap(ReadersTest::strokes))
        .anyMatch(s -> s.pen().equals(StencilInks.seamPen()));
    assertThat(named(sheets, "placement-approval")).isNotEmpty();
    assertThat(named(sheets, "placement-approval").flatMap(ReadersTest::strokes))
        .noneMatch(s -> s.pen().equals(StencilInks.seamPen()))
        .noneMatch(s -> s.pen().equals(StencilInks.skirtPen()));
    assertThat(named(sheets, "placement-approval").flatMap(ReadersTest::texts).map(Text::words))
        .noneMatch(w -> w.contains("seam"));
  }

  private static Stream<PrintedPage> named(List<PrintedPage> pages, String name) {
    return pages.stream().filter(p -> p.name().contains(name));
  }

  @Test
  void a_panels_letter_hides_nothing_that_is_weeded() {
    int letters = 0;
    for (PrintedPage page : named(packet(Packet.SIGN_SHOP), "stencil-").skip(1).toList()) {
      List<Fill> weeded =
          page.drawing().plain().stream()
              .filter(Fill.class::isInstance)
              .map(Fill.class::cast)
              .filter(f -> !f.colour().equals(Palette.WHITE))
              .toList();
      for (Text letter : texts(page).filter(t -> t.words().matches("[A-F]")).toList()) {
        letters++;
        Bounds box = TextBox.of(letter).bounds();
        for (Fill f : weeded) {
          assertThat(TextBox.of(letter).corners().points())
              .as("%s: %s", page.name(), letter.words())
              .noneMatch(p -> PageRules.isIn(f, p));
          assertThat(f.rings().stream().flatMap(r -> r.points().stream()))
              .as("%s: %s", page.name(), letter.words())
              .noneMatch(box::contains);
        }
      }
    }
    assertThat(letters).isEqualTo(6);
  }

  @Test
  void the_fire_plan_has_the_letters_of_all_walls() {
    List<String> words = texts(packet(Packet.FIRE_AND_SAFETY).get(0)).map(Text::words).toList();
    assertThat(words).contains("A", "B", "C", "D", "F");
    // The reading hall has six, the terrace four.
    assertThat(words.stream().filter(w -> w.matches("[A-F]"))).hasSizeGreaterThanOrEqualTo(9);
  }

  @Test
  void a_crew_whose_work_cannot_be_planned_sees_the_whole_floor_first() {
    PrintedPage first =
        SheetSamples.sample("depot-floor").packet(Packet.CREW, PaperSize.A4).pages().get(0);
    assertThat(texts(first).map(Text::words)).contains("Depot floor", "A", "B", "E", "gate 1");
  }

  @Test
  void a_job_whose_work_cannot_be_put_in_order_still_has_a_first_page_that_says_why() {
    SheetSamples depot = SheetSamples.sample("depot-floor");
    PrintedPage first = depot.packet(Packet.CREW, PaperSize.A4).pages().get(0);
    String words =
        TextBox.of(first.drawing()).stream().map(TextBox::words).collect(Collectors.joining(" "));
    assertThat(words).contains("Do not start", "lead", "Do nothing on this floor");
    assertThat(CrewPacket.html(depot.job(PaperSize.A4)))
        .contains("Do not start", "Do nothing on this floor");
  }

  @Test
  void what_is_missing_for_many_lines_is_said_once_with_their_number() {
    List<String> words =
        SheetSamples.sample("depot-floor").packet(Packet.OFFICE, PaperSize.A4).pages().stream()
            .flatMap(ReadersTest::texts)
            .map(Text::words)
            .toList();
    assertThat(words.stream().filter(w -> w.contains("air temperature of"))).hasSize(1);
    assertThat(words).anyMatch(w -> w.matches("\\d+ lines are open: The air temperature.*"));
  }

  @Test
  void the_office_gets_no_more_pages_than_it_can_read() {
    // One more than its own lists take: the rules on dust, noise and slip left the fire packet,
    // which has two pages less.
    assertThat(packet(Packet.OFFICE)).hasSizeLessThanOrEqualTo(14);
  }

  @Test
  void kinds_of_edges_are_in_the_readers_english() {
    List<String> feet =
        packet(Packet.OFFICE).stream().flatMap(ReadersTest::texts).map(Text::words).toList();
    List<String> metric =
        HALL.packet(Packet.OFFICE, PaperSize.A4).pages().stream()
            .flatMap(ReadersTest::texts)
            .map(Text::words)
            .toList();
    assertThat(feet).contains("curb").doesNotContain("kerb");
    assertThat(metric).contains("kerb").doesNotContain("curb");
  }

  @Test
  void the_phone_says_when_to_stop_before_the_work_and_a_black_print_keeps_it() {
    String html = CrewPacket.html(HALL.job(PaperSize.LETTER));
    for (String day : html.split("<section ", -1)) {
      if (day.startsWith("id=")) {
        assertThat(day.indexOf("class=\"stop\"")).isBetween(0, day.indexOf("class=\"row\""));
      }
    }
    String print = html.substring(html.indexOf("@media print"), html.indexOf("</style>"));
    // Browsers print no backgrounds: white words on red would be white on white.
    assertThat(print).containsPattern("\\.stop\\{background:#fff;color:#000");
  }

  @Test
  void the_phone_page_fits_360_pixels_in_words_of_16_or_more() {
    String html = CrewPacket.html(HALL.job(PaperSize.LETTER));
    assertThat(html).contains("content=\"width=device-width, initial-scale=1\"");
    String style = html.substring(html.indexOf("<style>"), html.indexOf("</style>"));
    List<Integer> sizes = pixels("font(?:-size)?:(?:\\w+ )?(\\d+)px", style);
    assertThat(sizes).isNotEmpty().allMatch(s -> s >= 16);
    assertThat(pixels("(?<!max-)width:(\\d+)px", style)).allMatch(w -> w <= 360 - 2 * 12);
    assertThat(style).contains("box-sizing:border-box", "overflow-wrap:break-word");
    assertThat(html).doesNotContain("nowrap", "<table", "<img", "style=");
  }

  private static List<Integer> pixels(String pattern, String css) {
    return Pattern.compile(pattern)
        .matcher(css)
        .results()
        .map(m -> Integer.valueOf(m.group(1)))
        .toList();
  }

  // What was left over from reading all pages, one each; the others: IgnitionCheckTest (sprinkler
  // heads), ReopeningTest (care outdoors), PagesTest (contractor), HandoversTest (load list).

  @Test
  void cut_in_is_drawn_beside_the_walls_not_under_their_line() {
    List<PrintedPage> rolling = named(packet(Packet.CREW), "rolling").toList();
    assertThat(rolling).isNotEmpty();
    for (PrintedPage page : rolling) {
      List<Line> walls =
          strokes(page)
              .filter(s -> s.pen().width() == MarkStyles.WALL.width())
              .flatMap(
                  s ->
                      Stream.concat(s.lines().stream(), s.rings().stream().map(ReadersTest::round)))
              .toList();
      List<Line> cutIn =
          strokes(page)
              .filter(s -> s.pen().colour().equals(Palette.AMBER) && s.pen().width() > 1)
              .flatMap(s -> s.lines().stream())
              .toList();
      assertThat(walls).as(page.name()).isNotEmpty();
      assertThat(cutIn).as(page.name()).isNotEmpty();
      double clear = MarkStyles.WALL.width() / 2;
      for (Line line : cutIn) {
        for (int i = 1; i < line.points().size(); i++) {
          Vec middle = line.points().get(i - 1).towards(line.points().get(i), 0.5);
          assertThat(walls).allMatch(w -> distance(w, middle) > clear);
        }
      }
    }
  }

  private static Line round(Ring ring) {
    List<Vec> points = new ArrayList<>(ring.points());
    points.add(points.get(0));
    return new Line(points);
  }

  private static double distance(Line line, Vec p) {
    double least = Double.MAX_VALUE;
    for (int i = 1; i < line.points().size(); i++) {
      Vec a = line.points().get(i - 1);
      Vec d = line.points().get(i).minus(a);
      double t = Math.min(1, Math.max(0, p.minus(a).dot(d) / Math.max(d.dot(d), 1e-12)));
      least = Math.min(least, a.plus(d.times(t)).distanceTo(p));
    }
    return least;
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void witness_crosses_are_three_millimetres_of_paper_at_least(PaperSize paper) {
    InlayPlan plan = HALL.results().get(0).inlays().get(0).plan();
    for (double scale : new double[] {1 / 10.0, 1 / 25.0, paper.inches() ? 1 / 96.0 : 1 / 100.0}) {
      List<Line> arms =
          StencilInks.witnesses(plan, plan.stencils().stencils(), scale).stream()
              .map(Stroke.class::cast)
              .flatMap(s -> s.lines().stream())
              .toList();
      assertThat(arms).isNotEmpty();
      assertThat(arms).allMatch(l -> l.points().get(0).distanceTo(l.points().get(1)) * scale >= 3);
    }
  }

  @Test
  void a_crack_or_joint_has_one_length_wherever_it_is_told() {
    for (String sample : List.of("tram-hall", "depot-floor")) {
      for (AreaResult a : SheetSamples.sample(sample).results()) {
        FloorTakeoff floor = a.takeoff();
        double filled =
            FillerGap.of(floor).stream()
                .filter(g -> g.kind() != MarkType.SPALL)
                .mapToDouble(FillerGap::run)
                .sum();
        double listed =
            floor.tally().lines().stream()
                .filter(l -> l.kind() == MarkType.CRACK || l.kind() == MarkType.JOINT)
                .mapToDouble(l -> l.length())
                .sum();
        assertThat(filled).as("%s, %s", sample, floor.area().name()).isCloseTo(listed, within(0.5));
      }
    }
  }

  private static org.assertj.core.data.Offset<Double> within(double mm) {
    return org.assertj.core.data.Offset.offset(mm);
  }

  @ParameterizedTest
  @EnumSource(Packet.class)
  void no_line_parts_a_number_from_its_fraction_or_its_unit(Packet packet) {
    Pattern begins =
        Pattern.compile(
            "(\\.\\d+|\\d+/\\d+″|[′″]|(sq ft|fl oz|ft|gal|lb|m²|mm|kg|°F|cfm|ppm)[.,;]?)( .*)?");
    for (PaperSize paper : List.of(PaperSize.LETTER, PaperSize.A4)) {
      for (PrintedPage page : HALL.packet(packet, paper).pages()) {
        List<Text> all = texts(page).toList();
        for (Text t : all) {
          assertThat(begins.matcher(t.words()).matches() && goesOn(all, t))
              .as("%s on %s: %s", page.name(), paper, t.words())
              .isFalse();
        }
      }
    }
  }

  /** Whether a line that ends in a digit stands right over this one; a column's head has none. */
  private static boolean goesOn(List<Text> all, Text t) {
    return all.stream()
        .anyMatch(
            o ->
                Math.abs(o.at().x() - t.at().x()) < 0.1
                    && o.at().y() < t.at().y()
                    && t.at().y() - o.at().y() < 8
                    && o.words().matches(".*\\d"));
  }
}
