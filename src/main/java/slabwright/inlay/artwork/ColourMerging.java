package slabwright.inlay.artwork;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.units.CieLab;
import slabwright.units.Message;

/**
 * The colours of a graphic in the order they are first painted; each stands for itself or for an
 * earlier one that it can't be told from.
 */
final class ColourMerging {
  private final Map<String, String> standsFor = new LinkedHashMap<>();
  private final Map<String, String> merged;
  private final double deltaE;

  private ColourMerging(Map<String, String> merged, double deltaE) {
    this.merged = merged;
    this.deltaE = deltaE;
  }

  static ColourMerging of(
      List<PaintedShape> shapes, ArtworkOptions options, WarningCollector notes) {
    ColourMerging palette = new ColourMerging(options.merged(), options.mergeDeltaE());
    for (PaintedShape s : shapes) {
      palette.standsFor.computeIfAbsent(s.hex(), palette::nearest);
    }
    palette.standsFor.forEach(
        (hex, as) -> {
          if (!hex.equals(as)) {
            notes.add(Kind.COLOURS_MERGED, Message.of("inlay.colour-merging.counts-as", hex, as));
          }
        });
    return palette;
  }

  String of(String hex) {
    return standsFor.getOrDefault(hex, hex);
  }

  private String nearest(String painted) {
    String hex = merged.getOrDefault(painted, painted);
    if (deltaE <= 0) {
      return hex;
    }
    CieLab mine = CieLab.ofHex(hex);
    for (String other : List.copyOf(standsFor.values())) {
      if (CieLab.ofHex(other).deltaE(mine) <= deltaE) {
        return other;
      }
    }
    return hex;
  }
}
