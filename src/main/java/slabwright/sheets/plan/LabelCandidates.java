package slabwright.sheets.plan;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Vec;

/** Good places for words beside a straight run, on paper. */
public final class LabelCandidates {
  private LabelCandidates() {}

  /** Middles at the distance to the side of the line, from its middle outwards to its ends. */
  static List<Vec> beside(Vec from, Vec to, double side, double across, double along) {
    Vec run = to.minus(from).unit();
    Vec left = new Vec(run.y(), -run.x());
    double out = Math.abs(left.x()) * along / 2 + Math.abs(left.y()) * across / 2;
    List<Vec> wishes = new ArrayList<>();
    for (double d : new double[] {2, 4, 7, 10}) {
      for (double t : new double[] {0.5, 0.35, 0.65, 0.2, 0.8}) {
        wishes.add(from.towards(to, t).plus(left.times(side * (out + d))));
      }
    }
    return wishes;
  }

  /** The ends of a line that may bend, as one straight run. */
  public static Line chord(Line line) {
    List<Vec> p = line.points();
    return Line.of(p.get(0), p.get(p.size() - 1));
  }
}
