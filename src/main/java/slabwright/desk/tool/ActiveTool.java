package slabwright.desk.tool;

import java.util.function.Function;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Signal;

/** The tool in hand. Going to a stage that does not offer it puts it down. */
public final class ActiveTool {
  private final Signal changed = new Signal();
  private final Function<ToolName, Tool> maker;
  private ToolName name = ToolName.PICK;
  private Tool tool;

  public ActiveTool(Selection focus, Function<ToolName, Tool> maker) {
    this.maker = maker;
    this.tool = maker.apply(ToolName.PICK);
    focus
        .changed()
        .subscribe(
            () -> {
              if (!ToolName.of(focus.stage()).contains(name)) {
                activate(ToolName.PICK);
              }
            });
  }

  public Signal changed() {
    return changed;
  }

  public ToolName name() {
    return name;
  }

  public Tool tool() {
    return tool;
  }

  /** Takes up a tool unless it is in hand already: what is being drawn with it stays. */
  public void take(ToolName next) {
    if (next != name) {
      activate(next);
    }
  }

  /** Takes up a tool afresh; what the old one was drawing is put away. */
  public void activate(ToolName next) {
    if (next != name) {
      tool.deactivate();
    }
    name = next;
    tool = maker.apply(next);
    changed.fire();
  }
}
