package slabwright.desk;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import slabwright.pdfin.picture.Picture;
import slabwright.pdfin.picture.RectifiedPhoto;
import slabwright.shape.Affine;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.Length;
import slabwright.units.Result;

/**
 * A rectangle on the floor as it was picked on a slanted picture, brought to counter-clockwise
 * order, so that the flat picture is never a mirror image.
 *
 * @param corners where they are seen, site mm
 * @param width true length of the first side, mm
 * @param height true length of the second, mm
 */
record UnderlayRectification(List<Vec> corners, double width, double height) {
  static UnderlayRectification of(List<Vec> picked, Length first, Length second) {
    if (new Ring(picked).signedArea() >= 0) {
      return new UnderlayRectification(List.copyOf(picked), first.mm(), second.mm());
    }
    List<Vec> other = new ArrayList<>(picked.subList(1, 4));
    Collections.reverse(other);
    other.add(0, picked.get(0));
    return new UnderlayRectification(List.copyOf(other), second.mm(), first.mm());
  }

  /** The photo laid flat; {@code placing} is how it lies now. */
  Result<RectifiedPhoto> floor(Picture photo, Affine placing) {
    Affine toPixels = placing.inverse();
    return RectifiedPhoto.of(photo, corners.stream().map(toPixels::apply).toList(), width, height);
  }

  /**
   * The flat picture's placing on the site: the first corner stays where it is, and the first side
   * lies along the axis nearest to how it was seen.
   */
  Affine placing(Affine flat) {
    Vec first = corners.get(0);
    double seen = corners.get(1).minus(first).angle();
    double quarter = Math.rint(seen / (Math.PI / 2)) * (Math.PI / 2);
    return flat.then(Affine.turn(quarter)).then(Affine.move(first.x(), first.y()));
  }
}
