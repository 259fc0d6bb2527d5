package slabwright.desk;

import java.util.function.Function;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.plan.TapedRooms;
import slabwright.desk.tool.CornerTool;
import slabwright.desk.tool.DoorwayTool;
import slabwright.desk.tool.DrawTool;
import slabwright.desk.tool.MeasureTool;
import slabwright.desk.tool.PlaceTool;
import slabwright.desk.tool.PlanLookup;
import slabwright.desk.tool.RectifyTool;
import slabwright.desk.tool.ScaleTool;
import slabwright.desk.tool.TapeTool;
import slabwright.desk.tool.Tool;
import slabwright.desk.tool.ToolName;
import slabwright.desk.tool.mark.MarkTool;
import slabwright.desk.tool.mark.RecentSizes;
import slabwright.desk.tool.select.SelectTool;
import slabwright.shape.Vec;

/** Makes the tool of a name. */
final class ToolFactory implements Function<ToolName, Tool> {
  private final DeskContext bench;
  private final PlanLookup shown;
  private final RecentSizes sizes = new RecentSizes();
  private final TapedRooms rooms;
  private final TapeWalkJournal walks;
  private final Runnable roomDone;
  private final Runnable graphic;
  private final RectifyTool.Rectification flattening;

  ToolFactory(
      DeskContext bench,
      PlanLookup shown,
      TapedRooms rooms,
      TapeWalkJournal walks,
      Runnable roomDone,
      Runnable graphic,
      RectifyTool.Rectification flattening) {
    this.rooms = rooms;
    this.walks = walks;
    this.bench = bench;
    this.shown = shown;
    this.roomDone = roomDone;
    this.graphic = graphic;
    this.flattening = flattening;
  }

  @Override
  public Tool apply(ToolName name) {
    return switch (name) {
      case TAPE -> new TapeTool(bench, rooms, walks.left(start()), walks::keep, roomDone);
      case SCALE -> new ScaleTool(bench, roomDone);
      case FLAT -> new RectifyTool(flattening, () -> bench.desk().site().units());
      case DRAW -> new DrawTool(bench, roomDone);
      case CORNER -> new CornerTool(bench, shown);
      case DOORWAY -> new DoorwayTool(bench, shown);
      case MEASURE -> new MeasureTool(bench);
      case PLACE -> new PlaceTool(bench, graphic);
      default ->
          name.marks()
              .<Tool>map(type -> new MarkTool(bench, shown, sizes, type))
              .orElseGet(() -> new SelectTool(bench, shown));
    };
  }

  /** Where a new room begins: beside what is already there. */
  private Vec start() {
    return shown
        .picture()
        .map(p -> new Vec(p.bounds().maxX() + 3000, p.bounds().maxY()))
        .orElse(Vec.ZERO);
  }
}
