package slabwright.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import slabwright.site.AirSpace;
import slabwright.site.Doorway;
import slabwright.site.Exposure;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Machine;
import slabwright.site.MoistureReading;
import slabwright.site.OutlinePiece;
import slabwright.site.PieceKind;
import slabwright.site.Setting;
import slabwright.site.Slab;
import slabwright.units.Length;

/** Floor areas in the plan file. */
final class AreaCodec {
  private AreaCodec() {}

  static Optional<FloorArea> read(FieldReader f) {
    return Optional.of(
        new FloorArea(
            f.text("id"),
            f.text("name"),
            f.word("setting", Setting.class, Setting.INDOOR),
            f.list("outline", AreaCodec::piece),
            f.list("doorways", AreaCodec::doorway),
            f.list("machines", AreaCodec::machine),
            f.list("marks", MarkCodec::read),
            f.list("inlays", InlayCodec::read),
            f.object("slab", AreaCodec::slab).orElse(Slab.UNKNOWN),
            f.object("air", AreaCodec::air).orElse(AirSpace.UNKNOWN),
            f.object("finish", AreaCodec::finish).orElse(Finish.NONE),
            f.object("use", FloorUseCodec::use).orElse(FloorUse.NOT_ASKED),
            f.list("declined", FloorUseCodec::declined),
            AreaDetailsCodec.read(f)));
  }

  private static Optional<OutlinePiece> piece(FieldReader f) {
    return Optional.of(
        new OutlinePiece(
            f.spot("at"),
            f.word("then", PieceKind.class, PieceKind.WALL),
            f.lengthOr("rise", Length.ZERO)));
  }

  private static Optional<Doorway> doorway(FieldReader f) {
    return Optional.of(
        new Doorway(
            f.text("id"),
            f.textOr("name", ""),
            f.whole("wall", -1),
            f.length("offset"),
            f.length("width"),
            f.flagOr("wayIn", false),
            new Doorway.Passage(
                f.object("leadsTo", AreaCodec::leadsTo),
                f.lengthIf("clear"),
                f.flagOr("sealed", false))));
  }

  private static Doorway.LeadsTo leadsTo(FieldReader f) {
    return new Doorway.LeadsTo(f.text("area"), f.text("doorway"));
  }

  private static Optional<Machine> machine(FieldReader f) {
    return Optional.of(
        new Machine(
            f.text("id"),
            f.textOr("name", ""),
            f.length("body"),
            f.length("grinding"),
            f.lengthOr("clearance", Length.ZERO),
            new Machine.Travel(f.lengthIf("length"), f.lengthIf("passing"))));
  }

  private static Slab slab(FieldReader f) {
    return new Slab(
        f.numberIf("mohs"),
        f.numberIf("ageYears"),
        f.lengthIf("thickness"),
        f.list("moisture", AreaCodec::moisture),
        f.numberIf("surfaceC"),
        f.numberIf("airC"),
        f.numberIf("humidity"),
        f.flagIf("vapourBarrier"));
  }

  private static Optional<MoistureReading> moisture(FieldReader f) {
    return f.wordNeeded("test", MoistureReading.Test.class)
        .map(t -> new MoistureReading(t, f.number("value"), f.textOr("place", "")));
  }

  private static AirSpace air(FieldReader f) {
    return new AirSpace(
        f.lengthIf("ceiling"), f.numberOr("airflowM3PerHour", 0), f.numberOr("mixing", 1));
  }

  private static Finish finish(FieldReader f) {
    return new Finish(f.wordIf("exposure", Exposure.class), f.list("coats", AreaCodec::coat));
  }

  private static Optional<Finish.Coat> coat(FieldReader f) {
    return Optional.of(
        new Finish.Coat(
            f.text("product"),
            f.whole("coats", 1),
            f.word("on", Finish.Target.class, Finish.Target.WHOLE_FLOOR)));
  }

  static void write(FloorArea a, ObjectNode o) {
    o.put("id", a.id());
    o.put("name", a.name());
    o.put("setting", EnumWords.of(a.setting()));
    FieldWriter.list(o, "outline", a.outline(), AreaCodec::piece);
    FieldWriter.list(o, "doorways", a.doorways(), AreaCodec::doorway);
    FieldWriter.list(o, "machines", a.machines(), AreaCodec::machine);
    FieldWriter.list(o, "marks", a.marks(), MarkCodec::write);
    FieldWriter.list(o, "inlays", a.inlays(), InlayCodec::write);
    if (!a.slab().equals(Slab.UNKNOWN)) {
      slab(a.slab(), o.putObject("slab"));
    }
    if (!a.air().equals(AirSpace.UNKNOWN)) {
      FieldWriter.length(o.putObject("air"), "ceiling", a.air().ceiling());
      o.withObject("/air").put("airflowM3PerHour", a.air().airflowM3PerHour());
      o.withObject("/air").put("mixing", a.air().mixing());
    }
    if (!a.finish().equals(Finish.NONE)) {
      finish(a.finish(), o.putObject("finish"));
    }
    FloorUseCodec.write(a, o);
    AreaDetailsCodec.write(a.details(), o);
  }

  private static void piece(OutlinePiece p, ObjectNode o) {
    FieldWriter.spot(o, "at", p.from());
    o.put("then", EnumWords.of(p.kind()));
    if (!p.rise().equals(Length.ZERO)) {
      FieldWriter.length(o, "rise", p.rise());
    }
  }

  private static void doorway(Doorway d, ObjectNode o) {
    o.put("id", d.id());
    o.put("name", d.name());
    o.put("wall", d.piece());
    FieldWriter.length(o, "offset", d.offset());
    FieldWriter.length(o, "width", d.width());
    o.put("wayIn", d.wayIn());
    d.passage()
        .leadsTo()
        .ifPresent(l -> o.putObject("leadsTo").put("area", l.area()).put("doorway", l.doorway()));
    FieldWriter.length(o, "clear", d.passage().clear());
    if (d.passage().sealed()) {
      o.put("sealed", true);
    }
  }

  private static void machine(Machine m, ObjectNode o) {
    o.put("id", m.id());
    o.put("name", m.name());
    FieldWriter.length(o, "body", m.body());
    FieldWriter.length(o, "grinding", m.grinding());
    FieldWriter.length(o, "clearance", m.clearance());
    FieldWriter.length(o, "length", m.travel().length());
    FieldWriter.length(o, "passing", m.travel().passing());
  }

  private static void slab(Slab s, ObjectNode o) {
    FieldWriter.number(o, "mohs", s.mohs());
    FieldWriter.number(o, "ageYears", s.ageYears());
    FieldWriter.length(o, "thickness", s.thickness());
    FieldWriter.list(
        o,
        "moisture",
        s.moisture(),
        (r, n) ->
            n.put("test", EnumWords.of(r.test())).put("value", r.value()).put("place", r.place()));
    FieldWriter.number(o, "surfaceC", s.surfaceC());
    FieldWriter.number(o, "airC", s.airC());
    FieldWriter.number(o, "humidity", s.humidity());
    s.vapourBarrier().ifPresent(v -> o.put("vapourBarrier", v));
  }

  private static void finish(Finish f, ObjectNode o) {
    f.exposure().ifPresent(e -> o.put("exposure", EnumWords.of(e)));
    FieldWriter.list(
        o,
        "coats",
        f.coats(),
        (c, n) ->
            n.put("product", c.product())
                .put("coats", c.coats())
                .put("on", EnumWords.of(c.target())));
  }
}
