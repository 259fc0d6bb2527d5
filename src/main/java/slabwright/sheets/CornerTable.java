package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import slabwright.floor.FloorTakeoff;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** Where the blank's corners lie, from the floor area's lower left as the sheet is read. */
record CornerTable(FloorTakeoff takeoff, Affine toSite, Bounds blank) {
  Table table(SheetContext context) {
    Bounds floor = takeoff.gross().bounds();
    List<List<Cell>> rows = new ArrayList<>();
    int n = 0;
    for (Vec corner : InlayInks.ring(blank).map(toSite).points()) {
      n++;
      rows.add(
          List.of(
              new Cell.Ringed(Integer.toString(n)),
              Cell.of(context.length(corner.x() - floor.minX())),
              Cell.of(context.length(corner.y() - floor.minY()))));
    }
    return Table.of(
        List.of(
            Column.words("corner"),
            Column.number("from the far left"),
            Column.number("from the lowest wall")),
        rows);
  }
}
