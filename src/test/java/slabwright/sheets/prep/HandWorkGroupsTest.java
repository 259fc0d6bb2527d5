package slabwright.sheets.prep;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import slabwright.shape.Vec;

class HandWorkGroupsTest {
  private static HandWorkItem column(int i) {
    return HandWorkItem.edge(
        "foot of column " + i, "foot of column", 2000, 180_000, new Vec(i, 0), new Vec(0, 1));
  }

  private static HandWorkItem pocket() {
    return HandWorkItem.piece("pocket", "pocket", 10_000, Vec.ZERO);
  }

  @Test
  void many_of_a_kind_in_a_row_are_one_row_and_a_few_stay_apart() {
    List<HandWorkItem> items = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      items.add(column(i));
    }
    for (int i = 0; i < 4; i++) {
      items.add(pocket());
    }
    assertThat(HandWorkGroups.of(items)).extracting(List::size).containsExactly(5, 1, 1, 1, 1);
  }

  @Test
  void what_does_not_follow_each_other_is_never_told_as_one_range_of_numbers() {
    List<HandWorkItem> items = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      items.add(column(i));
      items.add(pocket());
    }
    assertThat(HandWorkGroups.of(items)).hasSize(12);
  }
}
