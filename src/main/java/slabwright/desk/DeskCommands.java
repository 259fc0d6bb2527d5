package slabwright.desk;

import java.util.Optional;
import slabwright.desk.canvas.SlabView;
import slabwright.desk.model.Desk;
import slabwright.desk.model.input.Viewport;
import slabwright.desk.model.plan.Releases;
import slabwright.desk.shell.Commands;
import slabwright.desk.shell.Commands.Command;
import slabwright.project.export.ExportFormat;

/** Everything the menu and the keys can ask for. */
final class DeskCommands {
  private DeskCommands() {}

  /** What goes out of the house. */
  static void fillExports(Commands all, SheetExports exports, Releases releases) {
    all.group(
        new Command(
            "pdf", "Save the sheets as PDF…", "Shortcut+E", () -> exports.save(ExportFormat.PDF)),
        new Command(
            "cut-files", "Save all cut files…", "", () -> exports.save(Optional.empty(), false)),
        new Command("print-sheets", "Print the sheets…", "Shortcut+P", exports::print),
        new Command("release", "Issue a release", "", () -> releases.issue("")));
  }

  static void fill(
      Commands all,
      Desk desk,
      PlanActions plans,
      EditActions edit,
      SlabAccess screen,
      Runnable look) {
    all.group(
        new Command("new", "New plan by tape", "Shortcut+N", plans::startByTape),
        new Command("open", "Open a plan…", "Shortcut+O", plans::choosePlan),
        new Command("add-area", "Add a floor area by tape", "", plans::addArea),
        new Command("picture", "Lay a picture under the plan…", "", plans::choosePicture),
        new Command("no-picture", "Take the picture away", "", plans::removePicture),
        new Command("remove-area", "Remove this floor area", "", plans::removeArea),
        new Command("save", "Save", "Shortcut+S", plans::save),
        new Command("save-as", "Save as…", "Shortcut+Shift+S", plans::saveAs),
        new Command("close", "Put the plan away", "Shortcut+W", plans::closePlan));
    all.group(
        new Command("undo", "Undo", "Shortcut+Z", desk::undo),
        new Command("redo", "Redo", "Shortcut+Y", desk::redo));
    all.group(
        new Command("cut", "Cut", "Shortcut+X", edit::cut),
        new Command("copy", "Copy", "Shortcut+C", edit::copy),
        new Command("paste", "Paste", "Shortcut+V", edit::paste),
        new Command("duplicate", "Duplicate", "Shortcut+D", edit::duplicate),
        new Command("remove", "Remove", "Delete", edit::remove),
        new Command("all", "Pick all marks", "Shortcut+A", edit::pickAll));
    all.group(
        new Command("later", "Lay on top of the next", "Shortcut+Up", () -> edit.reorder(1)),
        new Command("earlier", "Lay under the one before", "Shortcut+Down", () -> edit.reorder(-1)),
        new Command("turn-left", "Turn left 15°", "Shortcut+Left", () -> edit.turn(15)),
        new Command("turn-right", "Turn right 15°", "Shortcut+Right", () -> edit.turn(-15)));
    all.group(
        new Command("fit", "Whole floor", "Shortcut+0", () -> screen.slab().fit()),
        new Command("closer", "Closer", "Shortcut+Plus", () -> zoom(screen.slab(), 1.25)),
        new Command("farther", "Farther", "Shortcut+Minus", () -> zoom(screen.slab(), 0.8)),
        new Command("look", "Light or dark look", "Shortcut+L", look),
        new Command("units", "Other units", "Shortcut+U", plans::switchUnits));
  }

  private static void zoom(SlabView slab, double factor) {
    Viewport v = slab.viewport();
    slab.setViewport(v.zoomed(factor, slab.getWidth() / 2, slab.getHeight() / 2));
  }
}
