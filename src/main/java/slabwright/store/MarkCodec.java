package slabwright.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.MarkType;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

/** Marks in the plan file. */
final class MarkCodec {
  private MarkCodec() {}

  static Optional<Mark> read(FieldReader f) {
    String id = f.text("id");
    String name = f.textOr("name", "");
    Optional<MarkKind> kind = f.wordNeeded("kind", MarkType.class).map(t -> kind(t, f));
    Form form = f.child("form").map(FormCodec::read).orElse(new Form.Place(Spot.mm(0, 0)));
    int follows = f.whole("follows", -1);
    OptionalInt wall = follows < 0 ? OptionalInt.empty() : OptionalInt.of(follows);
    return kind.map(k -> new Mark(id, name, k, form, wall));
  }

  private static MarkKind kind(MarkType type, FieldReader f) {
    return switch (type) {
      case TRENCH -> trench(f);
      case PATCH -> new MarkKind.Patch();
      case RESIDUE -> new MarkKind.Residue(f.textOr("what", ""));
      case ISLAND -> new MarkKind.Island();
      case BOOTH -> new MarkKind.Booth();
      case COLUMN -> new MarkKind.Column();
      case TOP_OR_STEP ->
          new MarkKind.TopOrStep(f.lengthOr("thickness", Length.ZERO), f.whole("steps", 1));
      case JOINT -> new MarkKind.Joint(f.length("gap"), f.length("depth"));
      case CRACK -> new MarkKind.Crack(f.length("gap"), f.length("depth"));
      case SPALL -> new MarkKind.Spall(f.length("depth"));
      case DRAIN_OR_BOX -> new MarkKind.DrainOrBox();
      case LEVEL_CHANGE -> new MarkKind.LevelChange(f.length("height"));
      case MASKED_TRIM -> new MarkKind.MaskedTrim(f.length("height"));
      case POWER_POINT -> new MarkKind.PowerPoint(f.textOr("rating", ""));
      case DETECTOR -> new MarkKind.Detector();
      case IGNITION_SOURCE -> new MarkKind.IgnitionSource(f.textOr("what", ""));
      case AIR_OUTLET -> new MarkKind.AirOutlet();
    };
  }

  private static MarkKind trench(FieldReader f) {
    TrenchLevel lie = f.word("lie", TrenchLevel.class, TrenchLevel.FLUSH);
    boolean levelled = f.flagOr("levelled", false);
    return new MarkKind.Trench(
        lie,
        levelled,
        switch (lie) {
          case LOW -> f.lengthIf("depth");
          case PROUD -> f.lengthIf("height");
          case FLUSH -> Optional.<Length>empty();
        });
  }

  static void write(Mark m, ObjectNode o) {
    o.put("id", m.id());
    o.put("name", m.name());
    o.put("kind", EnumWords.of(m.kind().type()));
    detail(m.kind(), o);
    m.follows().ifPresent(i -> o.put("follows", i));
    FormCodec.write(m.form(), o.putObject("form"));
  }

  private static void detail(MarkKind kind, ObjectNode o) {
    if (kind instanceof MarkKind.Trench t) {
      o.put("lie", EnumWords.of(t.lie()));
      o.put("levelled", t.levelled());
      FieldWriter.length(o, t.lie() == TrenchLevel.LOW ? "depth" : "height", t.off());
    } else if (kind instanceof MarkKind.Residue r) {
      o.put("what", r.what());
    } else if (kind instanceof MarkKind.TopOrStep t) {
      FieldWriter.length(o, "thickness", t.thickness());
      o.put("steps", t.steps());
    } else if (kind instanceof MarkKind.Joint j) {
      FieldWriter.length(o, "gap", j.width());
      FieldWriter.length(o, "depth", j.depth());
    } else if (kind instanceof MarkKind.Crack c) {
      FieldWriter.length(o, "gap", c.width());
      FieldWriter.length(o, "depth", c.depth());
    } else {
      pointDetail(kind, o);
    }
  }

  private static void pointDetail(MarkKind kind, ObjectNode o) {
    if (kind instanceof MarkKind.Spall s) {
      FieldWriter.length(o, "depth", s.depth());
    } else if (kind instanceof MarkKind.LevelChange l) {
      FieldWriter.length(o, "height", l.height());
    } else if (kind instanceof MarkKind.MaskedTrim t) {
      FieldWriter.length(o, "height", t.height());
    } else if (kind instanceof MarkKind.PowerPoint p) {
      o.put("rating", p.rating());
    } else if (kind instanceof MarkKind.IgnitionSource s) {
      o.put("what", s.what());
    }
  }
}
