package slabwright.tape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;

/** Whether a slip of the pen or the eye explains a length that does not fit. */
final class Misreading {
  private Misreading() {}

  /**
   * Part of a sentence that explains the difference, as {@code 42' reads like 24'}; empty where
   * nothing simple does.
   *
   * @param fits the length that the other readings give, mm
   * @param within how far from it an explanation may be, mm
   */
  static Optional<Message> of(Length read, double fits, double within) {
    return swapped(read, fits, within)
        .map(text -> Message.of("tape.misreading.reads-like", read.toString(), text))
        .or(() -> wholeUnit(read, fits, within));
  }

  /** Two neighbouring digits exchanged. */
  static Optional<String> swapped(Length read, double fits, double within) {
    return swaps(read).stream()
        .filter(l -> Math.abs(l.mm() - fits) <= within)
        .map(Length::typed)
        .findFirst();
  }

  /** All lengths that come of exchanging two neighbouring digits of one. */
  static List<Length> swaps(Length read) {
    List<Length> all = new ArrayList<>();
    String text = read.typed();
    for (int i = 0; i + 1 < text.length(); i++) {
      char a = text.charAt(i);
      char b = text.charAt(i + 1);
      if (Character.isDigit(a) && Character.isDigit(b) && a != b) {
        String other = text.substring(0, i) + b + a + text.substring(i + 2);
        if (Length.parse(other) instanceof Result.Ok<Length> ok && ok.value().mm() > 0) {
          all.add(ok.value());
        }
      }
    }
    return all;
  }

  private static Optional<Message> wholeUnit(Length read, double fits, double within) {
    boolean feet = read.typed().matches(".*('|′|’|ft|feet|foot|-).*");
    double unit = feet ? 304.8 : 1000;
    double out = fits - read.mm();
    return within < unit / 4 && Math.abs(Math.abs(out) - unit) <= within
        ? Optional.of(one(feet, out < 0))
        : Optional.empty();
  }

  private static Message one(boolean feet, boolean shorter) {
    if (feet) {
      return shorter
          ? Message.of("tape.misreading.one-foot-shorter")
          : Message.of("tape.misreading.one-foot-longer");
    }
    return shorter
        ? Message.of("tape.misreading.one-metre-shorter")
        : Message.of("tape.misreading.one-metre-longer");
  }
}
