package slabwright.desk;

import java.util.function.Function;
import slabwright.desk.model.Bench;
import slabwright.desk.model.TapedRooms;
import slabwright.desk.model.WalkKeeper;
import slabwright.desk.tool.CornerTool;
import slabwright.desk.tool.DoorwayTool;
import slabwright.desk.tool.DrawTool;
import slabwright.desk.tool.FlatTool;
import slabwright.desk.tool.MarkTool;
import slabwright.desk.tool.MeasureTool;
import slabwright.desk.tool.PickTool;
import slabwright.desk.tool.PlaceTool;
import slabwright.desk.tool.ScaleTool;
import slabwright.desk.tool.Shown;
import slabwright.desk.tool.Sizes;
import slabwright.desk.tool.TapeTool;
import slabwright.desk.tool.Tool;
import slabwright.desk.tool.ToolName;
import slabwright.shape.Vec;

/** Makes the tool of a name. */
final class ToolMaker implements Function<ToolName, Tool> {
  private final Bench bench;
  private final Shown shown;
  private final Sizes sizes = new Sizes();
  private final TapedRooms rooms;
  private final WalkKeeper walks;
  private final Runnable roomDone;
  private final Runnable graphic;
  private final FlatTool.Flattening flattening;

  ToolMaker(
      Bench bench,
      Shown shown,
      TapedRooms rooms,
      WalkKeeper walks,
      Runnable roomDone,
      Runnable graphic,
      FlatTool.Flattening flattening) {
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
      case FLAT -> new FlatTool(flattening);
      case DRAW -> new DrawTool(bench, roomDone);
      case CORNER -> new CornerTool(bench, shown);
      case DOORWAY -> new DoorwayTool(bench, shown);
      case MEASURE -> new MeasureTool(bench);
      case PLACE -> new PlaceTool(bench, graphic);
      default ->
          name.marks()
              .<Tool>map(type -> new MarkTool(bench, shown, sizes, type))
              .orElseGet(() -> new PickTool(bench, shown));
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
