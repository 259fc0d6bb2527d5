package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import slabwright.cli.SlabwrightCommand;
import slabwright.desk.model.Stage;
import slabwright.site.Site;
import slabwright.store.PlanFile;

/** The whole tram hall, drawn with keys and pointer from an empty screen. */
class RedrawTest {
  private static final Path SAMPLES = Path.of("sample-plans");

  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;
  private RedrawDetails details;

  @Test
  void the_tram_hall_is_redrawn_in_full_and_its_numbers_equal_the_samples()
      throws TimeoutException {
    Chooser chooser = new FixedChooser(data, SAMPLES.resolve("heron-ring.svg"));
    desk = DeskUnderTest.open(data, chooser, 1280, 800, List.of());
    try {
      hands = new DeskGestures(desk).hasty();
      details = new RedrawDetails(desk, hands);
      hall();
      terrace();
      hands.stage(Stage.INLAY).click("area-a1");
      details.inlay();
      desk.settle();
      hands.press(KeyCode.SHORTCUT, KeyCode.SHIFT, KeyCode.S);
      waitUntilSaved();
      Path sample = SAMPLES.resolve("tram-hall.site.json");
      Path drawn = data.resolve("saved").resolve("tram-hall-library.site.json");
      assertThat(SameThing.differences(site(sample), untaped(site(drawn)))).isEmpty();
      assertThat(site(drawn).areas().get(0).details().taped())
          .contains("wall 52' 6\" left", "wall 35' 7\"");
      assertThat(SameThing.differences(tally(sample), tally(drawn))).isEmpty();
    } finally {
      desk.close();
    }
  }

  /** The window writes beside what the hand does. */
  private void waitUntilSaved() throws TimeoutException {
    WaitForAsyncUtils.waitFor(
        30,
        TimeUnit.SECONDS,
        () -> DeskUnderTest.on(() -> desk.room().bench().desk().file().isPresent()));
  }

  private static Site site(Path plan) {
    return PlanFile.read(plan).orThrow();
  }

  /** The sample was drawn by hand; the readings that the desk keeps are looked at by themselves. */
  private static Site untaped(Site site) {
    return site.withAreas(
        site.areas().stream().map(a -> a.withDetails(a.details().withTaped(List.of()))).toList());
  }

  private static Object tally(Path plan) {
    StringWriter out = new StringWriter();
    PrintWriter both = new PrintWriter(out, true);
    assertThat(SlabwrightCommand.run(both, both, "tally", plan.toString(), "--json")).isZero();
    return SameThing.json(out.toString());
  }

  private void hall() throws TimeoutException {
    RedrawHall hall = new RedrawHall(hands);
    hall.walls();
    hall.site();
    hall.doorways();
    hands.stage(Stage.MARK);
    floorMarks();
    hands.stage(Stage.PREP);
    details.machine(1, "floor grinder, 29 in", "29\"", "27\"", "2\"");
    details.machine(2, "edge machine, 18 in", "18\"", "17\"", "1\"");
    finishHall();
  }

  private void floorMarks() throws TimeoutException {
    RedrawFloorMarks floor = new RedrawFloorMarks(hands);
    floor.trench();
    floor.residue();
    floor.patches();
    floor.counter();
    floor.booths();
    floor.columns();
    RedrawSmallMarks small = new RedrawSmallMarks(hands);
    small.lines();
    small.boxAndGlass();
    small.places();
  }

  private void finishHall() throws TimeoutException {
    hands.stage(Stage.FINISH);
    desk.settleAll();
    hands.choose("finish-exposure", "fine aggregate");
    details.coats(
        List.of(
            "Water-borne dye for the floor",
            "Solvent dye for graphics",
            "Water-borne penetrating sealer",
            "Two-part clear topcoat"),
        List.of("2", "3", "1", "2"));
    details.slab("5.5", "92", "16 C", "18 C", "62");
    hands.fill("slab-thickness", "6\"").fill("ceiling", "15'").fill("airflow", "3400 m3/h");
    hands.fill("mixing", "3");
    details.moisture();
    details.answer("wet", "no").answer("sun", "yes").answer("traffic", "yes");
    desk.settleAll();
    details.clear(
        "asbestos",
        "Quayside Materials Laboratory (invented), 2026-11-12, QM-2611-07, no fibres found");
    details.clear(
        "owners-survey", "Tram Hall Trust (invented), 2026-11-05, survey of 2019, part 3");
  }

  private void terrace() throws TimeoutException {
    RedrawTerrace terrace = new RedrawTerrace(hands);
    terrace.walls();
    terrace.doorways();
    terrace.marks();
    hands.stage(Stage.PREP);
    details.machine(1, "floor grinder, 29 in", "29\"", "27\"", "2\"");
    hands.stage(Stage.FINISH);
    desk.settleAll();
    details.coats(List.of("Breathing outdoor sealer"), List.of("2"));
    details.slab("6", "12", "12 C", "14 C", "60");
    details.answer("wet", "yes").answer("sun", "yes");
    details.decline("moisture-test", "A. Castell (invented)", "2026-11-20");
    desk.settleAll();
    details.clear("fire-permit", "Fire Marshal L. Okoro (invented), 2026-11-20, permit 26-0418");
  }
}
