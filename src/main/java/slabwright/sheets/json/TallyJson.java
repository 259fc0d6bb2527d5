package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import slabwright.figures.PassageWords;
import slabwright.floor.Edge;
import slabwright.floor.FloorNote;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Transition;
import slabwright.floor.Zone;
import slabwright.floor.reach.MachinePassage;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.site.EdgeClass;
import slabwright.site.Mark;
import slabwright.site.Site;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The tally of a site as JSON; the keys are documented in {@code docs/json.md} and stay. */
public final class TallyJson {

  private TallyJson() {}

  /** The tally as indented JSON, one object. */
  public static String write(Site site, List<ReachAnalysis> areas, Words words) {
    return JsonText.pretty(tree(site, areas, words));
  }

  static ObjectNode tree(Site site, List<ReachAnalysis> areas, Words words) {
    ObjectNode root = JsonNodeFactory.instance.objectNode();
    root.put("site", site.name());
    root.put("release", site.releaseNumber());
    root.put("frame", siteFrame(words));
    ArrayNode list = root.putArray("areas");
    areas.forEach(w -> area(w, list.addObject(), words));
    ArrayNode passages = root.putArray("passages");
    areas.forEach(w -> passages(w, site.units(), words, passages));
    return root;
  }

  static String siteFrame(Words words) {
    return words.say("sheets.tally-json.frame");
  }

  private static void area(ReachAnalysis ways, ObjectNode o, Words words) {
    FloorTakeoff t = ways.takeoff();
    o.put("id", t.area().id());
    o.put("name", t.area().name());
    o.put("gross_mm2", JsonText.number(t.gross().area()));
    o.put("net_mm2", JsonText.number(t.net().area()));
    zones(t, o.putArray("zones"), words);
    edges(t, o.putArray("edges"));
    double transitions = t.transitions().stream().mapToDouble(Transition::length).sum();
    o.put("transitions_mm", JsonText.number(transitions));
    o.put("cutIn_mm", JsonText.number(t.cutIn()));
    o.put("ground_mm2", JsonText.number(t.ground().area()));
    o.put("reach_mm2", JsonText.number(t.asFound().machine().area()));
    o.put("reachAfterLevelling_mm2", JsonText.number(t.levelled().machine().area()));
    o.put("hand_mm2", JsonText.number(t.asFound().hand().area()));
    o.put("handAfterLevelling_mm2", JsonText.number(t.levelled().hand().area()));
    new PrepJson(ways, o, words).write();
    TallyParts.write(t, o);
    notes(t.notes(), o.putArray("notes"), words);
  }

  private static void zones(FloorTakeoff t, ArrayNode list, Words words) {
    for (Zone z : t.zones()) {
      ObjectNode o = list.addObject();
      o.put("id", z.mark().map(Mark::id).orElse("slab"));
      o.put("kind", words.say(z.kind()));
      o.put("area_mm2", JsonText.number(z.area()));
    }
  }

  private static void edges(FloorTakeoff t, ArrayNode list) {
    for (EdgeClass c : EdgeClass.values()) {
      if (t.edges().stream().map(Edge::kind).anyMatch(k -> k == c)) {
        list.addObject().put("class", c.word()).put("length_mm", JsonText.number(t.edgeLength(c)));
      }
    }
  }

  private static void notes(List<FloorNote> notes, ArrayNode list, Words words) {
    for (FloorNote n : notes) {
      ObjectNode o = list.addObject().put("text", words.say(n.message()));
      n.where().ifPresent(w -> JsonText.place(o, w));
    }
  }

  /** Which machine gets through where, on every floor area of a tally. */
  private static void passages(ReachAnalysis ways, UnitSystem units, Words words, ArrayNode list) {
    PassageWords say = new PassageWords(ways.takeoff().area(), units, words);
    for (MachinePassage p : ways.passages()) {
      ObjectNode o = list.addObject().put("area", ways.takeoff().area().id());
      o.put("machine", p.machine().id());
      o.put("place", say.place(p));
      o.put("kind", p.kind().name().toLowerCase(Locale.ROOT));
      p.doorway().ifPresent(d -> o.put("doorway", d.id()).put("wayIn", d.wayIn()));
      JsonText.place(o, p.where());
      o.put("width_mm", JsonText.number(p.width()));
      o.put("fits", p.fits());
      o.put("spare_mm", JsonText.number(p.spare()));
    }
  }
}
