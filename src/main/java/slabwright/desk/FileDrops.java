package slabwright.desk;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import slabwright.desk.model.Desk;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Stage;
import slabwright.desk.model.edit.PinnedTo;
import slabwright.units.Message;

/**
 * Takes files that are dropped on the window, by what they are. A photo on a mark or a corner is
 * pinned there; any other picture or PDF is a graphic at the Inlay stage, and lies under the plan
 * at every other.
 */
final class FileDrops {
  private final Desk desk;
  private final PlanActions plans;
  private final InlayActions inlays;
  private final Selection focus;
  private final PhotoActions photos;
  private final Under under;

  /** What lies on the slab under a place of the scene. */
  interface Under {
    Optional<PlanItem> at(double sceneX, double sceneY);
  }

  FileDrops(
      Desk desk,
      Selection focus,
      PlanActions plans,
      InlayActions inlays,
      PhotoActions photos,
      Under under) {
    this.photos = photos;
    this.under = under;
    this.focus = focus;
    this.desk = desk;
    this.plans = plans;
    this.inlays = inlays;
  }

  /** Files can be dropped anywhere on the scene. */
  void on(Scene scene) {
    scene.setOnDragOver(
        e -> {
          if (e.getDragboard().hasFiles()) {
            e.acceptTransferModes(TransferMode.COPY);
          }
        });
    scene.setOnDragDropped(this::dropped);
  }

  private void dropped(DragEvent e) {
    Optional<PlanItem> on = under.at(e.getSceneX(), e.getSceneY());
    e.getDragboard().getFiles().stream().findFirst().ifPresent(f -> open(f.toPath(), on));
    e.setDropCompleted(true);
    e.consume();
  }

  /** Opens a file that was let go over a thing on the slab. */
  void open(Path file, Optional<PlanItem> on) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    Optional<PlanItem> pinned =
        on.filter(i -> focus.stage() != Stage.INLAY && PinnedTo.of(i).isPresent());
    if (name.matches(".*\\.(png|jpe?g)") && pinned.isPresent()) {
      focus.select(pinned.get());
      photos.pin(file, pinned.get());
    } else {
      open(file);
    }
  }

  void open(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".json")) {
      plans.openPlan(file);
    } else if (name.matches(".*\\.(svgz?|gif|bmp|tiff?)")) {
      graphic(file);
    } else if (name.matches(".*\\.(png|jpe?g|pdf)") && focus.stage() == Stage.INLAY) {
      graphic(file);
    } else if (name.matches(".*\\.(png|jpe?g|pdf)")) {
      plans.trace(file);
    } else {
      desk.refuse(Message.of("desk.app.drops.unknown-file", file.getFileName().toString()));
    }
  }

  private void graphic(Path file) {
    if (desk.isOpen()) {
      inlays.add(file);
    } else {
      desk.refuse(Message.of("desk.app.drops.start-a-plan-first"));
    }
  }
}
