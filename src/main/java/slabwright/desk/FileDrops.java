package slabwright.desk;

import java.nio.file.Path;
import java.util.Locale;
import javafx.scene.Scene;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Stage;
import slabwright.units.Message;

/**
 * Takes files that are dropped on the window, by what they are. A picture or PDF is a graphic at
 * the Inlay stage, and lies under the plan at every other.
 */
final class FileDrops {
  private final Desk desk;
  private final PlanActions plans;
  private final InlayActions inlays;
  private final Selection focus;

  FileDrops(Desk desk, Selection focus, PlanActions plans, InlayActions inlays) {
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
    e.getDragboard().getFiles().stream().findFirst().ifPresent(f -> open(f.toPath()));
    e.setDropCompleted(true);
    e.consume();
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
