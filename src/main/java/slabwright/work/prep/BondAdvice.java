package slabwright.work.prep;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/**
 * Which bond to start with.
 *
 * @param bonds one, or two to try side by side; empty when the slab was not scratched
 */
public record BondAdvice(List<Bond> bonds, String sentence) {
  public BondAdvice {
    bonds = List.copyOf(bonds);
  }

  static BondAdvice of(OptionalDouble mohs) {
    if (mohs.isEmpty()) {
      return new BondAdvice(
          List.of(), "Scratch the slab with Mohs picks before choosing a bond; it was not read.");
    }
    List<Bond> bonds = Bond.of(mohs.getAsDouble());
    String words = bonds.stream().map(Bond::word).collect(Collectors.joining(" and "));
    String first =
        bonds.size() == 1
            ? "Mohs %.1f: start with %s.".formatted(mohs.getAsDouble(), words)
            : "Mohs %.1f lies between bands: try %s side by side."
                .formatted(mohs.getAsDouble(), words);
    return new BondAdvice(
        bonds,
        first
            + " Scratch again after the first pass: the skin differs from the concrete under it."
            + " (Common practice.)");
  }
}
