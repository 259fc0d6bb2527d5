package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import java.util.stream.Collectors;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.site.TrenchLevel;
import slabwright.site.edit.MarkEdit;
import slabwright.units.Length;

/** A graphic on a floor that takes no dye well under it. */
class GraphicOverTest {
  @TempDir Path data;

  private static String cards(DeskUnderTest desk) {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().lookup(".card-column").lookupAll(".label").stream()
                .filter(DeskGestures::shows)
                .map(n -> ((Labeled) n).getText())
                .collect(Collectors.joining("\n")));
  }

  private static void put(DeskUnderTest desk, Mark mark) throws TimeoutException {
    DeskUnderTest.on(() -> desk.room().bench().desk().push(new MarkEdit.Put("a1", mark)));
    desk.settleAll();
  }

  private static Form across(double y, double width) {
    return new Form.Strip(List.of(Spot.mm(3000, y), Spot.mm(5000, y)), Length.mm(width));
  }

  @Test
  void a_graphic_over_a_proud_trench_glue_and_a_joint_is_warned_of_in_words()
      throws TimeoutException, IOException {
    Path plan = TestSites.withArrow(data);
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of(plan.toString()))) {
      new DeskGestures(desk).stage(Stage.INLAY);
      assertThat(cards(desk)).doesNotContain("Arrow lies over");
      MarkKind proud = new MarkKind.Trench(TrenchLevel.PROUD, false);
      put(desk, Mark.of("t", "drain", proud, across(2600, 200)));
      assertThat(cards(desk)).contains("Arrow lies over drain");
      put(desk, Mark.of("r", "glue", new MarkKind.Residue("glue"), across(2900, 200)));
      assertThat(cards(desk)).contains("Arrow lies over glue");
      Form line = new Form.Trace(List.of(Spot.mm(3000, 3200), Spot.mm(5000, 3200)));
      put(desk, Mark.of("j", "day joint", new MarkKind.Joint(Length.mm(5), Length.mm(20)), line));
      assertThat(cards(desk)).contains("Arrow lies over day joint");
    }
  }
}
