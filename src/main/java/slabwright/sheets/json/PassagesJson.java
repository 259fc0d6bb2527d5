package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import slabwright.figures.PassageWords;
import slabwright.floor.reach.MachinePassage;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** Which machine gets through where, on every floor area of a tally. */
final class PassagesJson {
  private PassagesJson() {}

  static void write(ReachAnalysis ways, UnitSystem units, Words words, ArrayNode list) {
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
