package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.shape.Vec;

class TapedRoomTest {
  @TempDir Path data;

  @Test
  void a_taped_room_keeps_its_readings_when_it_is_moved_and_a_wall_becomes_a_kerb()
      throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      DeskGestures hands = new DeskGestures(desk);
      hands.click("start-tape").line("6 m").line("l 4 m").line("l 6 m").line("l 4 m");
      hands.press(KeyCode.ENTER).fill("area-x", "2 m").fill("area-y", "-1 m");
      hands.clickSlab(5000, -1000).choose("wall-kind", "a kerb");
      hands.fill("diagonal", "A C 7.217 m");
      Vec a = hands.area().outline().get(0).from().vec();
      Vec c = hands.area().outline().get(2).from().vec();
      assertThat(a).isEqualTo(new Vec(2000, -1000));
      assertThat(a.distanceTo(c)).isCloseTo(7214, within(5.0)).isGreaterThan(7211.2);
      assertThat(hands.area().outline().get(0).kind().name()).isEqualTo("KERB");
    }
  }
}
