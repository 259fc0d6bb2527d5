package slabwright.work.prep;

import java.util.List;
import java.util.OptionalDouble;
import slabwright.units.Message;

/**
 * Which bond to start with.
 *
 * @param bonds one, or two to try side by side; empty when the slab was not scratched
 */
public record BondAdvice(List<Bond> bonds, Message sentence) {
  public BondAdvice {
    bonds = List.copyOf(bonds);
  }

  static BondAdvice of(OptionalDouble mohs) {
    if (mohs.isEmpty()) {
      return new BondAdvice(List.of(), Message.of("work.bond-advice.scratch-the-slab-with-mohs"));
    }
    List<Bond> bonds = Bond.of(mohs.getAsDouble());
    Message words = Bond.words(bonds).orElseThrow();
    Message first =
        bonds.size() == 1
            ? Message.of("work.bond-advice.mohs-start-with", mohs.getAsDouble(), words)
            : Message.of("work.bond-advice.mohs-lies-between-bands-try", mohs.getAsDouble(), words);
    return new BondAdvice(
        bonds, Message.of("work.bond-advice.scratch-again-after-the-first", first));
  }
}
