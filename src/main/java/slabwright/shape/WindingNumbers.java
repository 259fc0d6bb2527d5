package slabwright.shape;

import java.util.BitSet;
import java.util.List;
import slabwright.shape.ints.IntGroups;

/** The winding number of every layer at one face, kept up to date from face to face. */
final class WindingNumbers {
  private final ArrangementEdges edges;
  private final FillRule[] rules;
  private final int[] windings;
  private final BitSet active = new BitSet();

  WindingNumbers(ArrangementEdges edges, List<Layer> layers) {
    this.edges = edges;
    rules = layers.stream().map(Layer::rule).toArray(FillRule[]::new);
    windings = new int[rules.length];
  }

  /** Steps over half-edge h from the face on its left to that on its right. */
  void cross(int h) {
    int sign = (h & 1) == 0 ? -1 : 1;
    IntGroups lying = edges.lying();
    for (int i = lying.start(h >> 1); i < lying.end(h >> 1); i++) {
      int piece = lying.member(i);
      int layer = edges.pieces().layer(piece);
      windings[layer] += sign * edges.direction(piece);
      active.set(layer, rules[layer].inside(windings[layer]));
    }
  }

  int winding(int layer) {
    return windings[layer];
  }

  /** The positions of the layers that fill the present face. */
  BitSet active() {
    return active;
  }
}
