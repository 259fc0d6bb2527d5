package slabwright.figures;

import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.coat.DividedCoat;

/** How a coat is divided, in words; sheets and desk say the same. */
public final class DivisionWords {
  private DivisionWords() {}

  /** How many sections, where their lines lie and how they meet. */
  public static String of(DividedCoat divided, UnitSystem units, Words words) {
    long joints =
        divided.lines().stream().filter(l -> l.source() == DividedCoat.Source.JOINT).count();
    long drawn =
        divided.lines().stream().filter(l -> l.source() == DividedCoat.Source.PLAN).count();
    int lines = divided.lines().size();
    String where =
        drawn > 0
            ? words.say("figures.division-words.on-the-plan", lines)
            : words.say("figures.division-words.proposed", lines, joints);
    String sections =
        words.say("figures.division-words.sections", divided.sections().size(), where);
    return divided.lap().isPresent()
        ? sections
            + " "
            + words.say(
                "figures.division-words.lap", LengthFormat.show(divided.lap().getAsDouble(), units))
        : sections;
  }
}
