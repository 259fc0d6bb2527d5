package slabwright.desk.model.input;

import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/**
 * Where a touch was drawn to.
 *
 * @param guides lines that show why, mm on the site
 */
public record Snap(Vec at, Kind kind, List<Line> guides) {
  /** What drew it. */
  public enum Kind {
    FREE(""),
    CORNER("corner"),
    EDGE("edge"),
    SQUARE("square"),
    PARALLEL("parallel"),
    GRID("");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  public Snap {
    guides = List.copyOf(guides);
  }

  public static Snap free(Vec at) {
    return new Snap(at, Kind.FREE, List.of());
  }

  public static Snap of(Vec at, Kind kind, Line... guides) {
    return new Snap(at, kind, List.of(guides));
  }
}
