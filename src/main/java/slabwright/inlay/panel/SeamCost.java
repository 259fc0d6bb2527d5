package slabwright.inlay.panel;

/**
 * A seam layout's cost and what it is made of.
 *
 * @param edge opening edge near seams, mm
 * @param looseCut loose pieces that a panel edge cuts
 * @param slivers bits narrower than the sliver width at panel edges
 * @param roll roll used, mm
 * @param total the weighted sum
 */
public record SeamCost(double edge, int looseCut, int slivers, double roll, double total) {
  static final SeamCost NONE = new SeamCost(0, 0, 0, 0, 0);

  static SeamCost of(double edge, int loose, int slivers, double roll, SeamWeights w) {
    double total = w.edge() * edge + w.loosePiece() * loose + w.sliver() * slivers;
    return new SeamCost(edge, loose, slivers, roll, total + w.roll() * roll);
  }

  SeamCost plus(SeamCost o) {
    return new SeamCost(
        edge + o.edge, looseCut + o.looseCut, slivers + o.slivers, roll + o.roll, total + o.total);
  }
}
