package slabwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.floor.FloorTakeoff;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.store.PlanFile;
import slabwright.units.UnitSystem;

class TapedPlanTest {
  private static final String TAPE = "sample-plans/back-office.tape";

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    return SlabwrightCommand.run(new PrintWriter(out), new PrintWriter(err), args);
  }

  @Test
  void a_plan_begins_with_the_taped_room_and_keeps_its_readings() {
    Path plan = folder.resolve("office.site.json");
    assertThat(run("tape", TAPE, "--plan", plan.toString())).isZero();
    Site site = PlanFile.read(plan).orThrow();
    FloorArea room = site.areas().get(0);
    assertThat(room.name()).isEqualTo("back-office");
    assertThat(room.details().taped()).anyMatch(l -> l.startsWith("diagonal A C"));
    assertThat(room.outline()).hasSize(6);
    double feet = FloorTakeoff.of(room).net().area() / (304.8 * 304.8);
    assertThat(out.toString()).contains("Area 167.0 sq ft");
    assertThat(feet).isCloseTo(167.0, within(0.05));
    assertThat(room.outline())
        .allSatisfy(p -> assertThat(p.from().vec().x()).isGreaterThanOrEqualTo(-1e-6))
        .allSatisfy(p -> assertThat(p.from().vec().y()).isGreaterThanOrEqualTo(-1e-6));
  }

  @Test
  void a_room_taped_in_metres_is_told_in_metres_and_gives_a_plan_in_metres() throws IOException {
    String walls = "wall 6 m right\nwall 4.5 m right\nwall 6 m right\nwall 4.5 m right\n";
    Path tape = Files.writeString(folder.resolve("m.tape"), walls + "diagonal A C 24' 7 1/4\"\n");
    Path plan = folder.resolve("m.site.json");
    assertThat(run("tape", tape.toString(), "--plan", plan.toString())).isZero();
    assertThat(PlanFile.read(plan).orThrow().units()).isEqualTo(UnitSystem.METRIC);
    assertThat(out.toString()).contains("27.0").doesNotContain("′", "″", "sq ft");
  }

  @Test
  void a_room_taped_in_feet_is_told_in_feet_alone() {
    assertThat(run("tape", TAPE)).isZero();
    assertThat(out.toString()).contains("7/64″").doesNotContainPattern("\\d mm|\\d m\\b|m²");
  }

  @Test
  void units_that_are_asked_for_come_before_those_that_were_typed() {
    assertThat(run("tape", TAPE, "--units", "metric")).isZero();
    assertThat(out.toString()).contains("15.51 m²").doesNotContain("″");
  }

  @Test
  void the_main_job_runs_on_it() {
    Path plan = folder.resolve("office.site.json");
    assertThat(run("tape", TAPE, "--plan", plan.toString())).isZero();
    assertThat(run("job", plan.toString(), "--out", folder.resolve("o").toString())).isZero();
    assertThat(folder.resolve("o/sheets.pdf")).isNotEmptyFile();
  }

  @Test
  void a_plan_that_is_there_is_left_as_it_is() throws IOException {
    Path plan = Files.writeString(folder.resolve("mine.site.json"), "mine");
    assertThat(run("tape", TAPE, "--plan", plan.toString())).isEqualTo(3);
    assertThat(err.toString())
        .containsPattern(Spoken.of("cli.tape.plan-is-there", plan.toString()));
    assertThat(plan).hasContent("mine");
  }

  @Test
  void a_room_that_needs_more_readings_gives_no_plan() throws IOException {
    Path tape = Files.writeString(folder.resolve("two.tape"), "wall 10' right\nwall 8' right\n");
    Path plan = folder.resolve("two.site.json");
    assertThat(run("tape", tape.toString(), "--plan", plan.toString())).isEqualTo(3);
    assertThat(plan).doesNotExist();
  }

  @Test
  void a_plan_by_another_ending_is_refused() {
    Path plan = folder.resolve("office.json");
    assertThat(run("tape", TAPE, "--plan", plan.toString())).isEqualTo(3);
    assertThat(err.toString()).containsPattern(Spoken.of("cli.tape.no-plan-name", plan.toString()));
    assertThat(plan).doesNotExist();
  }
}
