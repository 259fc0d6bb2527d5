package slabwright.inlay.artwork.picture;

import java.util.Optional;
import java.util.OptionalInt;

/** Which of a picture's colours is the paper: the one along most of its rim. */
final class BackgroundFinder {
  /** A share of the rim that leaves no doubt: our own choice, no source. */
  private static final double TOLD = 0.6;

  private final LabelMap map;
  private final int[] onRim;

  BackgroundFinder(LabelMap map) {
    this.map = map;
    this.onRim = new int[map.palette().length];
    for (int x = 0; x < map.width(); x++) {
      onRim[map.at(x, 0)]++;
      onRim[map.at(x, map.height() - 1)]++;
    }
    for (int y = 0; y < map.height(); y++) {
      onRim[map.at(0, y)]++;
      onRim[map.at(map.width() - 1, y)]++;
    }
  }

  /** The colour that most of the rim has. */
  int most() {
    int most = 0;
    for (int k = 1; k < onRim.length; k++) {
      most = onRim[k] > onRim[most] ? k : most;
    }
    return most;
  }

  /** The paper; empty when it can't be told. */
  OptionalInt told() {
    int most = most();
    boolean clear = onRim[most] >= TOLD * 2 * (map.width() + map.height());
    return clear ? OptionalInt.of(most) : OptionalInt.empty();
  }

  /** The paper as a person chose it; empty when the person chose none. */
  OptionalInt chosen(String hex) {
    if (hex.isEmpty()) {
      return OptionalInt.empty();
    }
    int rgb = PixelColour.packed(hex);
    int best = 0;
    for (int k = 1; k < map.palette().length; k++) {
      if (PixelColour.distance(map.colour(k), rgb) < PixelColour.distance(map.colour(best), rgb)) {
        best = k;
      }
    }
    return OptionalInt.of(best);
  }

  /** The paper as chosen, else as told. */
  OptionalInt find(Optional<String> asked) {
    return asked.map(this::chosen).orElseGet(this::told);
  }
}
