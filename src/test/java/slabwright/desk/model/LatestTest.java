package slabwright.desk.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class LatestTest {
  private final ExecutorService home = Executors.newSingleThreadExecutor();
  private final CountDownLatch held = new CountDownLatch(1);
  private final CountDownLatch done = new CountDownLatch(1);
  private final List<String> answers = new ArrayList<>();

  @AfterEach
  void stop() {
    home.shutdownNow();
  }

  private String work(String question) {
    try {
      if (question.equals("slow")) {
        held.await();
      }
      return question;
    } catch (InterruptedException e) {
      throw new IllegalStateException("given up", e);
    }
  }

  private void take(String answer) {
    answers.add(answer);
    if (answer.equals("last")) {
      done.countDown();
    }
  }

  private List<String> run(boolean patient) throws Exception {
    try (Latest<String, String> latest =
        new Latest<>("test", patient, home, this::work, this::take, e -> answers.add("fault"))) {
      home.submit(
              () -> {
                latest.ask("slow");
                latest.ask("between");
                latest.ask("last");
              })
          .get();
      held.countDown();
      assertThat(done.await(10, TimeUnit.SECONDS)).isTrue();
      return home.submit(() -> List.copyOf(answers)).get();
    }
  }

  @Test
  void a_patient_one_finishes_what_it_holds_then_skips_to_the_newest() throws Exception {
    assertThat(run(true)).containsExactly("slow", "last");
  }

  @Test
  void an_impatient_one_answers_the_newest_alone() throws Exception {
    assertThat(run(false)).containsExactly("last");
  }
}
