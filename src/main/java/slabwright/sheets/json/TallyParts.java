package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.shape.Line;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.Spot;

/** The parts of a floor area that a tally lists beside its sums. */
final class TallyParts {
  private TallyParts() {}

  static void write(FloorTakeoff t, ObjectNode o) {
    standing(t, o.putArray("standing"));
    marks(t, o.putArray("marks"));
    doorways(t.area(), o.putArray("doorways"));
  }

  private static void standing(FloorTakeoff t, ArrayNode list) {
    for (Obstacle s : t.standing()) {
      list.addObject()
          .put("id", s.mark().id())
          .put("kind", s.mark().kind().type().word())
          .put("area_mm2", JsonText.number(s.area()));
    }
    double stands = t.gross().area() - t.net().area();
    list.addObject().put("kind", "all").put("area_mm2", JsonText.number(stands));
  }

  /** Lines and places that are marked; areas stand among the zones. */
  private static void marks(FloorTakeoff takeoff, ArrayNode list) {
    for (Mark m : takeoff.area().marks()) {
      if (m.form() instanceof Form.Trace t) {
        Line line = new Line(t.path().stream().map(Spot::vec).toList());
        double on = takeoff.net().clip(line).stream().mapToDouble(Line::length).sum();
        mark(m, list)
            .put("length_mm", JsonText.number(line.length()))
            .put("onFloor_mm", JsonText.number(on));
      } else if (m.form() instanceof Form.Place) {
        mark(m, list);
      }
    }
  }

  private static ObjectNode mark(Mark m, ArrayNode list) {
    return list.addObject().put("id", m.id()).put("kind", m.kind().type().word());
  }

  private static void doorways(FloorArea area, ArrayNode list) {
    for (Doorway d : area.doorways()) {
      list.addObject()
          .put("id", d.id())
          .put("name", d.name())
          .put("width_mm", JsonText.number(d.width().mm()));
    }
  }
}
