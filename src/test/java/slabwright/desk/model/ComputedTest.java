package slabwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import slabwright.desk.model.Computed.Pace;
import slabwright.desk.model.Computed.Truth;

class ComputedTest {
  private final LinkedBlockingQueue<Runnable> home = new LinkedBlockingQueue<>();
  private final CountDownLatch held = new CountDownLatch(1);
  private final List<String> arrived = new ArrayList<>();
  private final List<String> faults = new ArrayList<>();
  private final Signal asks = new Signal();
  private final Queue<Wish<String>> wishes = new ArrayDeque<>();
  private Computed<String, String> value = with(Pace.hurried("test"));

  private Computed<String, String> with(Pace pace) {
    return new Computed<>(
        pace, home::add, this::work, arrived::add, e -> faults.add(e.getMessage()));
  }

  @AfterEach
  void stop() {
    value.close();
  }

  private String work(String key) {
    try {
      if (key.equals("slow")) {
        held.await();
      }
    } catch (InterruptedException e) {
      throw new IllegalStateException("given up", e);
    }
    if (key.equals("bad")) {
      throw new IllegalStateException("broken");
    }
    return key + "!";
  }

  /** Runs what is handed over to the asking thread until nothing more is to come. */
  private void settle() throws InterruptedException {
    while (value.isBusy()) {
      Runnable r = home.poll(10, TimeUnit.SECONDS);
      assertThat(r).as("something handed over").isNotNull();
      r.run();
    }
  }

  private void wish(Wish<String> wish) {
    wishes.add(wish);
    asks.fire();
  }

  private void follow(Pace pace) {
    value.close();
    value = with(pace).follow(wishes::remove, asks);
  }

  private void askThree() throws InterruptedException {
    value.ask("slow");
    value.ask("between");
    value.ask("last");
    held.countDown();
    settle();
  }

  @Test
  void a_patient_one_finishes_what_it_holds_then_skips_to_the_newest() throws Exception {
    value.close();
    value = with(Pace.patient("test"));
    askThree();
    assertThat(arrived).containsExactly("slow!", "last!");
  }

  @Test
  void a_hurried_one_answers_the_newest_alone() throws Exception {
    askThree();
    assertThat(arrived).containsExactly("last!");
    assertThat(faults).isEmpty();
  }

  @Test
  void a_key_is_worked_on_once_until_it_changes() throws Exception {
    follow(Pace.hurried("test"));
    wish(Wish.of("a"));
    settle();
    wish(Wish.of("a"));
    assertThat(value.isBusy()).isFalse();
    wish(Wish.of("b"));
    assertThat(value.truth()).isEqualTo(Truth.BEING_COMPUTED);
    assertThat(value.value()).contains("a!");
    assertThat(value.current()).isEmpty();
    settle();
    assertThat(value.current()).contains("b!");
    assertThat(arrived).containsExactly("a!", "b!");
  }

  @Test
  void what_is_given_up_leaves_an_older_value_and_is_not_begun_again_by_itself() throws Exception {
    follow(Pace.hurried("test"));
    wish(Wish.of("a"));
    settle();
    wish(Wish.of("slow"));
    value.cancel();
    assertThat(value.truth()).isEqualTo(Truth.OLDER);
    assertThat(value.value()).contains("a!");
    wish(Wish.of("slow"));
    assertThat(value.isBusy()).isFalse();
    wish(Wish.asItIs());
    held.countDown();
    wish(Wish.of("slow"));
    settle();
    assertThat(value.current()).contains("slow!");
  }

  @Test
  void a_pause_puts_off_what_is_on_its_way_and_leaves_what_is_there() throws Exception {
    follow(Pace.hurried("test"));
    wish(Wish.of("a"));
    settle();
    wish(Wish.pause());
    assertThat(value.truth()).isEqualTo(Truth.TRUE);
    held.countDown();
    wish(Wish.of("slow"));
    wish(Wish.pause());
    assertThat(value.isBusy()).isTrue();
    wish(Wish.of("slow"));
    settle();
    assertThat(value.current()).contains("slow!");
  }

  @Test
  void a_value_of_another_scope_goes_at_once_even_when_nothing_new_is_begun() throws Exception {
    follow(Pace.hurried("test"));
    wish(Wish.of("a").in("one plan"));
    settle();
    wish(Wish.<String>asItIs().in("one plan"));
    assertThat(value.value()).contains("a!");
    wish(Wish.<String>asItIs().in("another plan"));
    assertThat(value.value()).isEmpty();
    assertThat(value.truth()).isEqualTo(Truth.NONE);
  }

  @Test
  void a_fault_is_told_and_the_older_value_is_said_to_be_older() throws Exception {
    value.ask("a");
    settle();
    value.ask("bad");
    settle();
    assertThat(faults).containsExactly("broken");
    assertThat(value.value()).contains("a!");
    assertThat(value.truth()).isEqualTo(Truth.OLDER);
  }

  @Test
  void its_signal_is_given_when_work_begins_and_when_a_value_is_there() throws Exception {
    List<Truth> seen = new ArrayList<>();
    value.changed().subscribe(() -> seen.add(value.truth()));
    value.ask("a");
    settle();
    assertThat(seen).containsExactly(Truth.BEING_COMPUTED, Truth.TRUE);
  }

  @Test
  void an_older_value_of_a_key_can_be_asked_for_by_its_key() throws Exception {
    value.ask("a");
    settle();
    value.ask("slow");
    assertThat(value.valueOf("a")).contains("a!");
    assertThat(value.valueOf("slow")).isEmpty();
  }
}
