package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.tool.OverlayScale;
import slabwright.drawing.Dimension;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.OutlinePiece;
import slabwright.units.UnitSystem;

class TapedRoomTest {
  @TempDir Path data;

  @Test
  void a_taped_room_keeps_its_readings_when_it_is_moved_and_a_wall_becomes_a_kerb()
      throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = new DeskGestures(desk);
      hands.click("start-tape").line("6 m").line("l 4 m").line("l 6 m").line("l 4 m");
      hands.press(KeyCode.ENTER).fill("area-x", "2 m").fill("area-y", "-1 m");
      hands.clickSlab(5000, -1000).choose("wall-kind", "a curb");
      hands.fill("diagonal", "A C 7.217 m");
      Vec a = hands.area().outline().get(0).from().vec();
      Vec c = hands.area().outline().get(2).from().vec();
      assertThat(a).isEqualTo(new Vec(2000, -1000));
      assertThat(a.distanceTo(c)).isCloseTo(7214, within(5.0)).isGreaterThan(7211.2);
      assertThat(hands.area().outline().get(0).kind().name()).isEqualTo("KERB");
    }
  }

  /** A taped room of 6 by 4 m with another length typed over its first wall's dimension. */
  private static DeskGestures typedOver(DeskUnderTest desk, String length) throws TimeoutException {
    DeskGestures hands = new DeskGestures(desk);
    hands.click("start-tape").line("6 m").line("l 4 m").line("l 6 m").line("l 4 m");
    hands.press(KeyCode.ENTER).press(KeyCode.ESCAPE);
    Vec words = DeskUnderTest.on(() -> hands.slab().dimensionMiddle(0).orElseThrow());
    Vec site = DeskUnderTest.on(() -> hands.slab().viewport().toSite(words.x() + 4, words.y()));
    return hands.clickSlab(site.x(), site.y()).line(length);
  }

  @Test
  void a_length_typed_over_a_taped_wall_is_asked_about_and_replaces_it_on_a_second_enter()
      throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = typedOver(desk, "6.01 m");
      assertThat(hands.area().details().taped()).noneMatch(l -> l.contains("6.01"));
      hands.press(KeyCode.ENTER);
      assertThat(hands.area().details().taped())
          .anyMatch(l -> l.startsWith("wall 6.01 m"))
          .filteredOn(l -> l.startsWith("wall"))
          .hasSize(4);
    }
  }

  @Test
  void a_length_typed_over_a_taped_wall_can_stay_beside_it_as_a_second_reading()
      throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = typedOver(desk, "6.01 m").click("dimension-second");
      assertThat(hands.area().details().taped())
          .anyMatch(l -> l.startsWith("wall 6 m"))
          .anyMatch(l -> !l.startsWith("wall") && l.contains("6.01 m"));
      assertThat(length(hands, 0)).isBetween(6000.5, 6009.5);
    }
  }

  @Test
  void readings_in_a_file_beside_an_earlier_plan_are_there_once_they_are_read()
      throws TimeoutException, IOException {
    Path plan = TestSites.shed(data);
    Files.writeString(
        data.resolve("shed-a1.tape"), "wall 8 m left\nwall 6 m left\nwall 8 m left\nwall 6 m\n");
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()))) {
      DeskGestures hands = new DeskGestures(desk);
      assertThat(hands.area().details().taped()).isEmpty();
      assertThat(DeskUnderTest.on(() -> desk.room().parts().rooms().of(hands.area()))).isPresent();
      assertThat(DeskUnderTest.on(() -> desk.node("reading-2"))).isNotNull();
    }
  }

  /** An L whose second wall was read a foot too long: 26 ft typed, 25 ft there. */
  private static DeskGestures misreadRoom(DeskUnderTest desk) throws TimeoutException {
    DeskGestures hands = new DeskGestures(desk);
    hands.click("start-tape");
    for (String wall : List.of("40'", "l 26'", "l 20'", "l 10'", "r 20'", "l 15'")) {
      hands.line(wall);
    }
    return hands.press(KeyCode.ENTER);
  }

  private static double length(DeskGestures hands, int wall) {
    List<OutlinePiece> outline = hands.area().outline();
    Vec from = outline.get(wall).from().vec();
    return from.distanceTo(outline.get((wall + 1) % outline.size()).from().vec());
  }

  private static double foot(double feet) {
    return feet * 304.8;
  }

  private static org.assertj.core.data.Offset<Double> near() {
    return within(0.01);
  }

  @Test
  void a_wall_misread_by_a_foot_is_named_and_read_otherwise() throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = misreadRoom(desk);
      assertThat(length(hands, 1))
          .isCloseTo(foot(26), within(200.0))
          .isNotCloseTo(foot(25), near());
      hands.fill("reading-2", "25'");
      assertThat(length(hands, 1)).isCloseTo(foot(25), near());
      assertThat(length(hands, 0)).isCloseTo(foot(40), near());
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
      assertThat(hands.area().details().taped()).anyMatch(l -> l.startsWith("wall 26'"));
    }
  }

  @Test
  void what_would_close_the_room_is_taken_by_a_click() throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = misreadRoom(desk);
      hands.click("take-2");
      assertThat(length(hands, 1)).isCloseTo(foot(25), near());
      assertThat(hands.area().details().taped()).noneMatch(l -> l.startsWith("wall 26'"));
    }
  }

  @Test
  void a_reading_is_struck_out_and_the_others_close_the_room() throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = misreadRoom(desk);
      hands.click("drop-2");
      assertThat(length(hands, 1)).isCloseTo(foot(25), near());
    }
  }

  @Test
  void of_two_readings_of_a_wall_the_one_called_doubtful_gives_way() throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = typedOver(desk, "6.01 m").click("dimension-second");
      double between = length(hands, 0);
      hands.press(KeyCode.ESCAPE).click("doubt-7");
      assertThat(length(hands, 0)).isBetween(5999.0, between - 2);
      assertThat(hands.area().details().taped()).anyMatch(l -> l.contains("6.01 m"));
      hands.press(KeyCode.SHORTCUT, KeyCode.Z);
      assertThat(length(hands, 0)).isCloseTo(between, near());
    }
  }

  @Test
  void a_wall_drawn_otherwise_keeps_its_readings_and_goes_back_to_the_tape()
      throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = new DeskGestures(desk);
      hands.click("start-tape").line("6 m").line("l 4 m").line("l 6 m").line("l 4 m");
      hands.press(KeyCode.ENTER).clickSlab(3000, 0).fill("wall-length", "6.5 m");
      assertThat(length(hands, 0)).isCloseTo(6500, near());
      assertThat(hands.area().details().taped()).anyMatch(l -> l.startsWith("wall 6 m"));
      hands.press(KeyCode.ESCAPE).click("back-to-tape");
      assertThat(length(hands, 0)).isCloseTo(6000, near());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "6 m; r 3 m; r 2 m; l 2 m",
        "6 m; l 3 m; l 2 m; r 2 m",
        "6 m; r 3 m; r 2 m; l 2 m; l 2 m; r 2 m; r 6 m",
        "3 m; l 2 m; r 3 m; l 2 m; l 6 m; l 4 m",
      })
  void dimensions_of_a_walk_never_cross(String walls) throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = new DeskGestures(desk);
      hands.click("start-tape");
      for (String wall : walls.split("; ", -1)) {
        hands.line(wall);
      }
      List<Line> drawn = dimensionLines(desk);
      assertThat(drawn).hasSize(walls.split(";", -1).length);
      for (Line a : drawn) {
        for (Line b : drawn) {
          assertThat(cross(a, b)).as(a + " and " + b).isFalse();
        }
      }
    }
  }

  /** Where the fine lines of the dimensions run on the site. */
  private static List<Line> dimensionLines(DeskUnderTest desk) {
    return DeskUnderTest.on(
        () -> {
          OverlayScale paper = paper(desk);
          return desk.room().tools().tool().over(paper).stream()
              .filter(Dimension.class::isInstance)
              .map(Dimension.class::cast)
              .map(d -> beside(d, d.offset() * paper.mm()))
              .toList();
        });
  }

  private static OverlayScale paper(DeskUnderTest desk) {
    double scale = desk.room().workroom().slab().viewport().scale();
    return new OverlayScale(FxPainter.SCREEN / scale, UnitSystem.METRIC);
  }

  private static Line beside(Dimension d, double away) {
    Vec out = d.to().minus(d.from()).unit().left().times(away);
    return Line.of(d.from().plus(out), d.to().plus(out));
  }

  private static boolean cross(Line a, Line b) {
    return divides(a, b) && divides(b, a);
  }

  /** Whether the line through {@code a} has the ends of {@code b} on different sides. */
  private static boolean divides(Line a, Line b) {
    return side(a, b.points().get(0)) * side(a, b.points().get(1)) < 0;
  }

  private static double side(Line a, Vec p) {
    Vec from = a.points().get(0);
    return a.points().get(1).minus(from).cross(p.minus(from));
  }
}
