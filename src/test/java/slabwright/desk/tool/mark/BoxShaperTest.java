package slabwright.desk.tool.mark;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.tool.OverlayScale;
import slabwright.units.UnitSystem;

class BoxShaperTest {
  @Test
  void a_typed_corner_is_seen_before_its_size_is_typed() {
    BoxShaper column =
        new BoxShaper(MarkShape.RECTANGLE, LengthUse.OPENING, () -> UnitSystem.METRIC);
    OverlayScale screen = new OverlayScale(20, UnitSystem.METRIC);
    assertThat(column.over(screen)).isEmpty();
    column.type("2 m, 1 m");
    assertThat(column.over(screen)).isNotEmpty();
    column.type("350 mm");
    assertThat(column.over(screen)).isEmpty();
  }
}
