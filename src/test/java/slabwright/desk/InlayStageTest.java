package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.model.scene.SeamGrip;
import slabwright.drawing.Stroke;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Inlay;
import slabwright.units.Length;

/** The Inlay stage with a graphic that wants some mending: a comb of needles. */
class InlayStageTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    Path plan = TestSites.withComb(data);
    desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()));
    hands = new DeskGestures(desk);
    hands.stage(Stage.INLAY);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  /** The button of a finding, by the beginning of its name for readers. */
  private Button button(String begins) {
    return finding(begins).orElseThrow();
  }

  private Optional<Button> finding(String begins) {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".finding .button").stream()
                .map(Button.class::cast)
                .filter(b -> b.getAccessibleText().startsWith(begins))
                .findFirst());
  }

  private void fire(Node button) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          ((Button) button).fire();
          return null;
        });
    desk.settle();
  }

  private Vec middle() {
    return DeskUnderTest.on(() -> hands.slab().viewport().toSite(400, 300));
  }

  @Test
  void show_steps_through_the_places_of_a_group_and_says_at_which_it_is() throws TimeoutException {
    Button show = button("Show where: 4 ");
    fire(show);
    Vec first = middle();
    assertThat(where()).isEqualTo("1 of 4");
    fire(show);
    assertThat(where()).isEqualTo("2 of 4");
    assertThat(show.getAccessibleText()).startsWith("Show the next. Now at 2 of 4: 4 ");
    assertThat(middle().distanceTo(first)).isGreaterThan(100);
    fire(show);
    fire(show);
    fire(show);
    assertThat(where()).isEqualTo("1 of 4");
    assertThat(middle().distanceTo(first)).isLessThan(1);
  }

  private List<Stroke> film(double mm) {
    return DeskUnderTest.on(
        () ->
            desk.room().workroom().layers().trueColours(mm).stream()
                .filter(Stroke.class::isInstance)
                .map(Stroke.class::cast)
                .toList());
  }

  @Test
  void the_film_is_drawn_in_hairlines_while_its_graphic_is_small() throws TimeoutException {
    desk.settleAll();
    double wide = 1600;
    assertThat(film(wide / 100)).as("near").anyMatch(s -> s.pen().width() >= 0.4);
    assertThat(film(wide / 40))
        .as("the whole floor")
        .anyMatch(s -> !s.pen().dash().isEmpty())
        .allMatch(s -> s.pen().width() <= 0.25);
    assertThat(film(wide / 10)).as("far away: the blank alone").hasSize(1);
  }

  private String where() {
    return DeskUnderTest.on(
        () -> ((Labeled) desk.stage().getScene().lookup(".step-where")).getText());
  }

  private SeamGrip grip() {
    return DeskUnderTest.on(
        () -> {
          Inlay comb = desk.room().bench().focus().area().orElseThrow().inlay("i1").orElseThrow();
          return SeamGrip.of(desk.room().parts().answers().inlay("i1").orElseThrow(), comb)
              .orElseThrow();
        });
  }

  private double seam() {
    return grip().seams().places().get(0).mm();
  }

  /** On the seam, off the middle of the blank. */
  private Vec onSeam() {
    Line line = grip().line(0);
    return line.points().get(0).towards(line.points().get(1), 0.3);
  }

  private static String undoName(DeskContext bench) {
    return bench.desk().history().undoName().map(bench.words()::say).orElse("");
  }

  private String undoName() {
    return DeskUnderTest.on(() -> undoName(desk.room().bench()));
  }

  private String card() {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".card-words").stream()
                .map(n -> ((Labeled) n).getText())
                .filter(t -> t.startsWith("Set by hand: ") || t.startsWith("Where they cost"))
                .findFirst()
                .orElse(""));
  }

  @Test
  void a_seam_is_dragged_on_the_slab_and_put_back_by_undo() throws TimeoutException {
    double before = seam();
    Vec from = onSeam();
    assertThat(card()).isEqualTo("Where they cost least.");
    hands.drag(from, from.minus(new Vec(200, 0)));
    double pixel = DeskUnderTest.on(() -> 1 / hands.slab().viewport().scale());
    assertThat(seam()).isCloseTo(before - 200, within(1.5 * pixel));
    assertThat(undoName()).isEqualTo("move seam");
    assertThat(card()).startsWith("Set by hand: cost ");
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(seam()).isEqualTo(before);
    assertThat(card()).isEqualTo("Where they cost least.");
  }

  @Test
  void a_picked_seam_is_moved_by_the_arrow_keys_across_its_strips_alone() throws TimeoutException {
    Vec at = onSeam();
    hands.clickSlab(at.x(), at.y());
    double before = seam();
    assertThat(hands.standing()).startsWith("Seam 1 at ").endsWith(": where it costs least");
    hands.press(KeyCode.LEFT);
    assertThat(seam()).isCloseTo(before - 10, within(0.01));
    assertThat(hands.standing()).contains(": cost ");
    hands.press(KeyCode.SHIFT, KeyCode.LEFT);
    assertThat(seam()).isCloseTo(before - 110, within(0.01));
    hands.press(KeyCode.UP);
    assertThat(seam()).isCloseTo(before - 110, within(0.01));
    assertThat(hands.area().inlay("i1").orElseThrow().middle().vec())
        .isEqualTo(new Vec(4000, 3000));
    hands.press(KeyCode.RIGHT);
    assertThat(seam()).isCloseTo(before - 100, within(0.01));
  }

  @Test
  void up_and_down_move_a_seam_while_its_field_has_the_keys() throws TimeoutException {
    double before = seam();
    hands.click("seam-1").press(KeyCode.DOWN);
    assertThat(seam()).isCloseTo(before - 10, within(0.01));
    hands.press(KeyCode.SHIFT, KeyCode.DOWN).press(KeyCode.UP);
    assertThat(seam()).isCloseTo(before - 100, within(0.01));
    String shown = DeskUnderTest.on(() -> Fields.text(desk.node("seam-1")));
    assertThat(Length.parse(shown).orThrow().mm()).isCloseTo(before - 100, within(0.51));
  }

  @Test
  void a_fix_is_taken_and_undone() throws TimeoutException {
    String needles = "Fix: 4 needle points";
    clickNode(button(needles));
    assertThat(undoName()).isEqualTo("round needle points");
    assertThat(comb().spec().changes().roundNeedles()).isPresent();
    assertThat(finding(needles)).isEmpty();
    assertThat(finding("Take back: ")).isPresent();
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(comb().spec().changes().roundNeedles()).isEmpty();
    assertThat(finding(needles)).isPresent();
  }

  private Inlay comb() {
    return hands.area().inlay("i1").orElseThrow();
  }

  /** Clicks a control that has no name of its own, where it lies. */
  private void clickNode(Node node) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          node.setId("clicked");
          return null;
        });
    hands.click("clicked");
  }
}
