package slabwright.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.floor.Edge;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Grinding;
import slabwright.floor.HandKind;
import slabwright.floor.HandPiece;
import slabwright.floor.Zone;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/** The hand work of a floor area as a numbered list: edges first, then pieces of floor. */
final class HandList {
  private final FloorTakeoff takeoff;
  private final EdgeName names;

  HandList(FloorTakeoff takeoff) {
    this.takeoff = takeoff;
    this.names = new EdgeName(takeoff.area());
  }

  /** The edges worked along by hand; ways in are not among them. */
  List<HandItem> edges() {
    List<HandItem> items = new ArrayList<>();
    for (Edge e : takeoff.edges()) {
      if (!names.isWayIn(e) && !e.lines().isEmpty()) {
        items.add(edge(e));
      }
    }
    return items;
  }

  private HandItem edge(Edge e) {
    Line longest = e.lines().stream().max(Comparator.comparingDouble(Line::length)).orElseThrow();
    int side = longestSide(longest);
    Vec a = longest.points().get(side);
    Vec b = longest.points().get(side + 1);
    return HandItem.edge(names.of(e), e.length(), a.towards(b, 0.5), b.minus(a).unit().left());
  }

  private static int longestSide(Line line) {
    int best = 0;
    for (int i = 1; i + 1 < line.points().size(); i++) {
      best = length(line, i) > length(line, best) ? i : best;
    }
    return best;
  }

  private static double length(Line line, int i) {
    return line.points().get(i).distanceTo(line.points().get(i + 1));
  }

  /** Pieces of floor: trenches, places for hand tools only and pockets each, strips as sums. */
  List<HandItem> pieces() {
    Grinding g = takeoff.asFound();
    List<HandItem> items = new ArrayList<>();
    for (HandPiece p : g.pieces(HandKind.TRENCH)) {
      items.add(HandItem.piece(at(p.place()) + ", grind flush first", p.area(), p.place()));
    }
    for (HandPiece p : g.pieces(HandKind.HAND_ONLY)) {
      items.add(HandItem.piece(at(p.place()) + ", hand tools only", p.area(), p.place()));
    }
    for (HandPiece p : g.pieces(HandKind.POCKET)) {
      items.add(HandItem.piece("pocket out of reach", p.area(), p.place()));
    }
    sum(items, "edge strips, all edges", HandKind.EDGE_STRIP);
    sum(items, "corners", HandKind.CORNER);
    return items;
  }

  private void sum(List<HandItem> items, String words, HandKind kind) {
    List<HandPiece> pieces = takeoff.asFound().pieces(kind);
    if (!pieces.isEmpty()) {
      String count = kind == HandKind.CORNER ? pieces.size() + " " + words : words;
      items.add(HandItem.sum(count, takeoff.asFound().handArea(kind)));
    }
  }

  /** The name of the mark whose zone holds the point. */
  private String at(Vec p) {
    return takeoff.zones().stream()
        .filter(z -> z.mark().isPresent() && z.region().contains(p))
        .map(HandList::name)
        .findFirst()
        .orElse("floor");
  }

  private static String name(Zone z) {
    return z.mark().orElseThrow().name();
  }
}
