package slabwright.sheets.packet.client;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.View;
import slabwright.figures.DyeStyle;
import slabwright.figures.StencilInks;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;

/**
 * A graphic in its true colours as it reads, beside it the colours by name and something to see its
 * size by.
 *
 * @param size of the longer side on paper, mm
 */
record GraphicBlock(PlacedInlay placed, double size, SheetContext context) implements Block {
  private static final double GAP = 4;
  private static final double SWATCH = 8;

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    Bounds painted = placed.plan().openings().bounds();
    double to = size / Math.max(painted.width(), painted.height());
    double high = painted.height() * to;
    double left = painted.width() * to;
    List<Ink> inks = new ArrayList<>();
    View view = View.yDown(1 / to, new Vec(painted.minX(), painted.minY()), Vec.ZERO);
    StencilInks.flat(placed.plan()).forEach(i -> inks.add(i.placed(view)));
    double room = width - left - GAP;
    double y = colours(inks, type, left + GAP, room);
    figure(inks, type, new Bounds(left + GAP, y, width, Math.max(high, y)), to);
    return List.of(new Slice(Math.max(high, y) + 2, false, inks));
  }

  /** The colours under each other, with their names. */
  private double colours(List<Ink> inks, TypeSizes type, double x, double room) {
    double y = 0;
    for (Stencil s : placed.plan().stencils().stencils()) {
      List<String> lines =
          named(context.say(placed.colourName(s.colour())), type, room - SWATCH - 2);
      double high = Math.max(SWATCH, lines.size() * type.leading());
      double top = y + (high - SWATCH) / 2;
      Ring box = Ring.rectangle(x, top, x + SWATCH, top + SWATCH);
      inks.addAll(DyeStyle.flat(s.colour()).on(List.of(box)));
      double at = y + high / 2 + 1.4 - (lines.size() - 1) * type.leading() / 2;
      for (String line : lines) {
        inks.add(Text.start(new Vec(x + SWATCH + 2, at), line, type.body()));
        at += type.leading();
      }
      y += high + 1.5;
    }
    return y;
  }

  /** A name in lines; one that is too long for its line parts at its hyphen only. */
  private static List<String> named(String name, TypeSizes type, double width) {
    List<String> lines = TextMeasure.wrap(name, type.body(), width);
    return String.join(" ", lines).equals(name)
        ? lines
        : TextMeasure.wrap(name.replace("-", "- "), type.body(), width);
  }

  /** The largest thing known by everybody that has room. */
  private void figure(List<Ink> inks, TypeSizes type, Bounds room, double to) {
    for (ScaleFigure f : ScaleFigure.values()) {
      double high = f.height(context.units()) * to;
      double words = 2 * type.leading();
      if (high + words <= room.height() && f.widthAt(high) <= room.width() && high > 6) {
        Vec foot = new Vec(room.minX() + room.width() / 2, room.maxY() - words);
        inks.addAll(f.standing(foot, high));
        String size = context.length(f.height(context.units()));
        List<String> said =
            TextMeasure.wrap(
                f == ScaleFigure.PERSON
                    ? context.say("sheets.graphic-block.person", size)
                    : context.say("sheets.graphic-block.shoe", size),
                type.small(),
                room.width());
        double y = foot.y() + 4.4;
        for (String line : said) {
          inks.add(Text.middle(new Vec(foot.x(), y), line, type.small().in(Palette.SOFT)));
          y += 4.4;
        }
        return;
      }
    }
  }
}
