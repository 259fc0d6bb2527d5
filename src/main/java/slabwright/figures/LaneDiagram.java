package slabwright.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Symbol;
import slabwright.drawing.Text;
import slabwright.drawing.TextStyle;
import slabwright.drawing.View;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.words.Words;
import slabwright.work.coat.BatchLanes;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.Lane;
import slabwright.work.coat.LanePlan;

/** The lanes of one coat, small: which batch goes where, from the first lane to the way out. */
public final class LaneDiagram {
  private static final double HEIGHT = 46;
  private static final double FOOT = 5;

  private LaneDiagram() {}

  /**
   * A drawing on paper; empty for a coat that is not rolled in lanes.
   *
   * @param wayOut where the crew leaves
   * @param width of the drawing, mm of paper
   */
  public static Optional<Drawing> of(
      CoatPlan coat, Optional<Vec> wayOut, Words words, double width) {
    return coat.lanes()
        .maybe()
        .flatMap(l -> l)
        .filter(l -> !l.lanes().isEmpty())
        .map(l -> drawing(l, coat, wayOut, words, width));
  }

  private static Drawing drawing(
      LanePlan lanes, CoatPlan coat, Optional<Vec> wayOut, Words words, double width) {
    List<BatchLanes> batches = coat.batchLanes();
    Bounds b = Bounds.EMPTY;
    for (Lane l : lanes.lanes()) {
      b = b.including(l.region().bounds());
    }
    double scale = Math.max(b.width() / (width - 8), b.height() / HEIGHT);
    double height = b.height() / scale + 8;
    View view = View.yUp(scale, b.middle(), new Vec(width / 2, height / 2));
    List<Ink> inks = new ArrayList<>();
    inks.add(Fill.of(Palette.WHITE, new Bounds(0, 0, width, height + FOOT)));
    for (Lane l : lanes.lanes()) {
      BatchStyle.of(l, lanes.lanes().size(), batches)
          .on(l.region())
          .forEach(i -> inks.add(i.placed(view)));
    }
    coat.divided()
        .ifPresent(
            d ->
                d.lines()
                    .forEach(
                        l ->
                            inks.add(
                                Stroke.lines(Pen.of(0.6, Palette.INK), List.of(l.line()))
                                    .placed(view))));
    number(lanes.lanes().get(0), view, inks);
    number(lanes.lanes().get(lanes.lanes().size() - 1), view, inks);
    wayOut.ifPresent(
        o ->
            inks.add(
                Symbol.of(Symbol.Kind.WAY_IN, view.onPaper(o), 4, MarkStyles.WAY_IN.colour())));
    key(batches, words, height, inks);
    return Drawing.paper(width, height + FOOT, inks);
  }

  private static void number(Lane lane, View view, List<Ink> inks) {
    Vec at = view.onPaper(lane.walk().points().get(0));
    inks.add(Stroke.lines(Pen.of(0.2, Palette.INK), List.of(lane.walk())).placed(view));
    inks.add(Symbol.number(at, Integer.toString(lane.number()), 4.2));
  }

  private static void key(List<BatchLanes> batches, Words words, double y, List<Ink> inks) {
    double x = 4;
    for (BatchLanes b : batches) {
      Bounds box = new Bounds(x, y, x + 5, y + 3.4);
      inks.addAll(
          BatchStyle.of(b.batch())
              .on(List.of(Ring.rectangle(box.minX(), box.minY(), box.maxX(), box.maxY()))));
      inks.add(
          Text.start(
              new Vec(x + 6, y + 2.6),
              words.say("figures.lane-diagram.batch", b.batch()),
              TextStyle.plain(2.4)));
      x += 19;
    }
  }
}
