package slabwright.desk;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Symbol;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.job.PinnedPhoto;

/** A small camera wherever a photo is pinned. */
final class PhotoSigns {
  private static final double SIZE = 3.6;

  private PhotoSigns() {}

  static List<Ink> of(DeskContext bench, Optional<FloorPicture> picture) {
    return picture.stream()
        .flatMap(
            p ->
                bench.desk().shown().job().photos().stream()
                    .filter(f -> f.area().equals(p.area().id()))
                    .map(PinnedPhoto::pin)
                    .distinct()
                    .flatMap(pin -> place(p, pin)))
        .<Ink>map(at -> Symbol.of(Symbol.Kind.CAMERA, at, SIZE, Palette.INK))
        .toList();
  }

  private static Stream<Vec> place(FloorPicture p, PinnedPhoto.Pin pin) {
    if (pin instanceof PinnedPhoto.OnMark m) {
      return p.thing(new PlanItem.OfMark(m.mark())).map(t -> corner(t.bounds())).stream();
    }
    int corner = ((PinnedPhoto.OnCorner) pin).corner();
    return corner < p.area().outline().size()
        ? Stream.of(p.area().outline().get(corner).from().vec())
        : Stream.empty();
  }

  private static Vec corner(Bounds b) {
    return new Vec(b.maxX(), b.maxY());
  }
}
