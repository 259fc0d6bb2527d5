package slabwright.shape;

import java.util.List;

/** A face of an {@link Arrangement}: its area in mm² and the ids of the layers that fill it. */
public record Face(double area, List<Integer> layers) {
  public Face {
    layers = List.copyOf(layers);
  }
}
