package slabwright.tape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.StringLength;
import slabwright.tape.Reading.Trust;
import slabwright.tape.text.TapeText;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** Nothing that people may type is answered with an exception. */
class BadInputTest {
  private static final String[] WORDS = {
    "wall",
    "curve",
    "diagonal",
    "check",
    "turn",
    "tape",
    "error",
    "closing",
    "limit",
    "at",
    "is",
    "to",
    "A",
    "B",
    "A-B",
    "C-A",
    "12'",
    "3\"",
    "1/2\"",
    "90°",
    "left",
    "right",
    "true",
    "about",
    "±",
    "?",
    "rise",
    "outward",
    "corner",
    "straight",
    "0.01%",
    "1/500",
    "-",
    "#",
    "open",
    "kerb",
    "doorway",
    "wide",
    "way",
    "in",
    "\n",
    "\n",
    "\n"
  };

  @Property(tries = 300)
  void any_words_are_read_or_refused(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder("wall 3 m left\nwall 4 m left\nwall 5 m left\n");
    for (int k = 0; k < 12; k++) {
      text.append(WORDS[random.nextInt(WORDS.length)]).append(' ');
    }
    assertThat(TapeText.read(text.toString())).isNotNull();
  }

  @Property(tries = 200)
  void any_letters_are_read_or_refused(
      @ForAll @StringLength(max = 60) @AlphaChars @CharRange(from = ' ', to = '°') String text) {
    assertThat(TapeText.read("wall 3 m\nwall 3 m\nwall 3 m\n" + text)).isNotNull();
  }

  /** Lengths, turns and diagonals at random fit nothing; an answer comes all the same. */
  @Property(tries = 200)
  void readings_that_fit_nothing_get_an_answer(
      @ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
    Random random = new Random(seed);
    int n = 3 + random.nextInt(6);
    List<Reading> readings = new ArrayList<>();
    for (int k = 0; k < 3 * n; k++) {
      readings.add(reading(random, n));
    }
    RoomResult result =
        RoomAdjustment.of(TapeRoom.of(n).withReadings(readings), UnitSystem.FEET_INCHES);
    assertThat(RoomText.of(result, UnitSystem.METRIC, Words.english()::say))
        .isNotBlank()
        .doesNotContain("NaN");
  }

  private static Reading reading(Random random, int n) {
    int a = random.nextInt(n);
    int b = (a + 1 + random.nextInt(n - 1)) % n;
    Length length = Length.mm(Math.exp(12 * random.nextDouble()));
    return switch (random.nextInt(8)) {
      case 0 -> new Reading.Diagonal(a, b, length, Optional.empty());
      case 1 -> new Reading.CornerToWall(a, b, length, Optional.empty());
      case 2 -> new Reading.CornerToSpot(a, b, length, length, Optional.empty());
      case 3 -> new Reading.WallToWall(a, b, length, Optional.empty());
      case 4, 5 ->
          new Reading.Turn(
              a,
              360 * random.nextDouble() - 180,
              random.nextBoolean() ? Trust.READ : Trust.ABOUT,
              Optional.empty());
      default -> new Reading.Wall(a, length, Optional.empty());
    };
  }
}
