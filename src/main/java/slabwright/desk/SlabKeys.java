package slabwright.desk;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import slabwright.desk.canvas.SlabView;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.shell.Commands;
import slabwright.desk.shell.EntryBar;
import slabwright.desk.tool.ActiveTool;
import slabwright.desk.tool.ToolName;

/** Keys pressed while no text field has the typing cursor. */
final class SlabKeys {
  private final DeskContext bench;
  private final ActiveTool tools;
  private final EntryBar entry;
  private final SlabView slab;
  private final Runnable home;
  private final Supplier<Optional<TextField>> refused;

  /**
   * For the slab and what is typed beside it.
   *
   * @param home gives the keys back to the slab, or to the page that lies over it
   * @param refused the field whose text was refused and still stands there
   */
  SlabKeys(
      DeskContext bench,
      ActiveTool tools,
      EntryBar entry,
      SlabView slab,
      Runnable home,
      Supplier<Optional<TextField>> refused) {
    this.bench = bench;
    this.tools = tools;
    this.entry = entry;
    this.slab = slab;
    this.home = home;
    this.refused = refused;
  }

  boolean pressed(KeyEvent e, EditActions edit, Commands commands) {
    if (e.isShortcutDown()) {
      return commands.handle(e);
    }
    return switch (e.getCode()) {
      case ENTER -> slab.isFocused() && finish();
      case ESCAPE -> putAway();
      case BACK_SPACE -> tools.tool().stepBack() || removed(edit);
      case DELETE -> removed(edit);
      case LEFT -> arrow(edit, -1, 0, e);
      case RIGHT -> arrow(edit, 1, 0, e);
      case UP -> arrow(edit, 0, 1, e);
      case DOWN -> arrow(edit, 0, -1, e);
      case PAGE_DOWN -> slab.isFocused() && edit.pickNext(false);
      case PAGE_UP -> slab.isFocused() && edit.pickNext(true);
      case PLUS, EQUALS, ADD -> ran(commands, "closer");
      case MINUS, SUBTRACT -> !tools.tool().begins('-') && ran(commands, "farther");
      default -> letter(e, commands);
    };
  }

  private boolean finish() {
    if (tools.tool().entry().isEmpty()) {
      return false;
    }
    entry.enter();
    return true;
  }

  /** One step back; the keys are the slab's again. */
  boolean putAway() {
    home.run();
    if (bench.desk().refusal().isPresent()) {
      bench.desk().clearRefusal();
    } else if (!tools.tool().escape()) {
      tools.activate(ToolName.PICK);
    }
    return true;
  }

  private boolean removed(EditActions edit) {
    edit.remove();
    return true;
  }

  private boolean arrow(EditActions edit, int right, int up, KeyEvent e) {
    if (!slab.isFocused()) {
      return false;
    }
    return tools.tool().steer(right, up) || edit.nudge(right, up, e.isShiftDown());
  }

  private static boolean ran(Commands commands, String id) {
    commands.run(id);
    return true;
  }

  /**
   * Digits go to stages, F fits, other letters take up tools; none of them does where a line is
   * begun with it.
   */
  private boolean letter(KeyEvent e, Commands commands) {
    KeyCode code = e.getCode();
    boolean typing =
        code.getChar().length() == 1
            && tools.tool().begins(code.getChar().charAt(0))
            && !code.isDigitKey();
    if (e.isAltDown() || typing) {
      return false;
    }
    if (code == KeyCode.F) {
      return ran(commands, e.isShiftDown() ? "fit-site" : "fit");
    }
    if (code.isDigitKey() && tools.tool().entry().isEmpty() && refused.get().isEmpty()) {
      Optional<Stage> stage = Stage.byKey(code.getName());
      stage.ifPresent(bench.focus()::goTo);
      return stage.isPresent();
    }
    Optional<ToolName> tool =
        code.isLetterKey()
            ? ToolName.byKey(bench.focus().stage(), code.getName())
            : Optional.empty();
    tool.filter(t -> !t.needsPicture() || bench.desk().site().underlay().isPresent())
        .filter(t -> t.drawsRooms() || t == ToolName.PICK || bench.focus().area().isPresent())
        .ifPresent(tools::take);
    return tool.isPresent();
  }
}
