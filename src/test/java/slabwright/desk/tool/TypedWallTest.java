package slabwright.desk.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.units.Length;
import slabwright.units.Result;

class TypedWallTest {
  @ParameterizedTest
  @CsvSource({
    "4 m, , 4000",
    "r 4 m, -90, 4000",
    "l 4 m, 90, 4000",
    "s 4000 mm, 0, 4000",
    "r30 4 m, -30, 4000",
    "r30° 4 m, -30, 4000",
    "l 45° 4 m, 45, 4000",
    "l22.5 10', 22.5, 3048",
    "r 24' 6\", -90, 7467.6"
  })
  void a_wall_is_read_with_or_without_its_turn(String line, Double turn, double mm) {
    TypedWall read = TypedWall.read(line, Length::parse).orThrow();
    assertThat(read.turn())
        .isEqualTo(turn == null ? OptionalDouble.empty() : OptionalDouble.of(turn));
    assertThat(read.length().mm()).isEqualTo(mm);
  }

  @Test
  void a_line_may_begin_with_its_turn() {
    TypedWall line = TypedWall.read("l 12' 3\"", Length::parse).orThrow();
    assertThat(line.turn()).hasValue(90);
    assertThat(line.length().typed()).isEqualTo("12' 3\"");
    assertThat(TypedWall.read("r45 3 m", Length::parse).orThrow().turn()).hasValue(-45);
    assertThat(TypedWall.read("24' 6\"", Length::parse).orThrow().turn()).isEmpty();
  }

  @Test
  void a_line_without_a_unit_is_refused() {
    assertThat(TypedWall.read("r 12", Length::parse)).isInstanceOf(Result.Refused.class);
  }
}
