package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.RegistrationTick;
import slabwright.inlay.panel.Seam;
import slabwright.inlay.panel.WitnessMark;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.shape.curve.CurvedRing;
import slabwright.units.Message;

/** Takes one panel out of the blank. */
final class CutFileBuilder {
  /** Curves stay this near to the openings, mm; what is read back is within 0.05 mm. */
  private static final double CURVE_MM = 0.04;

  private final Stencil stencil;
  private final Panel panel;
  private final PanelPlan plan;
  private final List<Region> staying;
  private final Affine toPanel;

  /**
   * Sets up the cut file of one panel.
   *
   * @param staying the pieces of this panel that stay, in the blank's frame
   */
  CutFileBuilder(Stencil stencil, Panel panel, PanelPlan plan, List<Region> staying) {
    this.staying = staying;
    this.stencil = stencil;
    this.panel = panel;
    this.plan = plan;
    this.toPanel = Affine.move(-panel.box().minX(), -panel.box().minY());
  }

  CutFile make(String name, Message title) {
    Region open = panel.openings(stencil).map(toPanel);
    double width = panel.box().width();
    double height = panel.box().height();
    List<Line> marks = witness();
    plan.ticks(panel).forEach(t -> addTick(marks, t));
    List<Line> rings = new ArrayList<>();
    staying.stream()
        .map(piece -> piece.map(toPanel))
        .forEach(piece -> PenPlaces.ring(piece).ifPresent(rings::add));
    List<PenNumber> numbers = numbers(open, width, height, marks, rings);
    List<Line> drawn = new ArrayList<>(marks);
    numbers.forEach(n -> drawn.addAll(n.strokes()));
    PenPlaces pen = new PenPlaces(open, width, height, drawn);
    marks.addAll(rings);
    return new CutFile(
        name,
        title,
        width,
        height,
        open,
        outlines(open),
        trim(open, width, height),
        WeedCuts.of(open),
        marks,
        numbers,
        pen.label(label()));
  }

  /** Each tick's number beside it, clear of the other ticks, of crosses and rings. */
  private List<PenNumber> numbers(
      Region open, double width, double height, List<Line> marks, List<Line> rings) {
    List<Line> drawn = new ArrayList<>(marks);
    drawn.addAll(rings);
    Bounds film = new Bounds(0, 0, width, height);
    return plan.ticks(panel).stream()
        .flatMap(t -> PenNumber.of(t, toPanel.apply(t.at()), open, film, drawn).stream())
        .toList();
  }

  /** Inner outlines before those around them, so that nothing is cut that has lost its hold. */
  private static List<CurvedRing> outlines(Region open) {
    return open.rings().stream()
        .sorted(Comparator.comparingDouble(r -> Math.abs(r.signedArea())))
        .map(r -> CurvedRing.fitted(r, CURVE_MM))
        .toList();
  }

  private List<Message> label() {
    return List.of(
        Message.of("inlay.pen-label.panel", panel.name()),
        Message.of("inlay.pen-label.stencil", stencil.layer()),
        OrderText.named(stencil.colour()));
  }

  /**
   * The outline without the stretches that openings share with it, in as few lines as can be: one
   * that closes, where no opening reaches it.
   */
  private static List<Line> trim(Region open, double width, double height) {
    Vec a = Vec.ZERO;
    Vec b = new Vec(width, 0);
    Vec c = new Vec(width, height);
    Vec d = new Vec(0, height);
    List<Line> left = new ArrayList<>();
    for (Line side : List.of(Line.of(a, b), Line.of(b, c), Line.of(c, d), Line.of(d, a))) {
      left.addAll(without(side, open.clip(side)));
    }
    return chained(left);
  }

  private static List<Line> chained(List<Line> sides) {
    List<List<Vec>> chains = new ArrayList<>();
    for (Line side : sides) {
      int last = chains.size() - 1;
      if (last >= 0 && follows(chains.get(last), side.points())) {
        chains.get(last).add(side.points().get(1));
      } else {
        chains.add(new ArrayList<>(side.points()));
      }
    }
    int last = chains.size() - 1;
    if (last >= 0 && follows(chains.get(last), chains.get(0))) {
      List<Vec> first = last == 0 ? chains.get(0) : chains.remove(0);
      List<Vec> end = chains.get(chains.size() - 1);
      end.set(end.size() - 1, first.get(0));
      if (last > 0) {
        end.addAll(first.subList(1, first.size()));
      }
    }
    return chains.stream().map(Line::new).toList();
  }

  /** Whether one begins where the other ends, up to what sums of lengths are rounded by. */
  private static boolean follows(List<Vec> before, List<Vec> next) {
    return before.get(before.size() - 1).distanceTo(next.get(0)) < 1e-6;
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
    for (Seam seam : plan.laps()) {
      for (WitnessMark mark : seam.marks()) {
        if (panel.box().contains(mark.at())) {
          addArms(lines, mark.at(), mark.arm());
        }
      }
    }
    return lines;
  }

  /** A cross in a ring, so that nobody takes it for a witness cross. */
  private void addTick(List<Line> lines, RegistrationTick tick) {
    addArms(lines, tick.at(), RegistrationTick.ARM);
    lines.add(PenPlaces.circle(toPanel.apply(tick.at()), RegistrationTick.ARM / 2));
  }

  /** A cross, as far as this panel reaches. */
  private void addArms(List<Line> lines, Vec at, double arm) {
    Bounds box = panel.box();
    for (Vec half : List.of(new Vec(arm, 0), new Vec(0, arm))) {
      Vec from = clamp(at.minus(half), box);
      Vec to = clamp(at.plus(half), box);
      lines.add(Line.of(from, to).map(toPanel));
    }
  }

  private static Vec clamp(Vec p, Bounds b) {
    return new Vec(
        Math.max(b.minX(), Math.min(b.maxX(), p.x())),
        Math.max(b.minY(), Math.min(b.maxY(), p.y())));
  }
}
