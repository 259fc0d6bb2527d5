package slabwright.tape;

import java.util.Arrays;
import java.util.List;
import slabwright.tape.text.TapeText;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** Rooms written as tape files and what comes of them. */
final class AdjustmentFixtures {
  private AdjustmentFixtures() {}

  static RoomResult result(String... lines) {
    return RoomAdjustment.of(TapeText.read(String.join("\n", lines)).orThrow(), UnitSystem.METRIC);
  }

  static AdjustedRoom adjusted(String... lines) {
    return ((RoomResult.Adjusted) result(lines)).room();
  }

  static List<String> sentences(String... lines) {
    return adjusted(lines).advice().stream().map(a -> Words.english().say(a.sentence())).toList();
  }

  static List<TapeAdvice.Kind> kinds(String... lines) {
    return adjusted(lines).advice().stream().map(TapeAdvice::kind).toList();
  }

  static String[] and(String[] lines, String... more) {
    String[] all = Arrays.copyOf(lines, lines.length + more.length);
    System.arraycopy(more, 0, all, lines.length, more.length);
    return all;
  }
}
