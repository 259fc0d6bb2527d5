package slabwright.desk.canvas;

import java.util.ArrayList;
import java.util.List;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.tape.CornerName;

/** The names of the corners, as cards and diagonals use them, on the floor side of each. */
final class CornerLetters {
  private static final TextStyle WORDS = TextStyle.bold(2.7).in(Palette.SOFT);
  private static final double IN = 3.2;

  private CornerLetters() {}

  /**
   * Inks in the site's frame.
   *
   * @param mm site millimetres to one millimetre of screen paper
   */
  static List<Ink> of(FloorPicture p, double mm) {
    List<Vec> middles = middles(p, mm);
    List<Ink> inks = new ArrayList<>();
    for (int i = 0; i < middles.size(); i++) {
      Vec foot = middles.get(i).minus(new Vec(0, WORDS.size() * TextMeasure.CAP_HEIGHT / 2 * mm));
      inks.add(Text.middle(foot, CornerName.of(i), WORDS));
    }
    return inks;
  }

  /** The boxes of the letters, site frame, whether they are written now or not. */
  static List<Bounds> boxes(FloorPicture p, double mm) {
    double half = WORDS.size() / 2 * mm;
    return middles(p, mm).stream()
        .map(m -> new Bounds(m.x() - half, m.y() - half, m.x() + half, m.y() + half))
        .toList();
  }

  private static List<Vec> middles(FloorPicture p, double mm) {
    List<Vec> corners = p.area().outline().stream().map(o -> o.from().vec()).toList();
    int n = corners.size();
    List<Vec> middles = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      Vec before = corners.get((i + n - 1) % n).minus(corners.get(i)).unit();
      Vec after = corners.get((i + 1) % n).minus(corners.get(i)).unit();
      middles.add(inside(p, corners.get(i), bisector(before, after).times(IN * mm)));
    }
    return middles;
  }

  private static Vec bisector(Vec before, Vec after) {
    Vec sum = before.plus(after);
    return sum.length() < 0.05 ? after.left() : sum.unit();
  }

  private static Vec inside(FloorPicture p, Vec corner, Vec by) {
    return p.floor().contains(corner.plus(by)) ? corner.plus(by) : corner.minus(by);
  }
}
