package slabwright.desk.canvas;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.PinnedTo;
import slabwright.desk.model.scene.Pictures;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.job.PinnedPhoto;
import slabwright.site.rules.InlaySpecRules;

/** Shows the photos of what the pointer rests on, up to a pair. */
public final class PhotoHover extends HBox {
  private static final double WIDE = 260;
  private static final double AWAY = 16;

  private final DeskContext bench;
  private final Pictures pictures;
  private final Supplier<Optional<Path>> plan;
  private Optional<PlanItem> over = Optional.empty();

  /** Listens to the pointer over the slab. */
  public PhotoHover(
      DeskContext bench, SlabView slab, Pictures pictures, Supplier<Optional<Path>> plan) {
    this.bench = bench;
    this.pictures = pictures;
    this.plan = plan;
    setId("photo-hover");
    getStyleClass().add("photo-hover");
    setSpacing(6);
    setManaged(false);
    setMouseTransparent(true);
    setVisible(false);
    setMaxSize(Region.USE_PREF_SIZE, Region.USE_PREF_SIZE);
    slab.addEventHandler(MouseEvent.MOUSE_MOVED, e -> moved(slab, e));
    slab.addEventHandler(MouseEvent.MOUSE_EXITED, e -> hide());
    slab.addEventHandler(MouseEvent.MOUSE_PRESSED, e -> hide());
  }

  private void hide() {
    over = Optional.empty();
    setVisible(false);
  }

  private void moved(SlabView slab, MouseEvent e) {
    if (bench.desk().shown().job().photos().isEmpty()) {
      hide();
      return;
    }
    Vec at = slab.viewport().toSite(e.getX(), e.getY());
    Optional<PlanItem> now = pictures.picture().flatMap(p -> p.at(at, slab.reach()));
    if (!now.equals(over)) {
      over = now;
      show(slab, e.getX(), e.getY());
    }
  }

  private void show(SlabView slab, double x, double y) {
    String area = bench.focus().area().map(FloorArea::id).orElse("");
    List<PinnedPhoto> photos =
        over.map(i -> PinnedTo.photos(bench.desk().shown(), area, i)).orElse(List.of());
    getChildren()
        .setAll(
            photos.stream()
                .limit(2)
                .flatMap(p -> plan.get().flatMap(f -> image(f, p)).stream())
                .map(PhotoHover::view)
                .toList());
    setVisible(!getChildren().isEmpty());
    autosize();
    double right = slab.getWidth() - getWidth() - AWAY;
    double low = slab.getHeight() - getHeight() - AWAY;
    relocate(Math.max(0, Math.min(x + AWAY, right)), Math.max(0, Math.min(y + AWAY, low)));
  }

  private static ImageView view(Image image) {
    ImageView view = new ImageView(image);
    view.setPreserveRatio(true);
    view.setFitWidth(WIDE);
    view.setFitHeight(WIDE);
    return view;
  }

  /** A photo beside the plan, small; empty where it is gone. */
  public static Optional<Image> image(Path plan, PinnedPhoto photo) {
    Path file = plan.toAbsolutePath().getParent().resolve(photo.file());
    if (!InlaySpecRules.staysInside(photo.file()) || !Files.isReadable(file)) {
      return Optional.empty();
    }
    return Optional.of(new Image(file.toUri().toString(), 640, 640, true, true))
        .filter(i -> !i.isError());
  }
}
