package slabwright.site;

import java.util.List;
import slabwright.units.Length;

/** The outline of a mark as the person gave it; arcs stay arcs until a tolerance is known. */
public sealed interface Form {
  /** Straight sides between corners, in order. */
  record Polygon(List<Spot> corners) implements Form {
    public Polygon {
      corners = List.copyOf(corners);
    }
  }

  /**
   * Sides between corners, each straight or an arc.
   *
   * @param corners like outline pieces: a corner and the rise of the side after it
   */
  record Curved(List<CurvedCorner> corners) implements Form {
    public Curved {
      corners = List.copyOf(corners);
    }
  }

  /** A corner and the rise of the side that follows, positive to the right of travel. */
  record CurvedCorner(Spot at, Length rise) {}

  /**
   * A rectangle about its middle.
   *
   * @param corner radius of its rounded corners, 0 for square ones
   * @param turn degrees counter-clockwise
   */
  record Rectangle(Spot middle, Length length, Length width, Length corner, double turn)
      implements Form {}

  /** A strip with half-round ends, {@code length} over all. */
  record RoundEnded(Spot middle, Length length, Length width, double turn) implements Form {}

  record Circle(Spot middle, Length radius) implements Form {}

  /** A strip of a width along a path, as trenches are cut; square ends, mitred bends. */
  record Strip(List<Spot> path, Length width) implements Form {
    public Strip {
      path = List.copyOf(path);
    }
  }

  /** A line without width. */
  record Trace(List<Spot> path) implements Form {
    public Trace {
      path = List.copyOf(path);
    }
  }

  /** A single place. */
  record Place(Spot at) implements Form {}
}
