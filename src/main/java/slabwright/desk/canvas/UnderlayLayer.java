package slabwright.desk.canvas;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import slabwright.desk.model.input.Viewport;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.Underlay;

/** The picture under the drawing. */
final class UnderlayLayer {
  private final Supplier<Optional<Path>> plan;
  private final Runnable loaded;
  private Optional<Path> file = Optional.empty();
  private Optional<Image> image = Optional.empty();

  /**
   * A layer.
   *
   * @param plan the file that pictures are relative to
   * @param loaded told when a picture has been read
   */
  UnderlayLayer(Supplier<Optional<Path>> plan, Runnable loaded) {
    this.plan = plan;
    this.loaded = loaded;
  }

  void paint(GraphicsContext g, Optional<Underlay> underlay, Viewport v) {
    Optional<Path> now =
        underlay.flatMap(u -> plan.get().map(p -> p.toAbsolutePath().resolveSibling(u.file())));
    if (!now.equals(file)) {
      file = now;
      image = now.map(this::load);
    }
    if (image.isEmpty() || image.get().getProgress() < 1 || image.get().isError()) {
      return;
    }
    Affine map =
        underlay
            .orElseThrow()
            .placing()
            .then(new Affine(v.scale(), 0, 0, -v.scale(), v.originX(), v.originY()));
    g.save();
    g.setGlobalAlpha(0.8);
    g.transform(map.a(), map.b(), map.c(), map.d(), map.e(), map.f());
    g.drawImage(image.get(), 0, 0);
    g.restore();
  }

  /** Where the picture lies on the site; empty while it is not read. */
  Bounds bounds(Optional<Underlay> underlay) {
    Optional<Image> read = image.filter(i -> i.getProgress() >= 1 && !i.isError());
    if (underlay.isEmpty() || read.isEmpty()) {
      return Bounds.EMPTY;
    }
    double w = read.get().getWidth();
    double h = read.get().getHeight();
    Affine map = underlay.get().placing();
    return Bounds.of(
        Stream.of(Vec.ZERO, new Vec(w, 0), new Vec(w, h), new Vec(0, h)).map(map::apply).toList());
  }

  private Image load(Path path) {
    Image made = new Image(path.toUri().toString(), true);
    made.progressProperty()
        .addListener(
            (o, was, is) -> {
              if (is.doubleValue() >= 1) {
                loaded.run();
              }
            });
    return made;
  }
}
