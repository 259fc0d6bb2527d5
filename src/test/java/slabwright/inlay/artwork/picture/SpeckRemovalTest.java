package slabwright.inlay.artwork.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Pictures of letters, one for each pixel; a, b and c are colors. */
class SpeckRemovalTest {
  private static String removed(double least, int specks, String... rows) {
    int w = rows[0].length();
    byte[] label = new byte[w * rows.length];
    for (int i = 0; i < label.length; i++) {
      label[i] = (byte) (rows[i / w].charAt(i % w) - 'a');
    }
    LabelMap map = map(w, rows.length, label);
    assertThat(SpeckRemoval.run(map, least)).isEqualTo(specks);
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < label.length; i++) {
      out.append(i > 0 && i % w == 0 ? "/" : "").append((char) ('a' + map.label()[i]));
    }
    return out.toString();
  }

  private static LabelMap map(int width, int height, byte[] label) {
    return new LabelMap(width, height, label, new int[3]);
  }

  @Test
  void a_spot_smaller_than_the_least_goes_and_one_as_large_stays() {
    assertThat(removed(3, 1, "aaaaa", "abbaa", "aaaaa")).isEqualTo("aaaaa/aaaaa/aaaaa");
    assertThat(removed(2, 0, "aaaaa", "abbaa", "aaaaa")).isEqualTo("aaaaa/abbaa/aaaaa");
  }

  @Test
  void a_spot_takes_the_color_that_it_touches_most_along_its_sides() {
    assertThat(removed(2, 1, "acc", "abc", "acc")).isEqualTo("acc/acc/acc");
  }

  @Test
  void pixels_that_meet_at_corners_are_one_spot() {
    assertThat(removed(2, 0, "baaa", "abaa", "aaaa")).isEqualTo("baaa/abaa/aaaa");
    assertThat(removed(3, 1, "baaa", "abaa", "aaaa")).isEqualTo("aaaa/aaaa/aaaa");
  }

  @Test
  void the_left_and_the_right_side_of_a_picture_do_not_meet() {
    assertThat(removed(2, 2, "aaab", "baaa")).isEqualTo("aaaa/aaaa");
  }

  @Test
  void a_picture_of_one_color_keeps_it() {
    assertThat(removed(9, 0, "bb", "bb")).isEqualTo("bb/bb");
  }
}
