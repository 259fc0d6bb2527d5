package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Ties for a stiff, reusable stencil: each loose piece gets two, of least total length, that stand
 * at least 90° apart as seen from the piece's centroid, or as far apart as can be; and every piece
 * ends up joined to the surround, with more ties where two pieces had only held each other.
 *
 * <p>A tie runs from one of 96 evenly spaced points of the piece's outline to the nearest other
 * mask that the piece does not enclose, so that it is held from outside. Known limit: a tie between
 * two pieces is counted for the one that asked for it, so two neighbours may be tied twice.
 *
 * @param set the stencils with their ties in place
 * @param ties all of them
 */
public record TiePlan(StencilSet set, List<Tie> ties) {
  public TiePlan {
    ties = List.copyOf(ties);
  }

  /** Ties every loose piece of every stencil with strips of this width. */
  public static TiePlan in(StencilSet set, double width) {
    List<Tie> all = new ArrayList<>();
    List<Stencil> tied = new ArrayList<>();
    for (Stencil stencil : set.stencils()) {
      List<Tie> own = new TieSearch(stencil, set.blank(), width).ties();
      all.addAll(own);
      tied.add(own.isEmpty() ? stencil : stencil.cutting(left(stencil, own), set.blank()));
    }
    return new TiePlan(set.with(tied, findings(tied, all)), all);
  }

  /** Area in mm² to be touched up by hand. */
  public double touchUpArea() {
    return set.stencils().stream().mapToDouble(Stencil::touchUpArea).sum();
  }

  private static Region left(Stencil stencil, List<Tie> ties) {
    List<Region> strips = new ArrayList<>();
    for (Tie tie : ties) {
      strips.addAll(inTheOpen(stencil.openings(), tie));
    }
    return stencil.openings().minus(Region.union(strips));
  }

  /** The strip, run on into the mask at both ends, where it crosses the opening it spans. */
  private static List<Region> inTheOpen(Region openings, Tie tie) {
    Vec way = tie.to().minus(tie.from()).unit().times(tie.width() / 2);
    Line longer = Line.of(tie.from().minus(way), tie.to().plus(way));
    Vec middle = tie.from().towards(tie.to(), 0.5);
    return openings.intersect(Region.strip(longer, tie.width() / 2)).parts().stream()
        .filter(p -> p.distanceTo(middle) < tie.length() / 2)
        .toList();
  }

  private static List<Finding> findings(List<Stencil> tied, List<Tie> ties) {
    List<Finding> found = new ArrayList<>();
    for (Stencil s : tied) {
      for (LoosePiece piece : s.loosePieces()) {
        found.add(Finding.look(Message.of("inlay.tie-plan.piece-not-tied"), piece.place()));
      }
    }
    if (!ties.isEmpty()) {
      double area = tied.stream().mapToDouble(Stencil::touchUpArea).sum();
      found.add(
          Finding.look(
              Message.of(
                  "inlay.tie-plan.to-be-touched-up", ties.size(), area / 100, area / 645.16)));
    }
    return found;
  }

  static boolean reachesRim(Bounds part, Bounds blank) {
    return part.minX() <= blank.minX()
        || part.minY() <= blank.minY()
        || part.maxX() >= blank.maxX()
        || part.maxY() >= blank.maxY();
  }
}
