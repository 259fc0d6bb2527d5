package slabwright.shape;

import java.util.List;

/** A face of an {@link Arrangement}: its area in mm² and the ids of the layers that fill it. */
public record ArrangementFace(double area, List<Integer> layers) {
  public ArrangementFace {
    layers = List.copyOf(layers);
  }
}
