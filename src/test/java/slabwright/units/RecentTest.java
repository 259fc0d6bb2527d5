package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class RecentTest {
  private final Recent<String, Integer> recent = new Recent<>(2);
  private final AtomicInteger made = new AtomicInteger();

  @Test
  void a_value_is_made_once() {
    assertThat(recent.get("a", made::incrementAndGet)).isEqualTo(1);
    assertThat(recent.get("a", made::incrementAndGet)).isEqualTo(1);
  }

  @Test
  void what_was_asked_for_longest_ago_goes_first() {
    recent.get("a", made::incrementAndGet);
    recent.get("b", made::incrementAndGet);
    recent.get("a", made::incrementAndGet);
    recent.get("c", made::incrementAndGet);
    assertThat(recent.get("a", made::incrementAndGet)).isEqualTo(1);
    assertThat(recent.get("b", made::incrementAndGet)).isEqualTo(4);
  }

  @Test
  void what_was_given_up_is_thrown_and_made_again_when_asked_for() {
    assertThatThrownBy(
            () ->
                recent.get(
                    "a",
                    () -> {
                      throw new CancellationException();
                    }))
        .isInstanceOf(CancellationException.class);
    assertThat(recent.get("a", made::incrementAndGet)).isEqualTo(1);
  }

  @Test
  void one_that_waits_for_a_computation_given_up_makes_the_value_itself() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch waiting = new CountDownLatch(1);
    ExecutorService other = Executors.newSingleThreadExecutor();
    try {
      Future<Integer> first =
          other.submit(
              () ->
                  recent.get(
                      "a",
                      () -> {
                        begun.countDown();
                        await(waiting);
                        throw new CancellationException();
                      }));
      begun.await();
      waiting.countDown();
      assertThat(recent.get("a", made::incrementAndGet)).isEqualTo(1);
      assertThatThrownBy(first::get).hasCauseInstanceOf(CancellationException.class);
    } finally {
      other.shutdownNow();
    }
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
