package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.Seam;
import slabwright.inlay.panel.WitnessMark;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.units.Message;

/** Takes one panel out of the blank. */
final class CutFileBuilder {
  private final Stencil stencil;
  private final Panel panel;
  private final List<Seam> laps;
  private final Affine toPanel;

  CutFileBuilder(Stencil stencil, Panel panel, List<Seam> laps) {
    this.stencil = stencil;
    this.panel = panel;
    this.laps = laps;
    this.toPanel = Affine.move(-panel.box().minX(), -panel.box().minY());
  }

  CutFile make(String name, Message title) {
    Region open = panel.openings(stencil).map(toPanel);
    double width = panel.box().width();
    double height = panel.box().height();
    return new CutFile(name, title, width, height, open, trim(open, width, height), witness());
  }

  /** The outline's sides without the stretches that openings share with them. */
  private static List<Line> trim(Region open, double width, double height) {
    Vec a = Vec.ZERO;
    Vec b = new Vec(width, 0);
    Vec c = new Vec(width, height);
    Vec d = new Vec(0, height);
    List<Line> left = new ArrayList<>();
    for (Line side : List.of(Line.of(a, b), Line.of(b, c), Line.of(c, d), Line.of(d, a))) {
      left.addAll(without(side, open.clip(side)));
    }
    return left;
  }

  private static List<Line> without(Line side, List<Line> taken) {
    Vec start = side.points().get(0);
    Vec end = side.points().get(1);
    List<double[]> cuts = new ArrayList<>();
    for (Line line : taken) {
      double p = start.distanceTo(line.points().get(0));
      double q = start.distanceTo(line.points().get(line.points().size() - 1));
      cuts.add(new double[] {Math.min(p, q), Math.max(p, q)});
    }
    cuts.add(new double[] {side.length(), side.length()});
    cuts.sort(Comparator.comparingDouble(x -> x[0]));
    List<Line> rest = new ArrayList<>();
    Vec way = end.minus(start).unit();
    double at = 0;
    for (double[] cut : cuts) {
      if (cut[0] > at) {
        rest.add(Line.of(start.plus(way.times(at)), start.plus(way.times(cut[0]))));
      }
      at = Math.max(at, cut[1]);
    }
    return rest;
  }

  private List<Line> witness() {
    List<Line> lines = new ArrayList<>();
    for (Seam seam : laps) {
      for (WitnessMark mark : seam.marks()) {
        if (panel.box().contains(mark.at())) {
          addArm(lines, mark, mark.arm(), 0);
          addArm(lines, mark, 0, mark.arm());
        }
      }
    }
    return lines;
  }

  /** One bar of the cross, as far as this panel reaches. */
  private void addArm(List<Line> lines, WitnessMark mark, double dx, double dy) {
    Bounds box = panel.box();
    Vec from = clamp(mark.at().minus(new Vec(dx, dy)), box);
    Vec to = clamp(mark.at().plus(new Vec(dx, dy)), box);
    lines.add(Line.of(from, to).map(toPanel));
  }

  private static Vec clamp(Vec p, Bounds b) {
    return new Vec(
        Math.max(b.minX(), Math.min(b.maxX(), p.x())),
        Math.max(b.minY(), Math.min(b.maxY(), p.y())));
  }
}
