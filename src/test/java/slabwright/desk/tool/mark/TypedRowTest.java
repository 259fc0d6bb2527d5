package slabwright.desk.tool.mark;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slabwright.units.Length;
import slabwright.units.Result;

class TypedRowTest {
  @Test
  void size_gap_and_distance_off_the_wall_are_read_together() {
    TypedRow row = TypedRow.read("3' 3\" x 4' 5\" gap 10\" off 8 1/2\"", Length::parse).orThrow();
    assertThat(row.size().orElseThrow().first().mm()).isEqualTo(990.6);
    assertThat(row.size().orElseThrow().second().mm()).isEqualTo(1346.2);
    assertThat(row.gap().orElseThrow().mm()).isEqualTo(254);
    assertThat(row.off().orElseThrow().mm()).isEqualTo(215.9);
  }

  @Test
  void what_is_left_out_stays_as_it_was() {
    TypedRow row = TypedRow.read("gap 0.3 m", Length::parse).orThrow();
    assertThat(row.size()).isEmpty();
    assertThat(row.gap().orElseThrow().mm()).isEqualTo(300);
    assertThat(TypedRow.read("5' x 28\"", Length::parse).orThrow().gap()).isEmpty();
  }

  @Test
  void a_gap_without_unit_is_refused() {
    assertThat(TypedRow.read("gap 10", Length::parse)).isInstanceOf(Result.Refused.class);
  }
}
