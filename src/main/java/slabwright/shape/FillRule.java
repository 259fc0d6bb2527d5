package slabwright.shape;

/** Which points count as inside a set of rings (SVG 2, property fill-rule). */
public enum FillRule {
  NONZERO,
  EVEN_ODD;

  public boolean inside(int winding) {
    return this == NONZERO ? winding != 0 : (winding & 1) != 0;
  }
}
