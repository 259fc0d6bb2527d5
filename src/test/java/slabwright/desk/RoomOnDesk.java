package slabwright.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.store.PlanFile;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

/** A metric room of 8 m by 6 m, open at the Mark stage with the marks that a test wants. */
abstract class RoomOnDesk {
  @TempDir Path data;

  DeskUnderTest desk;
  DeskGestures hands;

  /** Marks that lie there from the start. */
  List<Mark> marks() {
    return List.of();
  }

  @BeforeEach
  void open() throws TimeoutException, IOException {
    List<OutlinePiece> walls =
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(8000, 0)),
            OutlinePiece.wall(Spot.mm(8000, 6000)),
            OutlinePiece.wall(Spot.mm(0, 6000)));
    FloorArea area = FloorArea.of("a1", "Shed", walls).withMarks(marks());
    Site site = Site.empty("Tram shed", UnitSystem.METRIC).withAreas(List.of(area));
    Path file = data.resolve("shed.site.json");
    PlanFile.save(site, file);
    desk = DeskUnderTest.open(data, 1280, 800, List.of(file.toString()));
    hands = new DeskGestures(desk);
    hands.stage(Stage.MARK);
  }

  @AfterEach
  void close() {
    desk.close();
  }

  static Mark island(String id, double x, double y, double length, double width) {
    Form form =
        new Form.Rectangle(Spot.mm(x, y), Length.mm(length), Length.mm(width), Length.ZERO, 0);
    return Mark.of(id, id, new MarkKind.Island(), form);
  }

  Mark mark(String id) {
    return hands.area().mark(id).orElseThrow();
  }

  List<String> order() {
    return hands.area().marks().stream().map(Mark::id).toList();
  }

  List<PlanItem> picked() {
    return DeskUnderTest.on(() -> List.copyOf(desk.room().bench().focus().selected()));
  }

  String undoName() {
    return DeskUnderTest.on(
        () -> desk.room().bench().desk().history().undoName().orElseThrow().key());
  }
}
