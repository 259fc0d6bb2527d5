package slabwright.sheets.prep;

import slabwright.figures.AreaInks;
import slabwright.floor.Edge;
import slabwright.shape.Line;
import slabwright.sheets.plan.SideName;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.OutlineShape;
import slabwright.units.LetterNumbering;
import slabwright.words.Words;

/** What people call an edge: the wall at the top, the foot of the counter. */
final class EdgeName {
  private final FloorArea area;
  private final OutlineShape shape;
  private final Words words;

  EdgeName(FloorArea area, Words words) {
    this.words = words;
    this.area = area;
    this.shape = OutlineShape.of(area.outline(), AreaInks.TOLERANCE);
  }

  String of(Edge edge) {
    return switch (edge.kind()) {
      case WALL, OPEN_EDGE, KERB -> piece(edge);
      case DOORWAY -> words.say("sheets.edge-name.threshold", doorway(edge));
      case ISLAND, BOOTH, COLUMN, TOP_OR_STEP -> words.say("sheets.edge-name.foot", mark(edge));
    };
  }

  /** The same without the name of the one thing. */
  String kind(Edge edge) {
    return switch (edge.kind()) {
      case WALL, OPEN_EDGE, KERB, DOORWAY -> of(edge);
      case ISLAND, BOOTH, COLUMN, TOP_OR_STEP ->
          words.say("sheets.edge-name.foot", edge.kind().label());
    };
  }

  private String piece(Edge edge) {
    if (edge.piece().isEmpty()) {
      return words.say(edge.kind().label());
    }
    int i = edge.piece().getAsInt();
    Line line = shape.pieces().get(i);
    return words.say(
        "sheets.edge-name.piece",
        edge.kind().label(),
        SideName.of(line, shape.floorOnLeft()),
        LetterNumbering.of(i));
  }

  private String doorway(Edge edge) {
    return area.doorways().stream()
        .filter(d -> d.id().equals(edge.id()))
        .map(Doorway::name)
        .findFirst()
        .orElseGet(() -> words.say(edge.kind().label()));
  }

  private String mark(Edge edge) {
    return area.mark(edge.id()).map(Mark::name).orElseGet(() -> words.say(edge.kind().label()));
  }

  /** Whether the edge is a doorway that the machine comes in by. */
  boolean isWayIn(Edge edge) {
    return area.doorways().stream().anyMatch(d -> d.id().equals(edge.id()) && d.wayIn());
  }
}
