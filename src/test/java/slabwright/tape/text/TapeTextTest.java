package slabwright.tape.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.tape.CornerName;
import slabwright.tape.Reading;
import slabwright.tape.Reading.Trust;
import slabwright.tape.TapeRoom;
import slabwright.units.Result;
import slabwright.words.Words;

class TapeTextTest {
  private static final String EVERYTHING =
      """
      # one of each
      tape error 1/16" + 0.01%
      turn error 1°
      closing limit 1/300

      wall 24' 6" right            # along the windows
      wall 12' 3 1/4" ± 1/2" right corner 100°
      curve 10' rise 1' 2" outward right 80° true
      wall ? right about 85°
      wall 3.20 m straight ± 2°

      diagonal A C 27' 4"
      check C to A-B is 12' 3"
      check C to A-B at 5' is 13' 1" ± 1"
      check A-B to C-D is 12'
      turn at B right 91°
      open D-E
      kerb E-A
      doorway B-C at 3' wide 36" way in
      doorway A-B at 0 m wide 1 m
      """;

  private static TapeRoom read(String text) {
    return TapeText.read(text).orThrow();
  }

  private static String refusal(String text) {
    return Words.english().say(((Result.Refused<TapeRoom>) TapeText.read(text)).message());
  }

  private static Reading.Turn turn(String words) {
    TapeRoom room = read("wall 1 m " + words + "\nwall 1 m\nwall 1 m");
    return (Reading.Turn) room.readings().get(1);
  }

  @Test
  void every_kind_of_line_is_read() {
    TapeRoom room = read(EVERYTHING);
    assertThat(room.corners()).isEqualTo(5);
    assertThat(room.readings()).hasSize(14);
    assertThat(room.turnError()).isEqualTo(1);
    assertThat(room.closingLimit()).hasValue(1.0 / 300);
    assertThat(room.tapeError().of(10_000)).isEqualTo(25.4 / 16 + 1, within(1e-9));
  }

  @Test
  void what_was_written_reads_back_the_same() {
    TapeRoom room = read(EVERYTHING);
    TapeRoom back = read(TapeText.write(room));
    assertThat(back.readings()).containsExactlyInAnyOrderElementsOf(room.readings());
    assertThat(back.withReadings(List.of())).isEqualTo(room.withReadings(List.of()));
  }

  @Test
  void lengths_keep_what_was_typed() {
    Reading.Wall wall = (Reading.Wall) read(EVERYTHING).readings().get(2);
    assertThat(wall.length().typed()).isEqualTo("12' 3 1/4\"");
    assertThat(TapeText.write(read(EVERYTHING))).contains("wall 12' 3 1/4\" ± 1/2\"");
  }

  @Test
  void a_plain_turn_is_a_quarter() {
    assertThat(turn("left").degrees()).isEqualTo(90);
    assertThat(turn("right").degrees()).isEqualTo(-90);
    assertThat(turn("straight").degrees()).isEqualTo(0);
    assertThat(turn("LEFT").trust()).isEqualTo(Trust.READ);
  }

  @ParameterizedTest
  @CsvSource({
    "right 60°, -60",
    "left 60.5 deg, 60.5",
    "left 92° 30', 92.5",
    "left corner 120°, 60",
    "right about 45°, -45",
    "right true, -90"
  })
  void a_turn_counts_from_straight_ahead_and_a_corner_between_the_walls(
      String words, double degrees) {
    assertThat(turn(words).degrees()).isEqualTo(degrees, within(1e-9));
  }

  @Test
  void a_wall_can_be_named_either_way_round() {
    List<Reading> a = read("wall 1 m\nwall 1 m\nwall 1 m\ncheck A to B-C is 0.9 m").readings();
    List<Reading> b = read("wall 1 m\nwall 1 m\nwall 1 m\ncheck A to C-B is 0.9 m").readings();
    assertThat(a).isEqualTo(b);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "wall 6 | Line 4, column 6: \"6\" has no unit: write 6 mm, 6 m, 6' or 6\".",
        "wall | Line 4, column 5: No length was given: write for example 24' 6 1/2\" or 7.47 m.",
        "wall 6 m left 95 | Line 4, column 15: \"95\" is not an angle: write for example 92° or 92.5 deg.",
        "wall 6 m left 190° | Line 4, column 15: A turn or a corner is more than 0° and less than 180°.",
        "wall 6 m left now | Line 4, column 15: \"now\" was not expected here.",
        "wll 6 m | Line 4, column 1: A line begins with wall, curve, diagonal, check, turn, open, kerb, doorway, tape error or closing limit.",
        "diagonal A K 3 m | Line 4, column 12: There is no corner K: the last one is C.",
        "diagonal A A 3 m | Line 4, column 12: A diagonal needs two different corners.",
        "diagonal A 3 m | Line 4, column 12: \"3\" is no corner: corners are called A, B, C …",
        "check A to A-B is 3 m | Line 4, column 12: This corner stands on that wall: measure to another one.",
        "check A to C is 3 m | Line 4, column 12: \"C\" is no wall: write two corners as A-B.",
        "check A to B-C 3 m | Line 4, column 16: Before the length of a check comes is: check C to A-B is 12' 3\"",
        "curve 3 m outward | Line 4, column 7: \"3 m outward\" is not a length: write for example 24' 6 1/2\", 7.47 m or 7470 mm.",
        "curve 3 m rise 1 m left | Line 4, column 16: \"1 m left\" is not a length: write for example 24' 6 1/2\", 7.47 m or 7470 mm.",
        "tape error 1/8\" + a bit | Line 4, column 19: A share is written as 0.02%.",
        "turn error | Line 4, column 11: \"\" is not an angle: write for example 92° or 92.5 deg.",
        "closing limit 500 | Line 4, column 15: A closing limit is written as 1/500.",
        "check A to C-B at 1 m is 1 m | Line 4, column 12: Call this wall B-C and measure from B.",
        "doorway A-B 3 m | Line 4, column 13: A doorway is written as: doorway A-B at 3' wide 36\"",
        "kerb A-A | Line 4, column 6: No wall runs from A to A.",
        "wall 0 m | Line 4, column 6: \"0 m\" is not more than nothing."
      })
  void a_bad_line_is_refused_with_its_place(String line, String sentence) {
    String walls = "wall 1 m left\nwall 1 m left\nwall 1 m left\n";
    assertThat(refusal(walls + line.stripTrailing())).isEqualTo(sentence);
  }

  @Test
  void a_setting_stands_once() {
    assertThat(refusal("turn error 1°\nturn error 2°\nwall 1 m\nwall 1 m\nwall 1 m"))
        .startsWith("Line 2, column 1: This was set once already");
  }

  @Test
  void fewer_than_three_walls_are_no_room() {
    assertThat(refusal("wall 3 m left\nwall 3 m left"))
        .isEqualTo(
            "A room has 3 to 200 walls, each on a line that begins with wall or curve; here there"
                + " are 2.");
  }

  @Test
  void corners_go_on_after_z() {
    assertThat(CornerName.of(25)).isEqualTo("Z");
    assertThat(CornerName.of(26)).isEqualTo("AA");
    assertThat(CornerName.index("GR")).hasValue(199);
    assertThat(CornerName.of(199)).isEqualTo("GR");
  }
}
