package slabwright.sheets.packet.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.SheetContext;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.store.PlanFile;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class DoorOffsetTest {
  private static final SheetContext CONTEXT =
      new SheetContext(PageFrame.portrait(PaperSize.A4), UnitSystem.METRIC, Words.english());

  private static String said(double right) throws IOException {
    Path plan = Path.of("sample-plans", "tram-hall.site.json");
    FloorArea hall = PlanFile.read(plan).orThrow().areas().get(0);
    List<Doorway> ways = hall.doorways().stream().filter(Doorway::wayIn).toList();
    DoorOffset on = DoorOffset.of(hall, ways.get(0), Vec.ZERO);
    Vec inside = on.middle().plus(new Vec(right, 2000));
    Message reading = Message.of("sheets.sign-block.signature");
    return DoorOffset.of(hall, ways.get(0), inside).sentence(reading, CONTEXT);
  }

  @Test
  void a_client_reads_of_five_millimetres_aside_as_the_crew_does() throws IOException {
    assertThat(said(5)).contains("5 mm");
    assertThat(said(0.5)).contains("line of their middle");
  }
}
