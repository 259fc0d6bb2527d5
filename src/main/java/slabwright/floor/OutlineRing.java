package slabwright.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.RingWindow;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.EdgeClass;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;
import slabwright.site.PieceKind;

/** The outline as one ring that has a corner at every jamb, and what each of its segments is. */
final class OutlineRing {
  /** What a segment is: its class, its piece and, in a doorway, the doorway's id. */
  record Part(EdgeClass kind, int piece, String doorway) {}

  private final List<Vec> points = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();

  OutlineRing(FloorArea area, double tolerance) {
    OutlineShape shape = OutlineShape.of(area.outline(), tolerance);
    for (int piece = 0; piece < area.outline().size(); piece++) {
      add(area, shape, piece);
    }
  }

  private OutlineRing(OutlineRing whole, List<Integer> corners) {
    for (int i : corners) {
      points.add(whole.points.get(i));
      parts.add(whole.parts.get(i));
    }
  }

  /** The same ring inside the window; beyond it stretches are drawn straight. */
  OutlineRing about(Bounds window) {
    return new OutlineRing(this, RingWindow.corners(points, window));
  }

  private void add(FloorArea area, OutlineShape shape, int piece) {
    double end = shape.pieces().get(piece).length();
    Part bare = new Part(kind(area.outline().get(piece).kind()), piece, "");
    double at = 0;
    for (Doorway d : doorways(area, piece)) {
      double open = Math.max(at, d.offset().mm());
      double close = Math.min(end, d.offset().mm() + d.width().mm());
      if (open < close) {
        add(shape.part(piece, at, open), bare);
        add(shape.part(piece, open, close), new Part(EdgeClass.DOORWAY, piece, d.id()));
        at = close;
      }
    }
    add(shape.part(piece, at, end), bare);
  }

  private void add(Line line, Part part) {
    for (int i = 0; i + 1 < line.points().size(); i++) {
      points.add(line.points().get(i));
      parts.add(part);
    }
  }

  private static List<Doorway> doorways(FloorArea area, int piece) {
    return area.doorways().stream()
        .filter(d -> d.piece() == piece)
        .sorted(Comparator.comparing(Doorway::offset))
        .toList();
  }

  private static EdgeClass kind(PieceKind kind) {
    return switch (kind) {
      case WALL -> EdgeClass.WALL;
      case OPEN_EDGE -> EdgeClass.OPEN_EDGE;
      case KERB -> EdgeClass.KERB;
    };
  }

  Ring ring() {
    return new Ring(points);
  }

  /** What segment i of the ring is. */
  Part part(int segment) {
    return parts.get(segment);
  }
}
