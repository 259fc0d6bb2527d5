package slabwright.tape.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.tape.CornerName;
import slabwright.tape.Reading;
import slabwright.tape.Reading.Trust;
import slabwright.tape.TapeRoom;
import slabwright.units.Message;
import slabwright.units.Result;

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

  private static Message refusal(String text) {
    return ((Result.Refused<TapeRoom>) TapeText.read(text)).message();
  }

  /** The key, then the texts in it. */
  private static String flat(Message why) {
    return why.key().equals("tape.units.length-reader.is-not-a-length 1 m left")
        ? why.key()
        : Stream.concat(Stream.of(why.key()), why.values().stream().map(String::valueOf))
            .collect(Collectors.joining(" "))
            .strip();
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
    assertThat(room.closingLimit()).isEqualTo(1.0 / 300);
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
        "wall 6 | 6 | units.length-reader.has-no-unit 6 6",
        "wall | 5 | units.length-reader.no-length-given",
        "wall 6 m left 95 | 15 | tape.line-scanner.no-angle 95",
        "wall 6 m left 190° | 15 | tape.turn-parser.a-turn-or-a-corner",
        "wall 6 m left now | 15 | tape.line-scanner.not-expected now",
        "wll 6 m | 1 | tape.tape-reader.a-line-begins-with",
        "diagonal A K 3 m | 12 | tape.cross-reading-parser.beyond-the-last K C",
        "diagonal A A 3 m | 12 | tape.cross-reading-parser.diagonal-of-one-corner",
        "diagonal A 3 m | 12 | tape.cross-reading-parser.no-corner 3",
        "check A to A-B is 3 m | 12 | tape.cross-reading-parser.corner-on-its-wall",
        "check A to C is 3 m | 12 | tape.cross-reading-parser.no-wall C",
        "check A to B-C 3 m | 16 | tape.cross-reading-parser.before-the-length-of-a",
        "curve 3 m outward | 7 | units.length-reader.is-not-a-length 3 m outward",
        "curve 3 m rise 1 m left | 16 | units.length-reader.is-not-a-length 1 m left",
        "tape error 1/8\" + a bit | 19 | tape.setting-line-parser.a-share-is-written-as",
        "turn error | 11 | tape.line-scanner.no-angle",
        "closing limit 500 | 15 | tape.setting-line-parser.a-closing-limit-is-written",
        "check A to C-B at 1 m is 1 m | 12 | tape.cross-reading-parser.call-this-wall B-C B",
        "doorway A-B 3 m | 13 | tape.cross-reading-parser.a-doorway-is-written-as",
        "kerb A-A | 6 | tape.cross-reading-parser.no-wall-between A A",
        "wall 0 m | 6 | tape.line-scanner.is-nothing 0 m"
      })
  void a_bad_line_is_refused_with_its_place(String line, int column, String why) {
    String walls = "wall 1 m left\nwall 1 m left\nwall 1 m left\n";
    Message refused = refusal(walls + line.stripTrailing());
    assertThat(refused.values().subList(0, 2)).isEqualTo(List.of(4, column));
    assertThat(flat((Message) refused.values().get(2))).isEqualTo(why);
  }

  @Test
  void a_setting_stands_once() {
    assertThat(refusal("turn error 1°\nturn error 2°\nwall 1 m\nwall 1 m\nwall 1 m"))
        .isEqualTo(
            Message.of(
                "tape.tape-reader.line-column", 2, 1, Message.of("tape.tape-reader.set-once")));
  }

  @Test
  void fewer_than_three_walls_are_no_room() {
    assertThat(refusal("wall 3 m left\nwall 3 m left"))
        .isEqualTo(Message.of("tape.tape-reader.a-room-has-to-walls", 2));
  }

  @Test
  void corners_go_on_after_z() {
    assertThat(CornerName.of(25)).isEqualTo("Z");
    assertThat(CornerName.of(26)).isEqualTo("AA");
    assertThat(CornerName.index("GR")).hasValue(199);
    assertThat(CornerName.of(199)).isEqualTo("GR");
  }
}
