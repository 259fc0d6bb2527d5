package slabwright.drawing;

import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * Where and at what scale a drawing lies on paper: from its own millimetres to millimetres of paper
 * (x right, y down). Never stretches; never mirrors what is seen.
 */
public record View(Affine map) {
  /** A y-up model at 1:{@code denominator}; the model point falls on the paper point. */
  public static View yUp(double denominator, Vec model, Vec paper) {
    return between(1 / denominator, -1 / denominator, model, paper);
  }

  /** A y-down drawing (a graphic, another paper) at 1:{@code denominator}. */
  public static View yDown(double denominator, Vec model, Vec paper) {
    return between(1 / denominator, 1 / denominator, model, paper);
  }

  /** A y-up model at 1:{@code denominator}, its middle on the middle of the paper box. */
  public static View centred(double denominator, Bounds model, Bounds box) {
    return yUp(denominator, model.middle(), box.middle());
  }

  private static View between(double sx, double sy, Vec model, Vec paper) {
    return new View(
        new Affine(sx, 0, 0, sy, paper.x() - sx * model.x(), paper.y() - sy * model.y()));
  }

  public Vec onPaper(Vec model) {
    return map.apply(model);
  }

  public Vec onModel(Vec paper) {
    return map.inverse().apply(paper);
  }

  /** Millimetres of paper to one millimetre of the model. */
  public double scale() {
    return Math.sqrt(Math.abs(map.determinant()));
  }

  /** How far the drawing is turned on the paper, degrees counter-clockwise as seen. */
  double turnDegrees() {
    double degrees = -Math.toDegrees(Math.atan2(map.b(), map.a()));
    return degrees == 0 ? 0 : degrees;
  }

  /** Every ink of the drawing in paper millimetres. */
  public Drawing place(Drawing drawing) {
    Bounds b = drawing.bounds();
    Bounds placed =
        b.isEmpty()
            ? b
            : Bounds.EMPTY
                .including(onPaper(new Vec(b.minX(), b.minY())))
                .including(onPaper(new Vec(b.maxX(), b.minY())))
                .including(onPaper(new Vec(b.maxX(), b.maxY())))
                .including(onPaper(new Vec(b.minX(), b.maxY())));
    return new Drawing(
        CoordinateFrame.PAPER, placed, drawing.inks().stream().map(i -> i.placed(this)).toList());
  }
}
