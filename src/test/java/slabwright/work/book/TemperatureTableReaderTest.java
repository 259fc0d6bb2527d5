package slabwright.work.book;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.units.Message;

class TemperatureTableReaderTest {
  private static final Message SUBJECT = Message.of("work.held.protection");

  private static TemperatureTable read(String text) {
    return TemperatureTableReader.read(SUBJECT, text).orThrow();
  }

  /** 77 °F is 25 °C; half way from 6 h to 3 h are 4 1/2 h. */
  @Test
  void between_its_entries_a_table_runs_straight_in_any_order_and_unit() {
    TemperatureTable table = read("77 F: 3 h, 15 C: 6 h");
    assertThat(table.at(15).maybe()).contains(Duration.ofHours(6));
    assertThat(table.at(20).maybe()).contains(Duration.ofMinutes(270));
    assertThat(table.at(25).maybe()).contains(Duration.ofHours(3));
    assertThat(table.longest()).isEqualTo(Duration.ofHours(6));
  }

  @Test
  void outside_its_entries_a_table_says_nothing() {
    assertThat(read("15 C: 6 h, 25 C: 3 h").at(14.9).maybe()).isEmpty();
    assertThat(read("15 C: 6 h, 25 C: 3 h").at(25.1).maybe()).isEmpty();
  }

  @Test
  void a_time_without_a_temperature_holds_at_any() {
    assertThat(read("4 h").at(-5).maybe()).contains(Duration.ofHours(4));
  }

  @ParameterizedTest
  @ValueSource(strings = {"15 C: 6: 3", "15: 6 h", "15 C: soon", "15 C: 6 h,", "soon"})
  void what_is_no_table_is_refused(String text) {
    assertThat(TemperatureTableReader.read(SUBJECT, text).isOk()).isFalse();
  }

  /** 59 °F are 15 °C: which of the two times holds nobody could say. */
  @Test
  void a_table_that_names_a_temperature_twice_is_refused() {
    assertThat(TemperatureTableReader.read(SUBJECT, "15 C: 6 h, 59 F: 8 h, 25 C: 3 h").isOk())
        .isFalse();
  }
}
