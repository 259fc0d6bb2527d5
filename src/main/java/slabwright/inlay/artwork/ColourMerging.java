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
  private final double deltaE;

  private ColourMerging(double deltaE) {
    this.deltaE = deltaE;
  }

  static ColourMerging of(List<PaintedShape> shapes, double deltaE, WarningCollector notes) {
    ColourMerging palette = new ColourMerging(deltaE);
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

  private String nearest(String hex) {
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
