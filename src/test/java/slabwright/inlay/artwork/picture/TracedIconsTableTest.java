package slabwright.inlay.artwork.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The whole table of docs/measured.md; a few of its rows run in every build. */
@Tag("long")
class TracedIconsTableTest {
  private static final int[] SIDES = {200, 400, 800, 1600};
  private static final List<String> NONE = List.of();
  private static final Set<String> ALSO_LARGE = Set.of("heron", "letters", "two-halves");

  @Test
  void every_icon_comes_back_at_most_half_as_far_off_as_a_plain_contour() throws IOException {
    List<TracedIcon> all = all();
    Files.createDirectories(Path.of("target"));
    Files.write(Path.of("target/traced-icons.md"), all.stream().map(TracedIcon::row).toList());
    assertThat(all).allSatisfy(t -> assertThat(t.ratio()).as(t.row()).isLessThanOrEqualTo(0.5));
    assertThat(all)
        .allSatisfy(t -> assertThat(t.ours().p95()).as(t.row()).isLessThanOrEqualTo(t.doubt()));
    assertThat(all)
        .filteredOn(t -> t.side() > 200)
        .allSatisfy(t -> assertThat(t.p95Mm()).as(t.row()).isLessThanOrEqualTo(480.0 / t.side()));
  }

  /** Every icon at every size and kind of the table. */
  static List<TracedIcon> all() throws IOException {
    List<TracedIcon> all = new ArrayList<>();
    for (String name : DrawnIcon.NAMES) {
      DrawnIcon icon = DrawnIcon.named(name);
      for (int side : SIDES) {
        for (String kind : side < 1600 || ALSO_LARGE.contains(name) ? TracedIcon.KINDS : NONE) {
          all.add(TracedIcon.of(icon, side, kind));
        }
      }
    }
    return all;
  }
}
