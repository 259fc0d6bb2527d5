package slabwright.sheets;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.Dimension;
import slabwright.drawing.Palette;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextBox;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.json.InlayJson;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.crew.CrewPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.site.Site;
import slabwright.units.QuarterHour;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.ClosedAir;
import slabwright.work.MeterWatch;
import slabwright.work.Presence;
import slabwright.work.VapourLeft;
import slabwright.work.WorkPlan;
import slabwright.work.air.EntryLimit;
import slabwright.work.days.PersonRota;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;
import slabwright.work.step.StepKind;

/** What must hold of every page that the crew gets. */
class CrewPagesTest {
  private static final SheetSamples HALL = SheetSamples.tramHall();
  private static final SheetSamples STOPPED = SheetSamples.sample("bike-workshop");
  private static final double POINT = 25.4 / 72;
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("h:mm", Locale.ENGLISH);

  private static PacketContents job(SheetSamples sample, Site site, PaperSize paper) {
    return new PacketContents(
        site, sample.results(), sample.work(site), paper, SheetSamples.DAY, Words.english());
  }

  private static PacketContents job(PaperSize paper) {
    return HALL.job(paper);
  }

  private static List<PrintedPage> pages(PacketContents job) {
    return HALL.isJob(job)
        ? HALL.packet(Packet.CREW, job.paper()).pages()
        : PacketSet.of(Packet.CREW, job).pages();
  }

  private static Stream<Text> texts(PrintedPage page) {
    return page.drawing().plain().stream().filter(Text.class::isInstance).map(Text.class::cast);
  }

  private static String words(PrintedPage page) {
    return texts(page).map(Text::words).collect(Collectors.joining("\n"));
  }

  /** Pages of days, before the posters, of which the first one lies. */
  private static List<PrintedPage> days(List<PrintedPage> pages) {
    return pages.stream()
        .takeWhile(p -> p.drawing().bounds().height() > p.drawing().bounds().width())
        .toList();
  }

