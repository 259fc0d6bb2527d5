package slabwright.tape.leastsquares;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** Random rooms, each with one gross error of more than 20 standard deviations. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class BlunderTrials {
  private final int rooms;
  private List<BlunderTrial> trials = List.of();

  BlunderTrials(int rooms) {
    this.rooms = rooms;
  }

  @BeforeAll
  void searchTheRooms() {
    trials = IntStream.range(0, rooms).mapToObj(BlunderTrial::new).toList();
    System.out.printf(
        "%d rooms: %d blunders tellable, %d of them named; %d of the others named as likely, %d of"
            + " these wrong%n",
        rooms,
        count(BlunderTrial::tellable),
        count(t -> t.tellable() && t.told()),
        count(BlunderTrial::likely),
        count(t -> t.likely() && !t.right()));
  }

  private long count(Predicate<BlunderTrial> which) {
    return trials.stream().filter(which).count();
  }

  @Test
  void a_tellable_blunder_is_named_in_more_than_95_of_100_rooms() {
    assertThat(count(t -> t.tellable() && t.told()))
        .isGreaterThan(95 * count(BlunderTrial::tellable) / 100);
  }

  @Test
  void hardly_ever_is_a_good_reading_blamed_as_if_it_were_certain() {
    assertThat(count(t -> t.blames() && !t.right())).isLessThanOrEqualTo(trials.size() / 200);
  }

  @Test
  void an_explanation_called_likely_is_right_in_more_than_95_of_100_rooms() {
    assertThat(count(t -> t.likely() && t.right()))
        .isGreaterThan(95 * count(BlunderTrial::likely) / 100);
  }

  @Test
  void the_sample_holds_blunders_of_both_sorts() {
    assertThat(count(BlunderTrial::tellable)).isBetween(trials.size() / 4L, 3L * trials.size() / 4);
  }
}
