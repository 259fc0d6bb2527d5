package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class PartFaultsTest {
  private static final Message PART = Message.of("units.bare-unit.feet");

  private final PartFaults faults = new PartFaults();

  private static String broken() {
    throw new IllegalStateException("no such face");
  }

  private static String unread() throws IOException {
    throw new IOException();
  }

  @Test
  void a_part_that_is_made_leaves_no_fault() throws IOException {
    assertThat(faults.make(PART, true, () -> "made", () -> "empty")).isEqualTo("made");
    assertThat(faults.makeOfFiles(PART, true, () -> "read", () -> "empty")).isEqualTo("read");
    assertThat(faults.all()).isEmpty();
  }

  @Test
  void a_part_that_breaks_gives_what_stands_in_its_place_and_is_told() {
    assertThat(faults.make(PART, false, PartFaultsTest::broken, () -> "empty")).isEqualTo("empty");
    assertThat(faults.makeOfFiles(PART, false, PartFaultsTest::unread, () -> "none"))
        .isEqualTo("none");
    assertThat(faults.all())
        .containsExactly(
            new PartFaults.PartFault(PART, false, "IllegalStateException: no such face"),
            new PartFaults.PartFault(PART, false, "IOException"));
    assertThat(faults.all().get(1).sentence())
        .isEqualTo(Message.of("units.part-faults.not-made", PART, "IOException"));
  }

  @Test
  void what_somebody_may_come_to_harm_by_is_told_first() {
    faults.make(PART, false, PartFaultsTest::broken, () -> "");
    faults.addAll(List.of(new PartFaults.PartFault(PART, true, "air")));
    assertThat(faults.all()).extracting(PartFaults.PartFault::safety).containsExactly(true, false);
  }

  @Test
  void a_work_given_up_is_no_fault() {
    assertThatThrownBy(
            () ->
                faults.make(
                    PART,
                    false,
                    () -> {
                      throw new CancellationException();
                    },
                    () -> ""))
        .isInstanceOf(CancellationException.class);
    assertThat(faults.all()).isEmpty();
  }
}
