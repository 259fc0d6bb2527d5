package slabwright.work.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the ground floor will look different, and what dye does there. Common practice: a tight
 * cream takes less dye, an open paste more.
 */
public record ExposureChange(String zone, String looks, String dye) {

  static List<ExposureChange> of(PrepParameters floor) {
    List<ExposureChange> changes = new ArrayList<>();
    floor.zones().forEach(z -> of(z.name(), z.kind()).ifPresent(changes::add));
    return List.copyOf(changes);
  }

  private static Optional<ExposureChange> of(String name, PrepZone.Kind kind) {
    return switch (kind) {
      case OLD_CONCRETE -> Optional.empty();
      case TRENCH_PROUD ->
          Optional.of(
              new ExposureChange(
                  name,
                  "Ground deeper than the old slab: coarser aggregate, younger paste, a straight"
                      + " edge to the old concrete.",
                  "More stone takes less dye; the young paste between takes more. It stays visible."));
      case TRENCH_LOW ->
          Optional.of(
              new ExposureChange(
                  name,
                  "Filled up: no aggregate shows, the filler's own colour does.",
                  "Filler takes little dye or none; test it."));
      case TRENCH_FLUSH ->
          Optional.of(
              new ExposureChange(
                  name,
                  "Other stone and other sand than the old slab at the same depth.",
                  "Young open paste takes more dye: expect it darker."));
      case PATCH ->
          Optional.of(
              new ExposureChange(
                  name,
                  "A levelled spot is a tight cream without aggregate.",
                  "It takes less dye: expect it lighter and flatter."));
      case RESIDUE ->
          Optional.of(
              new ExposureChange(
                  name,
                  "The skin under old adhesive is often sealed or etched.",
                  "What is left of it keeps dye out: wet it and look for beads before dyeing."));
    };
  }
}
