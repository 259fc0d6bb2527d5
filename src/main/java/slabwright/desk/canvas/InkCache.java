package slabwright.desk.canvas;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import slabwright.desk.model.input.Viewport;
import slabwright.drawing.Ink;

/**
 * Inks of which most stay put while something is dragged: those are painted once and kept as a
 * picture, so that a frame only paints the few that move. Inks are told apart by instance.
 */
final class InkCache {
  /** What a picture is good for. */
  record CacheKey(Viewport viewport, Tone tone, double width, double height) {}

  private final BiConsumer<GraphicsContext, List<Ink>> painter;
  private List<Ink> last = List.of();
  private Set<Ink> still = Set.of();
  private Optional<CacheKey> look = Optional.empty();
  private Optional<WritableImage> picture = Optional.empty();

  /** Paints with this what is not in the picture, and the picture itself. */
  InkCache(BiConsumer<GraphicsContext, List<Ink>> painter) {
    this.painter = painter;
  }

  /**
   * Paints the inks; while dragging, those that moved lie over those that stay.
   *
   * @param dragging whether more frames like this one are to be expected
   */
  void paint(GraphicsContext g, List<Ink> inks, CacheKey as, boolean dragging) {
    boolean sameLook = look.equals(Optional.of(as));
    List<Ink> before = sameLook ? last : List.of();
    look = Optional.of(as);
    last = inks;
    if (!dragging || before.isEmpty()) {
      picture = Optional.empty();
      painter.accept(g, inks);
      return;
    }
    Set<Ink> now = byInstance(inks);
    if (picture.isEmpty() || !now.containsAll(still)) {
      still = byInstance(before);
      still.retainAll(now);
      picture = Optional.of(draw(inks.stream().filter(still::contains).toList(), as));
    }
    g.drawImage(picture.get(), 0, 0);
    painter.accept(g, inks.stream().filter(i -> !still.contains(i)).toList());
  }

  private WritableImage draw(List<Ink> inks, CacheKey as) {
    Canvas canvas = new Canvas(as.width(), as.height());
    painter.accept(canvas.getGraphicsContext2D(), new ArrayList<>(inks));
    SnapshotParameters clear = new SnapshotParameters();
    clear.setFill(Color.TRANSPARENT);
    return canvas.snapshot(clear, null);
  }

  private static Set<Ink> byInstance(List<Ink> inks) {
    Set<Ink> set = Collections.newSetFromMap(new IdentityHashMap<>());
    set.addAll(inks);
    return set;
  }
}
