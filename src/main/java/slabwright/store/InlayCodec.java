package slabwright.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.shape.Vec;
import slabwright.shape.fit.Homography;
import slabwright.site.ColourChoice;
import slabwright.site.GraphicSource;
import slabwright.site.Inlay;
import slabwright.site.Overspray;
import slabwright.site.StencilChanges;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.Message;

/** Inlays and their settings for cutting and masking in the plan file. */
final class InlayCodec {
  private static final List<Vec> UNIT_SQUARE =
      List.of(Vec.ZERO, new Vec(1, 0), new Vec(1, 1), new Vec(0, 1));

  private InlayCodec() {}

  static Optional<Inlay> read(FieldReader f) {
    return Optional.of(
        new Inlay(
            f.text("id"),
            f.textOr("name", ""),
            f.text("graphic"),
            f.textOr("accepted", ""),
            f.spot("middle"),
            f.length("width"),
            f.numberOr("turn", 0),
            f.child("stencil").map(InlayCodec::spec).orElse(StencilSpec.forRoll(Length.mm(1))),
            new GraphicSource(page(f), f.object("picture", InlayCodec::traced))));
  }

  private static OptionalInt page(FieldReader f) {
    return f.has("page") ? OptionalInt.of(f.whole("page", 1)) : OptionalInt.empty();
  }

  private static GraphicSource.Traced traced(FieldReader f) {
    return new GraphicSource.Traced(
        f.text("file"),
        f.whole("colours", 2),
        f.lengthOr("speck", Length.ZERO),
        f.numberOr("roundness", 0),
        f.textOr("background", ""),
        square(f));
  }

  /** Corners that nothing can be squared by would be refused wherever the graphic is read. */
  private static List<Vec> square(FieldReader f) {
    List<Vec> corners = f.pixels("square");
    if (!corners.isEmpty() && Homography.of(UNIT_SQUARE, corners).isEmpty()) {
      f.fault(Message.of("store.inlay-codec.no-square", f.place().said()));
      return List.of();
    }
    return corners;
  }

  private static StencilSpec spec(FieldReader f) {
    StencilSpec base = StencilSpec.forRoll(f.length("roll"));
    StencilSpec spec =
        new StencilSpec(
            base.roll(),
            f.lengthIf("usable"),
            f.lengthOr("overlap", base.overlap()),
            f.lengthOr("margin", base.margin()),
            f.lengthOr("press", base.press()),
            f.object("overspray", InlayCodec::overspray).orElse(base.overspray()),
            f.list("colours", InlayCodec::colour),
            f.numberOr("mergeDeltaE", 0),
            f.lengthOr("spread", base.spread()),
            f.lengthIf("longestPiece"),
            f.lengthOr("vinylHolds", base.vinylHolds()),
            f.flagOr("ties", false),
            f.object("changes", StencilChangesCodec::read).orElse(StencilChanges.NONE));
    f.reportUnknown();
    return spec;
  }

  private static Overspray overspray(FieldReader f) {
    if (f.has("reach")) {
      return new Overspray.Stated(f.length("reach"));
    }
    return new Overspray.Fan(
        f.length("height"),
        f.number("fanDegrees"),
        f.lengthOr("overrun", Length.ZERO),
        f.lengthOr("drift", Length.ZERO));
  }

  private static Optional<ColourChoice> colour(FieldReader f) {
    String colour = f.text("colour");
    if (!colour.matches("#[0-9a-f]{6}")) {
      f.fault(Message.of("store.inlay-codec.has-the-colour-write-it", f.place().said(), colour));
    }
    ColourChoice.Use use = f.word("use", ColourChoice.Use.class, ColourChoice.Use.DYE);
    return Optional.of(
        new ColourChoice(colour, use, f.textOr("product", ""), f.textOr("name", "")));
  }

  static void write(Inlay i, ObjectNode o) {
    o.put("id", i.id());
    o.put("name", i.name());
    o.put("graphic", i.graphic());
    if (!i.accepted().isEmpty()) {
      o.put("accepted", i.accepted());
    }
    FieldWriter.spot(o, "middle", i.middle());
    FieldWriter.length(o, "width", i.width());
    o.put("turn", i.turn());
    spec(i.spec(), o.putObject("stencil"));
    i.source().page().ifPresent(p -> o.put("page", p));
    i.source().picture().ifPresent(p -> traced(p, o.putObject("picture")));
  }

  private static void traced(GraphicSource.Traced t, ObjectNode o) {
    o.put("file", t.file()).put("colours", t.colours());
    FieldWriter.length(o, "speck", t.speck());
    o.put("roundness", t.roundness());
    FieldWriter.text(o, "background", t.background());
    FieldWriter.pixels(o, "square", t.square());
  }

  private static void spec(StencilSpec s, ObjectNode o) {
    FieldWriter.length(o, "roll", s.roll());
    FieldWriter.length(o, "usable", s.usable());
    FieldWriter.length(o, "overlap", s.overlap());
    FieldWriter.length(o, "margin", s.margin());
    FieldWriter.length(o, "press", s.press());
    overspray(s.overspray(), o.putObject("overspray"));
    FieldWriter.list(o, "colours", s.colours(), InlayCodec::colour);
    o.put("mergeDeltaE", s.mergeDeltaE());
    FieldWriter.length(o, "spread", s.spread());
    FieldWriter.length(o, "longestPiece", s.longestPiece());
    FieldWriter.length(o, "vinylHolds", s.vinylHolds());
    o.put("ties", s.ties());
    if (!s.changes().equals(StencilChanges.NONE)) {
      StencilChangesCodec.write(s.changes(), o.putObject("changes"));
    }
  }

  private static void overspray(Overspray v, ObjectNode o) {
    if (v instanceof Overspray.Stated s) {
      FieldWriter.length(o, "reach", s.reach());
    } else if (v instanceof Overspray.Fan f) {
      FieldWriter.length(o, "height", f.height());
      o.put("fanDegrees", f.fanDegrees());
      FieldWriter.length(o, "overrun", f.overrun());
      FieldWriter.length(o, "drift", f.drift());
    }
  }

  private static void colour(ColourChoice c, ObjectNode o) {
    o.put("colour", c.colour());
    o.put("use", EnumWords.of(c.use()));
    if (!c.product().isEmpty()) {
      o.put("product", c.product());
    }
    FieldWriter.text(o, "name", c.name());
  }
}
