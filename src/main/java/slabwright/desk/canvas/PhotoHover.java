package slabwright.desk.canvas;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
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
                .flatMap(p -> plan.get().flatMap(f -> view(f, p, WIDE, WIDE)).stream())
                .toList());
    getChildren().forEach(v -> v.managedProperty().addListener((o, was, is) -> lay(slab, x, y)));
    lay(slab, x, y);
  }

  /** Shows those that are read, beside the pointer. */
  private void lay(SlabView slab, double x, double y) {
    setVisible(getChildren().stream().anyMatch(Node::isManaged));
    autosize();
    double right = slab.getWidth() - getWidth() - AWAY;
    double low = slab.getHeight() - getHeight() - AWAY;
    relocate(Math.max(0, Math.min(x + AWAY, right)), Math.max(0, Math.min(y + AWAY, low)));
  }

  /**
   * A photo beside the plan, small, read off this thread: it takes no room until it is read, and
   * none where it is gone. Empty for a path that leaves the plan's folder.
   */
  public static Optional<ImageView> view(Path plan, PinnedPhoto photo, double wide, double high) {
    if (!InlaySpecRules.staysInside(photo.file())) {
      return Optional.empty();
    }
    Path file = plan.toAbsolutePath().getParent().resolve(photo.file());
    Image image = new Image(file.toUri().toString(), 640, 640, true, true, true);
    ImageView view = new ImageView(image);
    view.setPreserveRatio(true);
    view.setFitWidth(wide);
    view.setFitHeight(high);
    BooleanBinding read =
        image.progressProperty().greaterThanOrEqualTo(1).and(image.errorProperty().not());
    view.visibleProperty().bind(read);
    view.managedProperty().bind(read);
    return Optional.of(view);
  }
}
