package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.MarkType;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.store.PlanFile;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

class DeskTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException {
    desk = DeskUnderTest.open(data, 1280, 800, List.of());
    hands = new DeskGestures(desk);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private Path room() throws IOException {
    List<OutlinePiece> walls =
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(8000, 0)),
            OutlinePiece.wall(Spot.mm(8000, 6000)),
            OutlinePiece.wall(Spot.mm(0, 6000)));
    Site site =
        Site.empty("Tram shed", UnitSystem.METRIC)
            .withAreas(List.of(FloorArea.of("a1", "Shed", walls)));
    Path file = data.resolve("shed.site.json");
    PlanFile.save(site, file);
    return file;
  }

  private void openRoom() throws IOException, TimeoutException {
    Path file = room();
    DeskUnderTest.on(
        () -> {
          desk.room().plans().openPlan(file);
          return null;
        });
    desk.settle();
  }

  private String text(String id) {
    return DeskUnderTest.on(() -> ((Label) desk.node(id)).getText());
  }

  @Test
  void a_room_is_drawn_by_tape_from_an_empty_screen() throws TimeoutException {
    hands.click("start-tape");
    hands.line("24' 6\"").line("r 12'").line("r 24' 6\"").line("12'").press(KeyCode.ENTER);
    assertThat(hands.corners())
        .containsExactly(new Vec(0, 3658), new Vec(7468, 3658), new Vec(7468, 0), new Vec(0, 0));
    assertThat(text("tally-net-floor")).isEqualTo("294.0 sq ft");
  }

  @Test
  void a_room_is_drawn_with_the_pointer() throws TimeoutException {
    hands.click("start-tape").click("tool-DRAW");
    Vec a = new Vec(0, 0);
    hands.clickSlab(a.x(), a.y()).clickSlab(6096, 0).clickSlab(6096, 3048).clickSlab(0, 3048);
    hands.clickSlab(a.x(), a.y());
    assertThat(hands.corners())
        .containsExactly(a, new Vec(6096, 0), new Vec(6096, 3048), new Vec(0, 3048));
  }

  @Test
  void a_trench_is_cut_along_a_path() throws TimeoutException, IOException {
    openRoom();
    hands.stage(Stage.MARK).click("tool-TRENCH").line("600 mm");
    hands.clickSlab(2000, 1000).hover(2000, 5000).line("3 m").press(KeyCode.ENTER);
    assertThat(hands.area().marks()).hasSize(1);
    assertThat(hands.area().marks().get(0).kind().type()).isEqualTo(MarkType.TRENCH);
    assertThat(hands.area().marks().get(0).form().region(1).area()).isEqualTo(600.0 * 3000);
  }

  @Test
  void a_typed_dimension_moves_the_nearer_end_along_its_wall()
      throws TimeoutException, IOException {
    openRoom();
    Vec words = DeskUnderTest.on(() -> hands.slab().dimensionMiddle(0).orElseThrow());
    Vec site = DeskUnderTest.on(() -> hands.slab().viewport().toSite(words.x() + 4, words.y()));
    hands.clickSlab(site.x(), site.y()).line("8.5 m");
    assertThat(hands.corners())
        .containsExactly(new Vec(0, 0), new Vec(8500, 0), new Vec(8000, 6000), new Vec(0, 6000));
  }

  @Test
  void all_is_undone_and_redone() throws TimeoutException, IOException {
    openRoom();
    Site first = hands.site();
    hands.stage(Stage.MARK).click("tool-ISLAND");
    hands.drag(new Vec(2000, 2000), new Vec(4000, 3000));
    hands.press(KeyCode.SHORTCUT, KeyCode.D).press(KeyCode.V);
    hands.drag(new Vec(3000, 2500), new Vec(5000, 4500));
    Site last = hands.site();
    assertThat(last.areas().get(0).marks()).hasSize(2);
    for (int i = 0; i < 3; i++) {
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    }
    assertThat(hands.site()).isEqualTo(first);
    for (int i = 0; i < 3; i++) {
      hands.press(KeyCode.SHORTCUT, KeyCode.Y);
    }
    assertThat(hands.site()).isEqualTo(last);
  }

  @Test
  void units_change_at_once() throws TimeoutException, IOException {
    openRoom();
    assertThat(text("tally-net-floor")).isEqualTo("48.00 m²");
    hands.click("units");
    assertThat(text("tally-net-floor")).isEqualTo("516.7 sq ft");
  }

  @Test
  void a_corner_is_dragged_and_the_tally_follows() throws TimeoutException, IOException {
    openRoom();
    hands.drag(new Vec(8000, 6000), new Vec(8000, 7000));
    assertThat(hands.corners()).contains(new Vec(8000, 7000));
    assertThat(text("tally-net-floor")).isEqualTo("52.00 m²");
  }

  @Test
  void a_refused_length_stays_with_its_reason() throws TimeoutException, IOException {
    openRoom();
    hands.stage(Stage.MARK).click("tool-COLUMN");
    hands.clickSlab(3000, 3000).line("400 mn");
    assertThat(hands.area().marks()).isEmpty();
    assertThat(text("entry-wrong")).contains("not a length");
    hands.line("400 mm");
    assertThat(hands.area().marks()).hasSize(1);
  }

  @Test
  void an_inlay_is_placed_and_turned() throws TimeoutException, IOException {
    openRoom();
    Path graphic = data.resolve("elsewhere").resolve("arrow.svg");
    Files.createDirectories(graphic.getParent());
    Files.writeString(
        graphic,
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 20 30'>"
            + "<path fill='#14505c' d='M0,30 L10,0 L20,30 Z'/></svg>");
    DeskUnderTest.on(
        () -> {
          desk.room().drops().open(graphic);
          return null;
        });
    desk.settle();
    hands.fill("inlay-width", "1200 mm").fill("inlay-turn", "30");
    hands.click("tool-PLACE").clickSlab(4000, 2000);
    var inlay = hands.area().inlays().get(0);
    assertThat(inlay.width().mm()).isEqualTo(1200);
    assertThat(inlay.turn()).isEqualTo(30);
    assertThat(inlay.middle().vec().distanceTo(new Vec(4000, 2000))).isLessThan(60);
    assertThat(data.resolve("arrow.svg")).exists();
    assertThat(text("tally-inlay")).isEqualTo("1.08 m²");
  }

  @Test
  void sheets_are_exported() throws TimeoutException, IOException {
    openRoom();
    hands.stage(Stage.SHEETS);
    desk.settleAll();
    hands.click("export-pdf").click("export-csv");
    Path out = data.resolve("out").resolve("tram-shed-draft");
    Path pdf = data.resolve("Tram shed, all sheets.pdf");
    assertThat(Files.readAllBytes(pdf)).startsWith('%', 'P', 'D', 'F');
    assertThat(out.resolve("sheets.pdf")).doesNotExist();
    assertThat(out.resolve("quantities.csv")).content().contains("a1,floor,net,48000000,mm2");
  }

  @Test
  void work_left_behind_by_a_kill_comes_back() throws TimeoutException, IOException {
    openRoom();
    hands.stage(Stage.MARK).click("tool-ISLAND");
    hands.drag(new Vec(2000, 2000), new Vec(4000, 3000));
    Site before = hands.site();
    Path killed = data.resolve("killed");
    waitForJournal();
    copyFolder(killed);
    DeskUnderTest.on(
        () -> {
          desk.room().plans().openPlan(killed.resolve("shed.site.json"));
          return null;
        });
    desk.settle();
    assertThat(hands.site()).isEqualTo(before);
    assertThat(DeskUnderTest.on(() -> desk.room().bench().desk().history().undoName()))
        .contains(Message.of("desk.model.plan-storage.recovered-work"));
  }

  private void waitForJournal() throws TimeoutException {
    org.testfx.util.WaitForAsyncUtils.waitFor(
        10,
        java.util.concurrent.TimeUnit.SECONDS,
        () -> Files.exists(data.resolve(".shed.site.json.journal")));
  }

  private void copyFolder(Path to) throws IOException {
    Files.createDirectories(to);
    for (String name : List.of("shed.site.json", ".shed.site.json.journal")) {
      Files.copy(data.resolve(name), to.resolve(name));
    }
  }

  @Test
  void several_marks_are_picked_with_a_box_and_nudged() throws TimeoutException, IOException {
    openRoom();
    hands.stage(Stage.MARK).click("tool-COLUMN");
    hands.clickSlab(2000, 3000).line("400 mm").clickSlab(4000, 3000).line("400 mm");
    hands.press(KeyCode.ESCAPE).press(KeyCode.ESCAPE);
    hands.click("tool-PICK").drag(new Vec(1000, 2000), new Vec(6000, 4500));
    assertThat(DeskUnderTest.on(() -> desk.room().bench().focus().selected())).hasSize(2);
    List<Spot> before = spots();
    hands.press(KeyCode.RIGHT);
    assertThat(spots())
        .isEqualTo(before.stream().map(s -> Spot.mm(s.x().mm() + 10, s.y().mm())).toList());
  }

  private List<Spot> spots() {
    return hands.area().marks().stream().map(m -> ((Form.Rectangle) m.form()).middle()).toList();
  }

  @Test
  void a_doorway_is_set_into_a_wall_and_typed_true() throws TimeoutException, IOException {
    openRoom();
    hands.click("tool-DOORWAY").line("1.2 m").clickSlab(4000, 0);
    hands.fill("door-offset", "2 m").fill("door-width", "1.8 m");
    var door = hands.area().doorways().get(0);
    assertThat(door.offset().mm()).isEqualTo(2000);
    assertThat(door.width().mm()).isEqualTo(1800);
    assertThat(door.wayIn()).isTrue();
    assertThat(DeskUnderTest.on(() -> desk.room().bench().focus().single()))
        .contains(new PlanItem.OfDoorway(door.id()));
  }
}
