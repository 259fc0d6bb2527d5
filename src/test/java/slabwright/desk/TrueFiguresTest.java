package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.css.PseudoClass;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.Stage;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.edit.MarkEdit;
import slabwright.store.PlanFile;
import slabwright.units.Length;
import slabwright.units.UnitSystem;

/** A room of 8 m by 6 m with a counter: no figure and no drawing of another plan. */
class TrueFiguresTest extends RoomOnDesk {
  private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

  @Override
  List<Mark> marks() {
    return List.of(island("counter", 4000, 3000, 2000, 1000));
  }

  private String figure(String what) {
    return DeskUnderTest.on(() -> ((Labeled) desk.node("tally-" + what)).getText());
  }

  /** What the bar says of the floor in the frame in which something is done. */
  private String atOnce(Runnable does) {
    return DeskUnderTest.on(
        () -> {
          does.run();
          desk.room().refreshNow();
          Labeled floor = (Labeled) desk.node("tally-net-floor");
          boolean stale = floor.getPseudoClassStates().contains(STALE);
          return floor.getText() + (stale ? " dimmed" : "");
        });
  }

  /** What the bar says of the floor in the frame in which another plan comes. */
  private String whenOpened(Path file) throws TimeoutException {
    List<String> said = new ArrayList<>();
    DeskUnderTest.on(
        () -> {
          desk.room().bench().desk().changed().subscribe(() -> seen(said));
          desk.room().plans().openPlan(file);
          return null;
        });
    desk.settle();
    return said.get(0);
  }

  private void seen(List<String> said) {
    if (desk.room().bench().desk().site().name().equals("Yard")) {
      desk.room().refreshNow();
      said.add(((Labeled) desk.node("tally-net-floor")).getText());
    }
  }

  @Test
  void a_figure_is_dimmed_until_it_is_true_of_an_edit_and_dashed_for_another_plan()
      throws TimeoutException, IOException {
    assertThat(figure("net-floor")).isEqualTo("46.00 m²");
    Form wider =
        new Form.Rectangle(Spot.mm(4000, 3000), Length.mm(3000), Length.mm(1000), Length.ZERO, 0);
    Mark counter =
        new Mark("counter", "", mark("counter").kind(), wider, mark("counter").follows());
    assertThat(atOnce(() -> desk.room().bench().desk().push(new MarkEdit.Put("a1", counter))))
        .isEqualTo("46.00 m² dimmed");
    desk.settle();
    assertThat(atOnce(() -> {})).isEqualTo("45.00 m²");

    List<OutlinePiece> walls =
        List.of(
            OutlinePiece.wall(Spot.mm(0, 0)),
            OutlinePiece.wall(Spot.mm(3000, 0)),
            OutlinePiece.wall(Spot.mm(3000, 3000)));
    Site other =
        Site.empty("Yard", UnitSystem.METRIC).withAreas(List.of(FloorArea.of("a1", "Yard", walls)));
    Path file = data.resolve("yard.site.json");
    PlanFile.save(other, file);
    assertThat(whenOpened(file)).isEqualTo("–");
    assertThat(DeskUnderTest.on(() -> desk.room().parts().pictures().picture().stream().toList()))
        .noneMatch(p -> p.area().name().equals("Shed"));
    desk.settle();
    assertThat(figure("net-floor")).isEqualTo("4.50 m²");
  }

  @Test
  void a_click_on_a_figure_goes_to_where_it_comes_from() throws TimeoutException {
    hands.click("tally-edges");
    assertThat(DeskUnderTest.on(() -> desk.room().bench().focus().stage())).isEqualTo(Stage.PREP);
    assertThat(DeskUnderTest.on(() -> desk.node("fold-edges").isFocused())).isTrue();
    hands.press(KeyCode.ESCAPE);
    assertThat(DeskUnderTest.on(() -> hands.slab().isFocused())).isTrue();
  }
}
