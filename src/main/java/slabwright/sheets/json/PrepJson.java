package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import slabwright.floor.CutIn;
import slabwright.floor.EdgeStrip;
import slabwright.floor.EdgeTally;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.HandWorkKind;
import slabwright.floor.LevelStep;
import slabwright.floor.MachineShare;
import slabwright.floor.TrenchWork;
import slabwright.floor.reach.PocketAccess;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.floor.reach.ReachCurve;
import slabwright.floor.reach.ReachPoint;
import slabwright.words.Words;
import slabwright.work.top.TopTakeoff;

/** What sheet 2 shows of one floor area, as keys of its tally. */
final class PrepJson {
  private final ReachAnalysis ways;
  private final FloorTakeoff takeoff;
  private final ObjectNode to;
  private final Words words;

  PrepJson(ReachAnalysis ways, ObjectNode to, Words words) {
    this.words = words;
    this.ways = ways;
    this.takeoff = ways.takeoff();
    this.to = to;
  }

  void write() {
    machines(to.putArray("machines"));
    hand(to.putArray("handByKind"));
    strips(to.putArray("strips"));
    trenches(to.putArray("trenches"));
    levels(to.putArray("levelChanges"));
    edges(ways.takeoff().tally());
    for (CutIn c : CutIn.values()) {
      to.withArray("cutIns")
          .addObject()
          .put("product", words.say(c.words()))
          .put("length_mm", JsonText.number(c.length(takeoff)));
    }
    pockets(to.putArray("pockets"));
    curves(to.putArray("reachCurves"));
    tops(to.putArray("tops"));
  }

  private void machines(ArrayNode list) {
    List<MachineShare> found = ways.takeoff().asFound().shares();
    List<MachineShare> level = takeoff.levelled().shares();
    for (int i = 0; i < found.size(); i++) {
      ObjectNode o = list.addObject().put("id", found.get(i).machine().id());
      o.put("name", found.get(i).machine().name());
      o.put("body_mm", JsonText.number(found.get(i).machine().body().mm()));
      o.put("strip_mm", JsonText.number(found.get(i).machine().strip()));
      o.put("share_mm2", JsonText.number(found.get(i).area()));
      o.put("shareAfterLevelling_mm2", JsonText.number(level.get(i).area()));
      o.put("alone_mm2", JsonText.number(takeoff.asFound().reaches().get(i).area()));
    }
  }

  private void hand(ArrayNode list) {
    for (HandWorkKind k : HandWorkKind.values()) {
      ObjectNode o = list.addObject().put("kind", words.say(k.word()));
      o.put("pieces", takeoff.asFound().pieces(k).size());
      o.put("area_mm2", JsonText.number(takeoff.asFound().handArea(k)));
      o.put("areaAfterLevelling_mm2", JsonText.number(takeoff.levelled().handArea(k)));
    }
  }

  private void strips(ArrayNode list) {
    for (EdgeStrip s : ways.strips()) {
      ObjectNode o = list.addObject();
      s.edge()
          .ifPresent(
              e -> {
                o.put("along", e.kind().word());
                e.piece().ifPresent(p -> o.put("piece", p));
                if (!e.id().isEmpty()) {
                  o.put("id", e.id());
                }
              });
      s.along().ifPresent(m -> o.put("along", m.kind().type().word()).put("id", m.id()));
      o.put("length_mm", JsonText.number(s.length()));
      o.put("area_mm2", JsonText.number(s.area()));
    }
  }

  private void trenches(ArrayNode list) {
    for (TrenchWork t : TrenchWork.of(takeoff)) {
      ObjectNode o = list.addObject().put("id", t.mark().id());
      o.put("lies", t.kind().lie().name().toLowerCase(Locale.ROOT));
      o.put("levelled", t.kind().levelled());
      t.length().ifPresent(v -> o.put("length_mm", JsonText.number(v)));
      t.width().ifPresent(v -> o.put("width_mm", JsonText.number(v)));
      t.off().ifPresent(v -> o.put("off_mm", JsonText.number(v)));
      t.volume().ifPresent(v -> o.put("volume_mm3", JsonText.number(v)));
      o.put("area_mm2", JsonText.number(t.area()));
      o.put("hand_mm2", JsonText.number(t.handFound()));
      o.put("handAfterLevelling_mm2", JsonText.number(t.handLevel()));
      o.put("due", words.say(t.due()));
    }
  }

  private void levels(ArrayNode list) {
    for (LevelStep s : LevelStep.of(takeoff)) {
      ObjectNode o = list.addObject().put("id", s.mark().id());
      o.put("length_mm", JsonText.number(s.length()));
      o.put("step_mm", JsonText.number(s.height()));
    }
  }

  private void edges(EdgeTally tally) {
    ObjectNode corners = to.putObject("corners");
    corners.put("inside", tally.corners().inside().size());
    corners.put("outside", tally.corners().outside().size());
    ArrayNode ends = to.putArray("freeEnds");
    tally.ends().forEach(e -> JsonText.place(ends.addObject(), e));
    ArrayNode meets = to.putArray("transitions");
    for (EdgeTally.Meeting m : tally.transitions()) {
      ObjectNode o =
          meets.addObject().put("below", words.say(m.below())).put("above", words.say(m.above()));
      o.put("length_mm", JsonText.number(m.length()));
    }
    ArrayNode lines = to.putArray("lines");
    for (EdgeTally.LineMarks l : tally.lines()) {
      ObjectNode o = lines.addObject().put("kind", l.kind().word()).put("number", l.count());
      o.put("length_mm", JsonText.number(l.length()));
    }
  }

  private void pockets(ArrayNode list) {
    for (PocketAccess w : ways.pockets()) {
      ObjectNode o = list.addObject().put("area_mm2", JsonText.number(w.pocket().area()));
      JsonText.place(o, w.pocket().place());
      w.pass()
          .ifPresent(
              p -> {
                ObjectNode pass = o.putObject("pass");
                pass.put("width_mm", JsonText.number(p.width()));
                JsonText.place(pass, p.where());
              });
      w.bend()
          .ifPresent(
              b -> JsonText.place(o.putObject("bend").put("machine", b.machine().id()), b.where()));
      w.body().ifPresent(b -> o.put("widestBody_mm", JsonText.number(b)));
    }
  }

  private void curves(ArrayNode list) {
    for (ReachCurve c : ways.curves()) {
      ObjectNode o = list.addObject().put("trenchesLevel", c.levelled());
      ArrayNode points = o.putArray("points");
      for (ReachPoint p : c.points()) {
        ObjectNode q = points.addObject().put("body_mm", JsonText.number(p.body()));
        q.put("machine_mm2", JsonText.number(p.machine()));
        q.put("hand_mm2", JsonText.number(p.hand()));
      }
    }
  }

  private void tops(ArrayNode list) {
    for (TopTakeoff t : TopTakeoff.of(takeoff)) {
      ObjectNode o = list.addObject().put("id", t.id()).put("steps", t.steps());
      o.put("faces_mm2", JsonText.number(t.face()));
      o.put("edges_mm", JsonText.number(t.edgeLength()));
      o.put("thickness_mm", JsonText.number(t.thickness()));
    }
  }
}
