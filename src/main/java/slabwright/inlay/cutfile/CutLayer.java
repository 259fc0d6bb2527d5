package slabwright.inlay.cutfile;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The named groups of a cut file, and the one of a proof page. In an SVG they are groups with an
 * id, in a PDF layers (optional content).
 */
public enum CutLayer {
  /** Through the film and not through its backing: the edges of what is weeded. */
  KISS_CUT,
  /** Through film and backing: the panel's outline. */
  THROUGH_CUT,
  /** Drawn, not cut: words, arrows, marks. */
  PEN,
  /** Kiss-cuts inside what is weeded, so that large waste comes off in pieces. */
  WEED_CUT,
  /** On the proof page: shaded, what is weeded. */
  WEEDED;

  /** The name in the file, the same in every language. */
  public String id() {
    return switch (this) {
      case KISS_CUT -> "kiss-cut";
      case THROUGH_CUT -> "through-cut";
      case PEN -> "pen";
      case WEED_CUT -> "weed-cut";
      case WEEDED -> "weeded";
    };
  }

  /** The names of all of them. */
  public static List<String> ids() {
    return Arrays.stream(values()).map(CutLayer::id).toList();
  }

  /** The layer of this name. */
  public static Optional<CutLayer> of(String id) {
    return Arrays.stream(values()).filter(l -> l.id().equals(id)).findFirst();
  }
}
