package slabwright.desk;

import java.util.Optional;
import slabwright.desk.canvas.SlabView;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskSettings;
import slabwright.desk.model.input.Viewport;
import slabwright.desk.model.plan.Releases;
import slabwright.desk.model.scene.ExpectedLook;
import slabwright.desk.shell.Commands;
import slabwright.desk.shell.Commands.Command;
import slabwright.project.export.ExportFormat;
import slabwright.words.Words;

/** Everything the menu and the keys can ask for. */
final class DeskCommands {
  private final Commands all;
  private final Words words;

  /** Commands to be added to those there are. */
  DeskCommands(Commands all, Words words) {
    this.all = all;
    this.words = words;
  }

  /** What goes out of the house. */
  void fillExports(SheetExports exports, Releases releases) {
    all.group(
        new Command(
            "pdf",
            words.say("desk.app.command.pdf"),
            "Shortcut+E",
            () -> exports.save(ExportFormat.PDF)),
        new Command(
            "cut-files",
            words.say("desk.app.command.cut-files"),
            "",
            () -> exports.save(Optional.empty(), false)),
        new Command(
            "print-sheets",
            words.say("desk.app.command.print-sheets"),
            "Shortcut+P",
            exports::print),
        new Command(
            "save-look", words.say("desk.app.command.save-look"), "", exports::savePictures),
        new Command(
            "release", words.say("desk.app.command.release"), "", () -> releases.issue("")));
  }

  /** The floor as it should look, by a key too. */
  void fillLook(ExpectedLook look) {
    all.submenu(
        words.say("desk.shell.main-menu-button.view"),
        new Command(
            "expected-look",
            words.say("desk.app.command.expected-look"),
            "Shortcut+Shift+L",
            () -> look.set(!look.isOn())));
  }

  /** What makes it easier for a thumb. */
  void fillTouch(DeskSettings settings, Runnable roomy, Runnable changed) {
    all.submenu(
        words.say("desk.shell.main-menu-button.view"),
        new Command(
            "number-pad",
            words.say("desk.app.command.number-pad"),
            "Shortcut+K",
            () -> {
              settings.setOn("number-pad", !settings.isOn("number-pad"));
              changed.run();
            }),
        new Command(
            "panel",
            words.say("desk.app.command.panel"),
            "Shortcut+B",
            () -> {
              settings.setOn("panel-folded", !settings.isOn("panel-folded"));
              changed.run();
            }),
        new Command("roomy", words.say("desk.app.command.roomy"), "Shortcut+Shift+K", roomy));
  }

  /** Named in the other language, so that who can't read this one finds it. */
  void fillLanguage(Runnable language) {
    all.group(new Command("language", words.say("desk.app.command.language"), "", language));
  }

