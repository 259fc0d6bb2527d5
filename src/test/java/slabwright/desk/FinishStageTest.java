package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.desk.model.Stage;
import slabwright.shape.Vec;
import slabwright.site.AdviceId;
import slabwright.site.Declined;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.work.Said;
import slabwright.work.handover.Scope;

/** The Finish stage with the tram hall open. */
class FinishStageTest {
  @TempDir Path data;

  private DeskUnderTest desk;
  private DeskGestures hands;

  @BeforeEach
  void open() throws TimeoutException, IOException {
    for (String name : List.of("tram-hall.site.json", "heron-ring.svg")) {
      Files.copy(Path.of("sample-plans", name), data.resolve(name));
    }
    openAgain();
  }

  private void openAgain() throws TimeoutException {
    desk =
        DeskUnderTest.open(
            data, 1280, 800, List.of(data.resolve("tram-hall.site.json").toString()));
    hands = new DeskGestures(desk);
    desk.settleAll();
    hands.stage(Stage.FINISH);
    desk.settleAll();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private void saveAndCloseAndOpenAgain() throws TimeoutException {
    hands.press(KeyCode.SHORTCUT, KeyCode.S);
    desk.close();
    openAgain();
  }

  private boolean says(String words) {
    return DeskUnderTest.on(
        () ->
            desk.stage().getScene().getRoot().lookupAll(".label").stream()
                .map(Label.class::cast)
                .anyMatch(l -> l.getText() != null && l.getText().contains(words)));
  }

  private String tally(String what) {
    return DeskUnderTest.on(() -> ((Label) desk.node("tally-" + what)).getText());
  }

  /** Sheet 7 prints 4.6 % as the peak of all vapour in the lowest metre, and 1.0 as the mean. */
  @Test
  void the_bar_shows_the_careful_reading_of_the_air() {
    assertThat(tally("air-fan-off")).isEqualTo("4.6 % of LEL");
  }

  @Test
  void a_stop_opened_again_is_said_first_and_takes_the_dates_away() throws TimeoutException {
    assertThat(says("Can't start as planned")).isFalse();
    hands.fill("stop-cleared-asbestos", " ");
    desk.settleAll();
    assertThat(says("Can't start as planned. Reading hall: adhesive")).isTrue();
    assertThat(tally("crew-whole-site")).isEqualTo("can't start");
    hands.fill("stop-cleared-asbestos", "Quay Laboratory (invented), 2026-11-12, QM-1");
    desk.settleAll();
    assertThat(says("Can't start as planned")).isFalse();
  }

  @Test
  @Tag("long")
  void answers_change_the_advice_on_the_sealer() throws TimeoutException {
    assertThat(says("prefer a two-part topcoat over the sealer")).isTrue();
    hands.choose("sealer-traffic", "no").choose("sealer-wet", "yes");
    assertThat(says("prefer a two-part topcoat over the sealer")).isFalse();
    assertThat(says("Put grit into the last coat")).isTrue();
  }

  @Test
  void answers_on_the_sealer_are_in_the_plan_when_it_is_opened_again() throws TimeoutException {
    hands.choose("sealer-wet", "yes").choose("sealer-sun", "not asked");
    saveAndCloseAndOpenAgain();
    assertThat(hall().use())
        .isEqualTo(new FloorUse(Optional.of(true), Optional.empty(), Optional.of(true)));
    assertThat(says("Put grit into the last coat")).isTrue();
    assertThat(says("Find out whether the sun falls on the floor")).isTrue();
  }

  @Test
  void advice_is_declined_by_keys_alone_and_stands_in_the_scope() throws TimeoutException {
    hands.click("sealer-traffic").press(KeyCode.ESCAPE);
    hands.tabTo("decline-barrier-unknown").press(KeyCode.SPACE);
    assertThat(hall().declined()).containsExactly(Declined.of(AdviceId.BARRIER_UNKNOWN));
    hands.tabTo("declined-by-barrier-unknown").line("K. R.");
    hands.tabTo("declined-on-barrier-unknown").line("2026-11-21");
    desk.settleAll();
    assertThat(inScope())
        .containsExactly(
            "declined by K. R. on Nov\u00a021,\u00a02026",
            "declined by A. Castell (invented) on Nov\u00a020,\u00a02026");
  }

  @Test
  @Tag("long")
  void what_was_declined_is_undone_step_by_step() throws TimeoutException {
    hands.click("decline-sun-fast").fill("declined-by-sun-fast", "K. R.");
    assertThat(hall().declined()).containsExactly(Declined.of(AdviceId.SUN_FAST).withBy("K. R."));
    hands.click("decline-sun-fast");
    assertThat(hall().declined()).isEmpty();
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hall().declined()).containsExactly(Declined.of(AdviceId.SUN_FAST).withBy("K. R."));
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hall().declined()).containsExactly(Declined.of(AdviceId.SUN_FAST));
    hands.press(KeyCode.SHORTCUT, KeyCode.Z);
    assertThat(hall().declined()).isEmpty();
  }

  @Test
  void a_day_that_is_none_is_refused_where_it_was_typed() throws TimeoutException {
    hands.click("decline-sun-fast").fill("declined-on-sun-fast", "tomorrow");
    assertThat(says("Write the day, such as 2026-12-07.")).isTrue();
    assertThat(hall().declined()).containsExactly(Declined.of(AdviceId.SUN_FAST));
  }

  private FloorArea hall() {
    return hands.site().areas().get(0);
  }

  /** How declined advice stands on sheet 8. */
  private List<String> inScope() {
    return DeskUnderTest.on(
        () ->
            Scope.of(desk.room().parts().job().done().orElseThrow().work()).declined().stream()
                .map(Scope.GivenAdvice::status)
                .map(Said::of)
                .toList());
  }

  @Test
  void show_takes_the_canvas_to_an_ignition_source() throws TimeoutException {
    Vec before = middle();
    Node show =
        DeskUnderTest.on(
            () ->
                desk.stage().getScene().getRoot().lookupAll(".button").stream()
                    .filter(b -> b.getAccessibleText() != null)
                    .filter(b -> b.getAccessibleText().contains("water heater: made safe"))
                    .findFirst()
                    .orElseThrow());
    DeskUnderTest.on(
        () -> {
          ((Button) show).fire();
          return null;
        });
    desk.settle();
    assertThat(middle().distanceTo(before)).isGreaterThan(500);
  }

  private Vec middle() {
    return DeskUnderTest.on(() -> hands.slab().viewport().toSite(400, 300));
  }
}
