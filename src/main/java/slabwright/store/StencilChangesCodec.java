package slabwright.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import slabwright.site.HandSeams;
import slabwright.site.LocalBlank;
import slabwright.site.StencilChanges;
import slabwright.units.Length;

/** What a person accepted or set by hand of a stencil, in the plan file. */
final class StencilChangesCodec {
  private StencilChangesCodec() {}

  static StencilChanges read(FieldReader f) {
    return new StencilChanges(
        f.lengthIf("thickenMask"),
        f.numberIf("dropUnder"),
        f.numberIf("fillUnder"),
        f.lengthIf("roundNeedles"),
        f.lengthIf("tieWidth"),
        f.numberIf("baseLightness"),
        f.object("seams", StencilChangesCodec::seams),
        f.list("blanks", StencilChangesCodec::blank));
  }

  private static Optional<LocalBlank> blank(FieldReader f) {
    return Optional.of(
        new LocalBlank(f.text("colour"), f.spot("corner"), f.length("width"), f.length("height")));
  }

  private static HandSeams seams(FieldReader f) {
    return new HandSeams(
        f.word("strips", HandSeams.Strips.class, HandSeams.Strips.DOWN), f.lengths("places"));
  }

  static void write(StencilChanges c, ObjectNode o) {
    FieldWriter.length(o, "thickenMask", c.thickenMask());
    FieldWriter.number(o, "dropUnder", c.dropUnder());
    FieldWriter.number(o, "fillUnder", c.fillUnder());
    FieldWriter.length(o, "roundNeedles", c.roundNeedles());
    FieldWriter.length(o, "tieWidth", c.tieWidth());
    FieldWriter.number(o, "baseLightness", c.baseLightness());
    c.seams().ifPresent(s -> seams(s, o.putObject("seams")));
    FieldWriter.list(o, "blanks", c.blanks(), StencilChangesCodec::blank);
  }

  private static void blank(LocalBlank b, ObjectNode o) {
    o.put("colour", b.colour());
    FieldWriter.spot(o, "corner", b.corner());
    FieldWriter.length(o, "width", b.width());
    FieldWriter.length(o, "height", b.height());
  }

  private static void seams(HandSeams s, ObjectNode o) {
    o.put("strips", EnumWords.of(s.strips()));
    ArrayNode places = o.putArray("places");
    for (Length p : s.places()) {
      FieldWriter.add(places, p);
    }
  }
}