  void fill(
      Desk desk,
      Runnable undo,
      PlanActions plans,
      EditActions edit,
      SlabAccess screen,
      Runnable look) {
    all.group(
        new Command("new", words.say("desk.app.command.new"), "Shortcut+N", plans::startByTape),
        new Command("open", words.say("desk.app.command.open"), "Shortcut+O", plans::choosePlan),
        new Command("add-area", words.say("desk.app.command.add-area"), "", plans::addArea),
        new Command("picture", words.say("desk.app.command.picture"), "", plans::choosePicture),
        new Command(
            "no-picture", words.say("desk.app.command.no-picture"), "", plans::removePicture),
        new Command(
            "remove-area", words.say("desk.app.command.remove-area"), "", plans::removeArea),
        new Command("save", words.say("desk.app.command.save"), "Shortcut+S", plans::save),
        new Command(
            "save-as", words.say("desk.app.command.save-as"), "Shortcut+Shift+S", plans::saveAs),
        new Command("close", words.say("desk.app.command.close"), "Shortcut+W", plans::closePlan));
    all.submenu(
        words.say("desk.shell.main-menu-button.edit"),
        new Command("undo", words.say("desk.app.command.undo"), "Shortcut+Z", undo),
        new Command("redo", words.say("desk.app.command.redo"), "Shortcut+Y", desk::redo));
    all.submenu(
        words.say("desk.shell.main-menu-button.edit"),
        new Command("cut", words.say("desk.app.command.cut"), "Shortcut+X", edit::cut),
        new Command("copy", words.say("desk.app.command.copy"), "Shortcut+C", edit::copy),
        new Command("paste", words.say("desk.app.command.paste"), "Shortcut+V", edit::paste),
        new Command(
            "duplicate", words.say("desk.app.command.duplicate"), "Shortcut+D", edit::duplicate),
        new Command("remove", words.say("desk.app.command.remove"), "Delete", edit::remove),
        new Command("all", words.say("desk.app.command.all"), "Shortcut+A", edit::pickAll));
    all.submenu(
        words.say("desk.shell.main-menu-button.edit"),
        new Command(
            "later", words.say("desk.app.command.later"), "Shortcut+Up", () -> edit.reorder(1)),
        new Command(
            "earlier",
            words.say("desk.app.command.earlier"),
            "Shortcut+Down",
            () -> edit.reorder(-1)),
        new Command(
            "turn-left",
            words.say("desk.app.command.turn-left"),
            "Shortcut+Left",
            () -> edit.turn(15)),
        new Command(
            "turn-right",
            words.say("desk.app.command.turn-right"),
            "Shortcut+Right",
            () -> edit.turn(-15)),
        new Command("turn-floor", words.say("desk.app.command.turn-floor"), "", edit::turnFloor));
    all.submenu(
        words.say("desk.shell.main-menu-button.view"),
        new Command(
            "fit", words.say("desk.app.command.fit"), "Shortcut+0", () -> screen.slab().fit()),
        new Command(
            "fit-site",
            words.say("desk.app.command.fit-site"),
            "Shortcut+Shift+0",
            () -> screen.slab().fitSite()),
        new Command(
            "next-area", words.say("desk.app.command.next-area"), "Shortcut+F6", plans::nextArea),
        new Command(
            "closer",
            words.say("desk.app.command.closer"),
            "Shortcut+Plus",
            () -> zoom(screen.slab(), 1.25)),
        new Command(
            "farther",
            words.say("desk.app.command.farther"),
            "Shortcut+Minus",
            () -> zoom(screen.slab(), 0.8)),
        new Command("look", words.say("desk.app.command.look"), "Shortcut+L", look),
        new Command(
            "units", words.say("desk.app.command.units"), "Shortcut+U", plans::switchUnits));
  }

  /** Several things brought into order; each is one step of undo. */
  void fillArranging(EditActions edit) {
    all.submenu(
        words.say("desk.shell.slab-menu.in-line"),
        line(edit, "line-left", Arranging.Line.LEFT_SIDES, words.say("desk.app.command.line-left")),
        line(
            edit,
            "line-right",
            Arranging.Line.RIGHT_SIDES,
            words.say("desk.app.command.line-right")),
        line(edit, "line-tops", Arranging.Line.TOPS, words.say("desk.app.command.line-tops")),
        line(edit, "line-feet", Arranging.Line.FEET, words.say("desk.app.command.line-feet")),
        line(
            edit,
            "line-across",
            Arranging.Line.MIDDLES_ACROSS,
            words.say("desk.app.command.line-across")),
        line(edit, "line-up", Arranging.Line.MIDDLES_UP, words.say("desk.app.command.line-up")),
        new Command(
            "space-across", words.say("desk.app.command.space-across"), "", () -> edit.space(true)),
        new Command(
            "space-up", words.say("desk.app.command.space-up"), "", () -> edit.space(false)));
  }

  private static Command line(EditActions edit, String id, Arranging.Line line, String said) {
    return new Command(id, said, "", () -> edit.lineUp(line));
  }

  /** Photos of places. */
  void fillPhotos(Runnable photo) {
    all.submenu(
        words.say("desk.shell.main-menu-button.edit"),
        new Command("photo", words.say("desk.app.command.photo"), "Shortcut+Shift+P", photo));
  }

  /** All keys, to be searched. */
  void fillKeys(Runnable keys) {
    all.group(new Command("keys", words.say("desk.app.command.keys"), "F1", keys));
  }

  private static void zoom(SlabView slab, double factor) {
    Viewport v = slab.viewport();
    slab.setViewport(v.zoomed(factor, slab.getWidth() / 2, slab.getHeight() / 2));
  }
}
