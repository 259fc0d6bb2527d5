package slabwright.desk.model;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Colour;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Mark;
import slabwright.site.MarkType;

/** The inks of one mark: an area by its look, a line by its pen, a place by its sign. */
final class MarkInks {
  private static final double SIGN = 4.2;

  private MarkInks() {}

  static List<Ink> of(Mark mark, Thing thing) {
    List<Ink> inks = new ArrayList<>();
    MarkType type = mark.kind().type();
    if (!thing.region().isEmpty()) {
      inks.addAll(MarkLooks.of(type).on(thing.region()));
    } else if (thing.path().size() > 1) {
      inks.add(Stroke.lines(pen(type), List.of(new Line(thing.path()))));
    } else if (!thing.path().isEmpty()) {
      inks.add(Symbol.of(sign(type), thing.path().get(0), SIGN, colour(type)));
    }
    return inks;
  }

  /** Names are laid over all marks, so that nothing covers them. */
  static List<Ink> name(Mark mark, Thing thing) {
    if (mark.name().isBlank() || thing.region().isEmpty()) {
      return List.of();
    }
    boolean dark = mark.kind().type() == MarkType.COLUMN;
    TextStyle style = TextStyle.bold(2.5).in(dark ? Palette.WHITE : Palette.INK);
    return List.of(Text.middle(thing.region().labelPoint(), mark.name(), style));
  }

  private static Pen pen(MarkType type) {
    return switch (type) {
      case JOINT -> Pen.of(0.35, Palette.SOFT).dashed(2.4, 1.2);
      case CRACK -> Pen.of(0.4, Palette.RED).dashed(0.9, 0.7).rounded();
      case LEVEL_CHANGE -> Pen.of(0.6, Palette.PURPLE).dashed(4, 1);
      case MASKED_TRIM -> Pen.of(0.9, Palette.BLUE).dashed(1.6, 0.8);
      default -> Pen.of(0.4, Palette.INK);
    };
  }

  private static Symbol.Kind sign(MarkType type) {
    return switch (type) {
      case DRAIN_OR_BOX -> Symbol.Kind.DRAIN;
      case POWER_POINT -> Symbol.Kind.POWER;
      case DETECTOR -> Symbol.Kind.DETECTOR;
      case IGNITION_SOURCE -> Symbol.Kind.IGNITION;
      case AIR_OUTLET -> Symbol.Kind.AIR_OUTLET;
      case LEVEL_CHANGE -> Symbol.Kind.LEVEL_CHANGE;
      case SPALL -> Symbol.Kind.SPALL;
      default -> Symbol.Kind.POINT;
    };
  }

  private static Colour colour(MarkType type) {
    return switch (type) {
      case IGNITION_SOURCE -> Palette.RED;
      case POWER_POINT -> Palette.AMBER;
      case DETECTOR, SPALL -> Palette.PLUM;
      case DRAIN_OR_BOX, AIR_OUTLET -> Palette.TEAL;
      default -> Palette.INK;
    };
  }

  static Thing thing(Mark mark, slabwright.shape.Region region) {
    List<Vec> path = mark.form().spots().stream().map(s -> s.vec()).toList();
    return new Thing(new Pick.OfMark(mark.id()), region, region.isEmpty() ? path : List.of());
  }
}
