package slabwright.desk.start;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.Canvas;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.canvas.Tone;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Dimension;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.FillStyle;
import slabwright.drawing.HatchPattern;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextStyle;
import slabwright.drawing.View;
import slabwright.figures.MarkStyles;
import slabwright.shape.Affine;
import slabwright.shape.Arcs;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.words.Words;

/** A small slab in our inks, so that the first screen shows what will be made. */
final class StartPicture extends Canvas {
  private static final double WIDE = 520;
  private static final double HIGH = 470;
  private static final double SCALE = 0.0118;

  StartPicture(Words words) {
    super(WIDE, HIGH);
    setAccessibleText(words.say("desk.start.start-picture.a-floor-plan-with-a"));
    paint(Tone.LIGHT);
  }

  void paint(Tone tone) {
    var g = getGraphicsContext2D();
    g.clearRect(0, 0, WIDE, HIGH);
    View view = new View(new Affine(SCALE, 0, 0, -SCALE, 12, 112));
    Drawing placed = view.place(Drawing.of(CoordinateFrame.SITE, inks()));
    placed.paintOn(new FxPainter(g, FxPainter.SCREEN, tone), placed.bounds().grown(20));
  }

  private static List<Ink> inks() {
    Ring room = Ring.of(0, 0, 9800, 0, 9800, 4600, 8200, 4600, 8200, 8000, 0, 8000);
    Region floor = Region.of(room);
    List<Ink> inks = new ArrayList<>();
    inks.add(Fill.of(Palette.WHITE, room));
    Region trench =
        Region.strip(Line.of(new Vec(2600, 8000), new Vec(2600, 5100), new Vec(6000, 5100)), 330);
    Region island = Region.of(Arcs.rounded(new Vec(5800, 6700), 2600, 900, 450, 0, 5));
    Region strip = floor.minus(floor.offset(-260, 5)).union(island.offset(240, 5).minus(island));
    inks.addAll(FillStyle.of(HatchPattern.RISING, Palette.AMBER).outlined(0.15).on(strip));
    inks.addAll(FillStyle.of(HatchPattern.DOTS, Palette.GREEN).on(trench));
    inks.addAll(FillStyle.plain(Palette.GREY, Palette.INK).on(island));
    inks.addAll(
        FillStyle.of(HatchPattern.CROSSES, Palette.PLUM)
            .on(Region.of(Ring.rectangle(700, 900, 2500, 2500))));
    inks.addAll(emblem(new Vec(6200, 2100)));
    inks.add(Stroke.rings(Pen.of(1, Palette.INK), List.of(room)));
    inks.add(Stroke.line(Pen.of(1.6, Palette.WHITE), new Vec(5300, 0), new Vec(7100, 0)));
    inks.add(
        Stroke.line(
            Pen.of(0.7, MarkStyles.WAY_IN.colour()).dashed(2, 1.2),
            new Vec(5300, 0),
            new Vec(7100, 0)));
    inks.add(Symbol.of(Symbol.Kind.WAY_IN, new Vec(6200, -700), 6, MarkStyles.WAY_IN.colour()));
    TextStyle bold = TextStyle.bold(3.1);
    inks.add(new Dimension(new Vec(0, 8000), new Vec(8200, 8000), 6, "27\u2032 0\u2033", bold));
    inks.add(new Dimension(new Vec(9800, 4600), new Vec(9800, 0), 6, "15\u2032 1\u2033", bold));
    return inks;
  }

  private static List<Ink> emblem(Vec at) {
    Region ring = Region.of(Arcs.circle(at, 1150, 4)).minus(Region.of(Arcs.circle(at, 900, 4)));
    Region sun = Region.of(Arcs.circle(at.plus(new Vec(180, 220)), 330, 4));
    Region reed =
        Region.strip(Line.of(at.plus(new Vec(-380, -640)), at.plus(new Vec(-180, 520))), 60);
    return List.of(
        Fill.of(Palette.TEAL, ring), Fill.of(Palette.AMBER, sun), Fill.of(Palette.TEAL, reed));
  }
}
