package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SortedCopyTest {
  @Test
  void members_and_keys_come_in_their_own_order() {
    assertThat(SortedCopy.of(List.of(3, 1, 2, 1))).containsExactly(1, 2, 3);
    assertThat(SortedCopy.of(Map.of("c", 1, "a", 2, "b", 3)).keySet())
        .containsExactly("a", "b", "c");
    assertThat(SortedCopy.of(Set.of(1, 2))).isEqualTo(Set.of(2, 1));
  }

  @Test
  void a_copy_is_its_own_and_cannot_be_changed() {
    List<Integer> from = new ArrayList<>(List.of(1));
    Set<Integer> copy = SortedCopy.of(from);
    from.add(2);
    assertThat(copy).containsExactly(1);
    assertThatThrownBy(() -> copy.add(3)).isInstanceOf(UnsupportedOperationException.class);
    Map<Integer, String> map = SortedCopy.of(Map.of(1, "a"));
    assertThatThrownBy(() -> map.put(2, "b")).isInstanceOf(UnsupportedOperationException.class);
  }
}
