package slabwright.project.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import org.junit.jupiter.api.Test;

class BackgroundWriterTest {
  private final BlockingQueue<Runnable> home = new LinkedBlockingQueue<>();
  private final BackgroundWriter writer = new BackgroundWriter("test", home::add);
  private final List<String> written = new CopyOnWriteArrayList<>();
  private final List<String> told = new CopyOnWriteArrayList<>();
  private final CountDownLatch slow = new CountDownLatch(1);

  private void ask(String key, String what) {
    writer.write(
        key,
        () -> {
          written.add(what);
          return what;
        },
        told::add,
        told::add);
  }

  /** Something that is being written for as long as nobody lets it go on. */
  private void askForSomethingSlow() {
    CountDownLatch begun = new CountDownLatch(1);
    writer.write(
        "slow",
        () -> {
          begun.countDown();
          await(slow);
          written.add("slow");
          return "slow";
        },
        told::add,
        told::add);
    await(begun);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void the_last_asked_under_a_key_wins_and_the_order_of_asking_is_kept() {
    askForSomethingSlow();
    ask("plan", "plan as it was");
    ask("tape", "tape");
    ask("plan", "plan as it is");
    slow.countDown();
    writer.close();
    assertThat(written).containsExactly("slow", "tape", "plan as it is");
    assertThat(told).containsExactly("slow", "tape", "plan as it is");
  }

  @Test
  void closing_waits_for_what_is_being_written_and_tells_it() {
    askForSomethingSlow();
    assertThat(writer.isBusy()).isTrue();
    slow.countDown();
    writer.close();
    assertThat(told).containsExactly("slow");
    assertThat(writer.isBusy()).isFalse();
  }

  @Test
  void nothing_is_told_but_on_the_asking_thread() throws InterruptedException {
    ask("a", "a");
    Runnable tell = home.take();
    assertThat(told).isEmpty();
    tell.run();
    assertThat(told).containsExactly("a");
    writer.close();
  }

  @Test
  void a_failure_is_told_and_what_comes_after_is_still_written() {
    writer.write(
        "full",
        () -> {
          throw new IOException("no space left");
        },
        done -> told.add("done"),
        told::add);
    ask("b", "b");
    writer.close();
    assertThat(told).containsExactly("no space left", "b");
  }

  @Test
  void once_closed_nothing_is_written() {
    writer.close();
    ask("late", "late");
    assertThat(written).isEmpty();
    assertThat(writer.isBusy()).isFalse();
  }
}