  /** The first page of each day. */
  private static List<PrintedPage> begun(List<PrintedPage> days) {
    return days.stream().filter(p -> !p.title().endsWith("continued")).toList();
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4", "TABLOID", "A3"})
  void all_ink_lies_inside_the_page_and_no_label_on_another(PaperSize paper) {
    for (PrintedPage page : pages(job(paper))) {
      Bounds inside = page.drawing().bounds().grown(-9.9);
      List<TextBox> boxes = TextBox.of(page.drawing());
      for (TextBox box : boxes) {
        Bounds b = box.bounds();
        assertThat(
                inside.contains(new Vec(b.minX(), b.minY()))
                    && inside.contains(new Vec(b.maxX(), b.maxY())))
            .as("%s on %s: %s", page.name(), paper, box.words())
            .isTrue();
      }
      page.drawing()
          .plain()
          .forEach(
              ink ->
                  assertThat(inside.including(ink.reach()))
                      .as("%s on %s", page.name(), paper)
                      .isEqualTo(inside));
      assertThat(clashes(boxes)).as("%s on %s", page.name(), paper).isEmpty();
    }
  }

  @Test
  void where_the_crew_works_stands_on_each_page_of_a_day_of_stencils_also_where_rows_are_many() {
    String here = Words.english().say("sheets.crew-day.work-here");
    List<PrintedPage> misting =
        days(pages(job(PaperSize.LETTER))).stream()
            .filter(p -> words(p).contains("Mist coats"))
            .toList();
    assertThat(misting).hasSizeGreaterThan(1);
    assertThat(misting).allSatisfy(p -> assertThat(words(p)).contains(here));
  }

  @Test
  void no_letter_of_a_wall_lies_in_the_blank_that_a_day_of_stencils_works_on() {
    List<PrintedPage> misting =
        days(pages(job(PaperSize.LETTER))).stream()
            .filter(p -> words(p).contains("Mist coats"))
            .toList();
    for (PrintedPage page : misting) {
      List<Bounds> here =
          page.drawing().plain().stream()
              .filter(Stroke.class::isInstance)
              .map(Stroke.class::cast)
              .filter(s -> s.pen().colour().equals(Palette.BLUE))
              .map(Stroke::reach)
              .toList();
      assertThat(here).as(page.name()).isNotEmpty();
      assertThat(texts(page).filter(t -> t.words().matches("[A-F]")))
          .as(page.name())
          .allSatisfy(
              t -> assertThat(here).noneSatisfy(b -> assertThat(b.contains(t.at())).isTrue()));
    }
  }

  private static List<String> clashes(List<TextBox> boxes) {
    List<String> clashes = new ArrayList<>();
    for (int i = 0; i < boxes.size(); i++) {
      for (int j = i + 1; j < boxes.size(); j++) {
        if (boxes.get(i).overlaps(boxes.get(j))) {
          clashes.add(boxes.get(i).words() + " / " + boxes.get(j).words());
        }
      }
    }
    return clashes;
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4", "TABLOID", "A3"})
  void words_are_ten_points_or_more_in_four_sizes_and_dimensions_fourteen_bold(PaperSize paper) {
    Set<Long> sizes = new TreeSet<>();
    for (PrintedPage page : pages(job(paper))) {
      page.drawing().inks().stream()
          .filter(Dimension.class::isInstance)
          .map(d -> ((Dimension) d).style())
          .forEach(
              s ->
                  assertThat(Math.round(s.size() / POINT) + " " + s.bold())
                      .as(page.name())
                      .isEqualTo("14 true"));
      texts(page)
          .forEach(
              t -> {
                assertThat(t.style().size() / POINT)
                    .as("%s: %s", page.name(), t.words())
                    .isGreaterThanOrEqualTo(9.999);
                sizes.add(Math.round(t.style().size() / POINT * 10));
              });
    }
    assertThat(sizes).hasSizeLessThanOrEqualTo(4);
  }

  @Test
  void a_day_page_starts_each_row_when_the_work_json_says_so() throws IOException {
    PacketContents job = job(PaperSize.LETTER);
    Set<String> starts = new TreeSet<>();
    JsonNode steps =
        new ObjectMapper().readTree(WorkJson.write(job.work(), Words.english())).at("/days/steps");
    steps.forEach(
        s ->
            s.get("spans")
                .forEach(
                    span ->
                        starts.add(
                            CLOCK.format(
                                QuarterHour.up(LocalDateTime.parse(span.get("start").asText()))))));
    // the crew sets up from the hour that it is paid from
    Presence.of(job.work().days().maybe().orElseThrow(), job.work().book()).days().stream()
        .map(d -> CLOCK.format(d.span().start()))
        .forEach(starts::add);
    // and the row of whoever stays or hands over where vapour outlasts a day's work
    VapourLeft.of(job.work()).forEach(l -> starts.add(CLOCK.format(l.from())));
    List<PrintedPage> days = days(pages(job));
    assertThat(days).hasSizeGreaterThan(4);
    for (PrintedPage page : days) {
      List<String> times =
          texts(page).map(Text::words).filter(w -> w.matches("\\d+:\\d\\d")).toList();
      assertThat(times).as(page.name()).isNotEmpty().isSubsetOf(starts);
    }
  }

  @Test
  void a_step_that_is_cut_says_whether_by_a_break_or_by_a_night() {
    PacketContents job = job(PaperSize.LETTER);
    String all =
        pages(job).stream()
            .flatMap(CrewPagesTest::texts)
            .map(Text::words)
            .collect(Collectors.joining(" "))
            .replace('\u00a0', ' ');
    int breaks = 0;
    int nights = 0;
    for (ScheduledStep s : job.work().days().maybe().orElseThrow().steps()) {
      for (int i = 1; i < s.spans().size(); i++) {
        LocalDateTime before = s.spans().get(i - 1).end();
        LocalDateTime after = s.spans().get(i).start();
        boolean day = before.toLocalDate().equals(after.toLocalDate());
        breaks += day ? 1 : 0;
        nights += day ? 0 : 1;
        String when =
            day
                ? "goes on after the break, at " + CLOCK.format(QuarterHour.up(after))
                : "goes on on "
                    + DateTimeFormatter.ofPattern("EEEE, MMM d", Locale.ENGLISH).format(after);
        assertThat(all).contains(when);
      }
    }
    assertThat(breaks).isPositive();
    assertThat(nights).isPositive();
    assertThat(all).doesNotContain("going on from before");
  }

  @ParameterizedTest
  @EnumSource(
      value = PaperSize.class,
      names = {"LETTER", "A4"})
  void every_length_of_the_posters_is_in_the_json(PaperSize paper) {
    PacketContents job = job(paper);
    List<String> files = new ArrayList<>();
    files.add(
        TallyJson.write(
            job.site(), job.areas().stream().map(AreaResult::ways).toList(), Words.english()));
    files.add(WorkJson.write(job.work(), Words.english()));
    for (AreaResult a : job.areas()) {
      a.inlays()
          .forEach(
              i ->
                  files.add(InlayJson.placed(i, a.takeoff(), job.site().units(), Words.english())));
    }
    PrintedNumbers json = new PrintedNumbers(files);
    List<String> missing = new ArrayList<>();
    for (PrintedPage page : pages(job)) {
      if (page.name().matches("page-\\d\\d-(setting-out|laying|lists).*")) {
        texts(page)
            .map(t -> t.words().replace('\u00a0', ' '))
            // the scale's own words and those of the check line
            .filter(w -> !w.contains("=") && !w.startsWith("this line measures"))
            .flatMap(w -> lengths(w).stream())
            .flatMap(l -> json.missing(l).stream())
            .forEach(n -> missing.add(page.name() + ": " + n));
      }
    }
    // The tape's own error, a stated habit and no result.
    missing.removeIf(n -> n.endsWith(" 1/8″") || n.endsWith(" 3 mm"));
    // A total of lengths that each stand in the JSON, beside which it says why.
    missing.removeAll(totals(pages(job)));
    assertThat(missing).isEmpty();
  }

  /** What stands in the line of a list's total, as it would be reported missing. */
  private static List<String> totals(List<PrintedPage> pages) {
    List<String> totals = new ArrayList<>();
    for (PrintedPage page : pages) {
      for (Text total : texts(page).filter(t -> t.words().startsWith("Total, ")).toList()) {
        texts(page)
            .filter(t -> Math.abs(t.at().y() - total.at().y()) < 0.1)
            .forEach(t -> totals.add(page.name() + ": " + t.words()));
      }
    }
    return totals;
  }

  private static List<String> lengths(String words) {
    return Pattern.compile(
            "(?:\\d+′ )?\\d+(?: \\d+/\\d+)?″|\\d+/\\d+″|\\d+\\.\\d{3} m\\b|\\d+ mm\\b")
        .matcher(words)
        .results()
        .map(MatchResult::group)
        .toList();
  }

  @Test
  void a_job_in_feet_prints_no_metric_unit_and_one_in_meters_no_foot() {
    Pattern metric = Pattern.compile("\\d ?(m|mm|cm|kg|m²|°C|L|mL|m³/h)(?![\\w²³/])");
    Pattern feet = Pattern.compile("[′″]|\\d ?(ft|sq ft|in|gal|fl oz|°F|cfm)(?!\\w)");
    for (PrintedPage page : pages(job(PaperSize.LETTER))) {
      assertThat(texts(page).map(Text::words).filter(w -> metric.matcher(w).find()))
          .as(page.name())
          .isEmpty();
    }
    // Machines and tools are called as they are in plan and shop book.
    Pattern called = Pattern.compile("(grinder|machine).*, \\d+ in\\b");
    for (PrintedPage page : pages(job(PaperSize.A4))) {
      assertThat(
              texts(page)
                  .map(t -> called.matcher(t.words()).replaceAll(""))
                  .filter(w -> feet.matcher(w).find()))
          .as(page.name())
          .isEmpty();
    }
  }

  @Test
  void every_page_of_a_stopped_job_says_so_first_in_red_and_has_no_dates() {
    List<PrintedPage> days = days(pages(job(STOPPED, STOPPED.site(), PaperSize.LETTER)));
    assertThat(days).isNotEmpty();
    for (PrintedPage page : days) {
      Text first =
          texts(page).filter(t -> t.words().startsWith("Do not start")).findFirst().orElseThrow();
      assertThat(first.style().colour()).isEqualTo(slabwright.drawing.Palette.RED);
      assertThat(words(page)).contains("asbestos");
      double below = first.at().y();
      assertThat(
              texts(page)
                  .filter(t -> t.at().y() < page.drawing().bounds().height() - 22)
                  .map(Text::words))
          .noneMatch(w -> w.matches(".*\\d:\\d\\d.*"))
          .noneMatch(w -> w.matches("(Mon|Tues|Wednes|Thurs|Fri)day.*"));
      assertThat(texts(page).filter(t -> t.words().startsWith("Grind") && t.at().y() < below))
          .isEmpty();
    }
  }

  @Test
  void a_stopped_job_tells_its_reasons_once_and_names_floor_and_hazard_on_every_page() {
    for (Words words : List.of(Words.english(), Words.of(Locale.forLanguageTag("es")))) {
      List<PrintedPage> days = days(pages(STOPPED.job(PaperSize.LETTER, words)));
      String law = "29 CFR 1926.1101";
      assertThat(words(days.get(0))).contains(law);
      assertThat(days.subList(1, days.size())).isNotEmpty();
      for (PrintedPage page : days.subList(1, days.size())) {
        List<String> red =
            texts(page)
                .filter(t -> t.style().colour().equals(slabwright.drawing.Palette.RED))
                .map(Text::words)
                .toList();
        assertThat(String.join(" ", red))
            .as(page.name())
            .contains(words.say("sheets.crew-day.do-not-start"), "Workshop: ")
            .contains(words.say("sheets.brief-stop.asbestos"))
            .contains(words.say("sheets.brief-stop.permit"))
            .contains(words.say("sheets.brief-stop.vapour"))
            .contains(words.language().equals("es") ? "ALTO." : "STOP.")
            .doesNotContain(law);
        assertThat(red).as(page.name()).hasSizeLessThanOrEqualTo(3);
      }
    }
  }

  @Test
  void posters_of_a_stopped_job_say_so_in_red_too() {
    List<PrintedPage> pages = pages(job(STOPPED, STOPPED.site(), PaperSize.LETTER));
    List<PrintedPage> posters = new ArrayList<>(pages);
    posters.removeAll(days(pages));
    assertThat(posters).isNotEmpty();
    for (PrintedPage page : posters) {
      assertThat(texts(page))
          .as(page.name())
          .anyMatch(
              t ->
                  t.words().startsWith("Do not start this job as planned: may hold asbestos")
                      && t.style().colour().equals(slabwright.drawing.Palette.RED));
      assertThat(clashes(TextBox.of(page.drawing()))).as(page.name()).isEmpty();
    }
  }

  @Test
  void cautions_are_five_or_more_with_fire_before_air_before_lungs_before_cords() {
    for (PrintedPage page : begun(days(pages(job(PaperSize.LETTER))))) {
      String words = words(page);
      int order = words.indexOf("Today, in this order");
      assertThat(order).as(page.name()).isPositive();
      assertThat(words.indexOf("\n5\n", order)).as(page.name()).isPositive();
      assertThat(words.indexOf("\n9\n", order)).isNegative();
      if (words.contains("Mist coat")) {
        List<Integer> places =
            Stream.of("no flame", "Air first", "No mask for vapor is named", "Cords")
                .map(w -> words.indexOf(w, order))
                .toList();
        assertThat(places).as(page.name()).isSorted().allMatch(i -> i > order);
        assertThat(words).contains("10 % of LEL");
      }
    }
  }

  @Test
  void where_the_air_stays_closed_a_row_says_nobody_goes_in() {
    PacketContents job = job(PaperSize.LETTER);
    WorkPlan work = job.work();
    ScheduledStep mist =
        work.days().maybe().orElseThrow().steps().stream()
            .filter(s -> s.task().type().kind() == StepKind.MIST_COAT)
            .findFirst()
            .orElseThrow();
    Duration after = Duration.ofMinutes(95);
    ClosedAir closed =
        new ClosedAir(
            mist.task().type().areaId(),
            mist.task().id(),
            EntryLimit.TENTH_OF_LEL,
            Optional.of(after),
            Optional.of(new TimeSpan(mist.start(), mist.end().plus(after))));
    PacketContents shut =
        new PacketContents(
            job.site(), job.areas(), with(work, closed), job.paper(), job.date(), job.words());
    String all = days(pages(shut)).stream().map(CrewPagesTest::words).collect(Collectors.joining());
    String clear = CLOCK.format(QuarterHour.up(mist.end().plus(after)));
    // Who is free to read it, by letter: nobody has to ask whose job it is.
    String reader =
        PersonRota.letter(
            MeterWatch.of(work.days().maybe().orElseThrow(), mist).person().orElseThrow());
    assertThat(all)
        .contains("nobody", reader + " reads the meter from the door", "About clear at " + clear);
    assertThat(days(pages(job)).stream().map(CrewPagesTest::words))
        .noneMatch(w -> w.contains("reads the meter from the door"));
  }

  private static WorkPlan with(WorkPlan work, ClosedAir closed) {
    return work.withOutlook(work.outlook().withClosed(List.of(closed)));
  }

  @Test
  void the_phone_page_has_each_day_and_loads_nothing() {
    PacketContents job = job(PaperSize.LETTER);
    String html = CrewPacket.html(job);
    assertThat(html)
        .startsWith("<!DOCTYPE html>")
        .contains("width=device-width")
        .doesNotContain("http", "src=", "url(", "@import", "<link", "<script");
    int days = begun(days(pages(job))).size();
    assertThat(html.split("<section ", -1)).hasSize(days + 1);
    assertThat(html.split("type=\"checkbox\"", -1)).hasSizeGreaterThan(days * 2);
    for (PrintedPage page : begun(days(pages(job)))) {
      assertThat(html).contains("<h2>" + page.title() + "</h2>");
    }
  }

  /** Residue off and the sealer both began at 12:15 by quarter hours, for the same two people. */
  @Test
  void nobody_is_told_to_begin_two_things_at_the_same_time() {
    Pattern rows = Pattern.compile("class=\"time\">([^<]+)</span><span class=\"who\">([^<]+)<");
    int later = 0;
    for (String day : CrewPacket.html(job(PaperSize.LETTER)).split("<section", -1)) {
      Set<String> begun = new TreeSet<>();
      for (MatchResult row : rows.matcher(day).results().toList()) {
        later += row.group(1).equals("then") ? 1 : 0;
        for (String person : row.group(2).split(", ", -1)) {
          assertThat(row.group(1).equals("then") || begun.add(row.group(1) + " " + person))
              .as("%s at %s", person, row.group(1))
              .isTrue();
        }
      }
    }
    assertThat(later).isPositive();
  }

  @Test
  void what_people_typed_is_escaped_on_the_phone_page() {
    Site site = HALL.site();
    Site named = site.withName("<b>Hall</b> & \"Co\"").withNote("<i>x</i>");
    String html = CrewPacket.html(job(HALL, named, PaperSize.LETTER));
    assertThat(html)
        .doesNotContain("<b>", "<i>")
        .contains("&lt;b&gt;Hall&lt;/b&gt; &amp; &quot;Co&quot;", "&lt;i&gt;x&lt;/i&gt;");
  }

  @Test
  void each_stencil_comes_up_before_the_next_one_is_laid() {
    String poster =
        pages(job(PaperSize.LETTER)).stream()
            .map(CrewPagesTest::words)
            .dropWhile(w -> !w.contains("Laying: Heron ring, "))
            .collect(Collectors.joining(" "));
    int at = 0;
    for (int stencil = 1; stencil <= 3; stencil++) {
      int begins = poster.indexOf("Stencil " + stencil + " of 3", at);
      assertThat(begins).as("stencil %d in %s", stencil, poster).isGreaterThanOrEqualTo(at);
      int lay = poster.toLowerCase(Locale.ENGLISH).indexOf("lay panel", begins);
      int mist = poster.indexOf("Mist its dye", begins);
      int up = poster.indexOf("Pull up slowly", begins);
      assertThat(List.of(begins, lay, mist, up)).isSorted();
      at = up;
    }
  }

  @Test
  void who_reads_the_meter_is_named_with_its_numbers_on_every_page_with_vapour_and_on_the_phone() {
    List<String> pages =
        HALL.packet(Packet.CREW, PaperSize.LETTER).pages().stream()
            .map(p -> new PageRules(p).words())
            .filter(w -> w.contains("meter at 10 % of LEL"))
            .toList();
    assertThat(pages).hasSizeGreaterThan(4);
    assertThat(pages)
        .allMatch(w -> w.contains("B only reads the gas meter, from the way in"))
        .allMatch(w -> w.contains("then every 15 min"))
        .allMatch(w -> w.contains("Far places by a hose laid before"))
        .allMatch(w -> w.contains("Meter in ppm, corrected for acetone: from 500 nobody"));
    assertThat(CrewPacket.html(HALL.job(PaperSize.LETTER)))
        .contains(
            "B only reads the gas meter, from the way in", "meter at 10 % of LEL or 2,500 ppm");
  }
}
