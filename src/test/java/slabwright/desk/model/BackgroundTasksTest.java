package slabwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

class BackgroundTasksTest {
  private final BlockingQueue<Runnable> home = new LinkedBlockingQueue<>();
  private final Desk desk = new Desk();
  private final BackgroundTasks errands = new BackgroundTasks(desk, home::add);
  private final List<String> told = new ArrayList<>();

  @AfterEach
  void close() {
    errands.close();
  }

  private void settle() throws InterruptedException {
    while (errands.isBusy()) {
      Runnable next = home.poll(10, TimeUnit.SECONDS);
      assertThat(next).as("work comes home").isNotNull();
      next.run();
    }
  }

  private BackgroundTasks.BackgroundTask<String> errand(BackgroundTasks.TaskBody<String> work) {
    return new BackgroundTasks.BackgroundTask<>(
        trial("working"), why -> new Message("trial.failed", List.of(why)), work, told::add);
  }

  private static Message trial(String key) {
    return new Message("trial." + key, List.of());
  }

  private Optional<Message> refused() {
    return desk.refusal().map(Refusal::message);
  }

  @Test
  void what_came_of_work_is_told_in_order() throws InterruptedException {
    errands.run(errand(s -> Result.ok("one")));
    errands.run(errand(s -> Result.ok("two")));
    settle();
    assertThat(told).containsExactly("one", "two");
    assertThat(desk.refusal()).isEmpty();
  }

  @Test
  void given_up_half_way_nothing_is_told_and_the_next_is_done() throws InterruptedException {
    CountDownLatch begun = new CountDownLatch(1);
    errands.run(
        errand(
            s -> {
              s.report(0.5);
              begun.countDown();
              while (!s.isCancelled()) {
                Thread.onSpinWait();
              }
              s.report(0.6);
              return Result.ok("one");
            }));
    errands.run(errand(s -> Result.ok(String.valueOf(Thread.currentThread().isInterrupted()))));
    assertThat(begun.await(10, TimeUnit.SECONDS)).isTrue();
    assertThat(errands.share()).isEqualTo(0.5);
    errands.cancel();
    settle();
    assertThat(told).containsExactly("false");
    assertThat(desk.refusal()).isEmpty();
  }

  @Test
  void a_broken_file_and_a_refusal_are_each_one_sentence() throws InterruptedException {
    errands.run(
        errand(
            s -> {
              throw new IOException("disk full");
            }));
    settle();
    assertThat(refused()).contains(new Message("trial.failed", List.of("disk full")));
    errands.run(errand(s -> Result.refused(trial("impossible"))));
    settle();
    assertThat(refused()).contains(trial("impossible"));
    assertThat(told).isEmpty();
  }

  @Test
  void a_fault_of_the_program_is_not_hidden() throws InterruptedException {
    errands.run(
        errand(
            s -> {
              throw new IllegalStateException("broken");
            }));
    settle();
    assertThat(refused())
        .contains(
            Message.of("desk.model.fault.task", trial("working"), "IllegalStateException: broken"));
  }
}
