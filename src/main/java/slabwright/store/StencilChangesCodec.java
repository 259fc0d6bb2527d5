package slabwright.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import slabwright.site.HandSeams;
import slabwright.site.StencilChanges;
import slabwright.units.Length;

/** What a person accepted or set by hand of a stencil, in the plan file. */
final class StencilChangesCodec {
  private StencilChangesCodec() {}

  static StencilChanges read(Fields f) {
    return new StencilChanges(
        f.lengthIf("thickenMask"),
        f.numberIf("dropUnder"),
        f.numberIf("fillUnder"),
        f.lengthIf("roundNeedles"),
        f.lengthIf("tieWidth"),
        f.numberIf("baseLightness"),
        f.object("seams", StencilChangesCodec::seams));
  }

  private static HandSeams seams(Fields f) {
    return new HandSeams(
        f.word("strips", HandSeams.Strips.class, HandSeams.Strips.DOWN), f.lengths("places"));
  }

  static void write(StencilChanges c, ObjectNode o) {
    Put.length(o, "thickenMask", c.thickenMask());
    Put.number(o, "dropUnder", c.dropUnder());
    Put.number(o, "fillUnder", c.fillUnder());
    Put.length(o, "roundNeedles", c.roundNeedles());
    Put.length(o, "tieWidth", c.tieWidth());
    Put.number(o, "baseLightness", c.baseLightness());
    c.seams().ifPresent(s -> seams(s, o.putObject("seams")));
  }

  private static void seams(HandSeams s, ObjectNode o) {
    o.put("strips", Words.of(s.strips()));
    ArrayNode places = o.putArray("places");
    for (Length p : s.places()) {
      Put.add(places, p);
    }
  }
}
