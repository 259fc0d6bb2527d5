package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.ref.WeakReference;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

class ClosedDeskTest {
  @TempDir Path data;

  @Test
  void a_closed_desk_is_held_by_nothing_though_its_stage_lives_on()
      throws TimeoutException, InterruptedException {
    WeakReference<DeskController> room = closed();
    for (int i = 0; i < 100 && room.get() != null; i++) {
      System.gc();
      Thread.sleep(50);
      WaitForAsyncUtils.waitForFxEvents(2);
    }
    assertThat(room.get()).isNull();
  }

  private WeakReference<DeskController> closed() throws TimeoutException {
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      return new WeakReference<>(desk.room());
    }
  }
}
