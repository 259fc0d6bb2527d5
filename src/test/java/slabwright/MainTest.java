package slabwright;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class MainTest {
  @Test
  void nothing_and_a_plan_by_itself_open_the_desk() {
    assertThat(Main.isForDesk()).isTrue();
    assertThat(Main.isForDesk("jobs/tram-hall.site.json")).isTrue();
  }

  @Test
  void a_command_is_for_the_command_line() {
    assertThat(Main.isForDesk("tally", "jobs/tram-hall.site.json")).isFalse();
    assertThat(Main.isForDesk("--version")).isFalse();
  }
}
