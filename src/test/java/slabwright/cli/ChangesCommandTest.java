package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.floor.FloorTakeoff;
import slabwright.site.Exposure;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.store.PlanFile;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class ChangesCommandTest {
  private static final Pattern LONGER_WALL =
      Spoken.line("project.plan-changes.wall", "1", "8.500 m", "8.000 m");

  @TempDir private Path folder;

  private Path plan;
  private String said = "";

  private static Site shed(double length) {
    FloorArea area =
        FloorArea.of(
            "a1",
            "Shed",
            List.of(
                OutlinePiece.wall(Spot.mm(0, 0)),
                OutlinePiece.wall(Spot.mm(length, 0)),
                OutlinePiece.wall(Spot.mm(length, 6000)),
                OutlinePiece.wall(Spot.mm(0, 6000))));
    return Site.empty("Tram shed", UnitSystem.METRIC).withAreas(List.of(area));
  }

  @BeforeEach
  void a_plan_on_disk() throws IOException {
    plan = folder.resolve("shed.site.json");
    PlanFile.save(shed(8000), plan);
  }

  private int run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = SlabwrightCommand.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    said = out + err.toString();
    return code;
  }

  private static String say(String key) {
    return Words.english().say(key);
  }

  private Site saved() {
    return PlanFile.read(plan).orThrow();
  }

  @Test
  void a_release_is_frozen_beside_the_plan_and_the_plan_carries_its_number() throws IOException {
    assertThat(run("release", plan.toString(), "--note", "to the shop")).as(said).isZero();
    assertThat(saved().releaseNumber()).isEqualTo(1);
    assertThat(saved().releases().get(0).note()).isEqualTo("to the shop");
    assertThat(folder.resolve("shed-release-1").resolve("shed.site.json")).exists();
    assertThat(said)
        .containsPattern(
            Spoken.of("cli.release.issued", 1, folder.resolve("shed-release-1").toString()));
    assertThat(run("release", plan.toString())).isZero();
    assertThat(saved().releaseNumber()).isEqualTo(2);
  }

  @Test
  void without_a_release_there_is_nothing_to_compare_with() {
    assertThat(run("changes", plan.toString())).isEqualTo(ExitCode.REFUSED.code());
    assertThat(said).containsPattern(Spoken.of("project.plan-comparison.no-release"));
  }

  @Test
  void nothing_changed_since_the_last_release() {
    run("release", plan.toString());
    assertThat(run("changes", plan.toString())).as(said).isZero();
    assertThat(said).containsPattern(Spoken.of("cli.changes.none", 1));
  }

  @Test
  void a_longer_wall_is_told_with_both_areas_and_the_difference() throws IOException {
    run("release", plan.toString());
    PlanFile.save(shed(8500).withReleases(saved().releases()), plan);
    assertThat(run("changes", plan.toString(), "--since", "1")).as(said).isZero();
    String before =
        QuantityFormat.area(
            FloorTakeoff.of(shed(8000).areas().get(0)).net().area(), UnitSystem.METRIC);
    String after =
        QuantityFormat.area(
            FloorTakeoff.of(shed(8500).areas().get(0)).net().area(), UnitSystem.METRIC);
    assertThat(said).containsPattern(LONGER_WALL);
    assertThat(said)
        .containsPattern(
            say("project.figure-change.net-floor")
                + " +"
                + before
                + " +"
                + after
                + " +\\+"
                + QuantityFormat.area(3e6, UnitSystem.METRIC));
  }

  @Test
  void a_plan_has_the_figures_of_today_beside_a_release_that_a_number_names() throws IOException {
    run("release", plan.toString());
    PlanFile.save(shed(8500).withReleases(saved().releases()), plan);
    run("release", plan.toString());
    run("changes", plan.toString());
    assertThat(said).containsPattern(Spoken.of("cli.changes.none", 2));
    run("changes", plan.toString(), "--since", "1");
    assertThat(said).containsPattern(Spoken.of("cli.changes.since", 1));
  }

  @Test
  void hours_of_presence_stand_beside_hours_of_steps() throws IOException {
    run("release", plan.toString());
    Site ground =
        shed(8000)
            .withAreas(
                shed(8000).areas().stream()
                    .map(a -> a.withFinish(new Finish(Optional.of(Exposure.FINE), List.of())))
                    .toList())
            .withReleases(saved().releases());
    PlanFile.save(ground, plan);
    assertThat(run("changes", plan.toString())).as(said).isZero();
    assertThat(hours("project.figure-change.presence"))
        .isGreaterThan(hours("project.figure-change.crew"))
        .isPositive();
  }

  private double hours(String key) {
    Matcher row = Pattern.compile(say(key) + " +\\S+ +([0-9.,]+)").matcher(said);
    assertThat(row.find()).as(said).isTrue();
    return Double.parseDouble(row.group(1).replace(",", ""));
  }

  @Test
  void a_frozen_copy_that_is_gone_is_asked_for() throws IOException {
    run("release", plan.toString());
    Path copy = folder.resolve("shed-release-1");
    Files.move(copy, folder.resolve("elsewhere"));
    assertThat(run("changes", plan.toString())).isEqualTo(ExitCode.REFUSED.code());
    assertThat(said)
        .containsPattern(Spoken.of("project.plan-comparison.no-copy", 1, "shed-release-1"));
  }

  @Test
  void a_change_order_has_before_after_difference_and_lines_to_sign() throws IOException {
    run("release", plan.toString());
    PlanFile.save(shed(8500).withReleases(saved().releases()), plan);
    Path order = folder.resolve("order.pdf");
    assertThat(run("changes", plan.toString(), "--order", order.toString())).as(said).isZero();
    try (PDDocument document = Loader.loadPDF(order.toFile())) {
      assertThat(document.getNumberOfPages()).isEqualTo(1);
      String page = new PDFTextStripper().getText(document);
      assertThat(page)
          .containsPattern(Spoken.of("sheets.change-order.subtitle", 1))
          .containsPattern(LONGER_WALL)
          .containsPattern("48\\.0 m² +51\\.0 m² +\\+3\\.0 m²")
          .contains(say("sheets.change-order.client"), say("sheets.sign-block.signature"))
          .contains("draft, ")
          .doesNotContain("hours");
    }
  }

  @Test
  void a_change_order_replaces_nothing_but_a_pdf_and_is_refused_when_nothing_changed()
      throws IOException {
    run("release", plan.toString());
    Path order = folder.resolve("order.pdf");
    assertThat(run("changes", plan.toString(), "--order", order.toString()))
        .isEqualTo(ExitCode.REFUSED.code());
    assertThat(said).containsPattern(Spoken.of("project.change-order-file.none", 1));
    assertThat(order).doesNotExist();
    assertThat(run("changes", plan.toString(), "--order", plan.toString()))
        .isEqualTo(ExitCode.REFUSED.code());
    assertThat(said).containsPattern(Spoken.of("cli.changes.not-a-pdf", plan.toString()));
    assertThat(saved().name()).isEqualTo("Tram shed");
  }

  @Test
  void the_clients_packet_opens_with_the_change_order_where_the_plan_left_its_release()
      throws IOException {
    run("release", plan.toString());
    PlanFile.save(shed(8500).withReleases(saved().releases()), plan);
    Path out = folder.resolve("out");
    assertThat(run("job", plan.toString(), "--out", out.toString())).as(said).isZero();
    try (PDDocument document = Loader.loadPDF(out.resolve("1-client.pdf").toFile())) {
      PDFTextStripper first = new PDFTextStripper();
      first.setEndPage(1);
      assertThat(first.getText(document)).contains("Change order", "Client, page 1 of");
    }
  }
}
