package slabwright.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.inlay.PlacedInlay;
import slabwright.site.Move;
import slabwright.site.Site;
import slabwright.site.edit.Edit;
import slabwright.site.edit.MarkEdit;
import slabwright.store.PlanFile;
import slabwright.work.AreaResult;

class AreaCacheTest {
  private static final Path SAMPLES = Path.of("sample-plans");
  private static final String DISC =
      "<svg xmlns='http://www.w3.org/2000/svg' width='100' height='100'>"
          + "<circle cx='50' cy='50' r='50' fill='#204060'/></svg>";
  private static final String HALL = "reading-hall";

  @TempDir Path folder;
  private Site site;
  private final AreaCache cache = new AreaCache();

  @BeforeEach
  void the_tram_hall_with_a_plain_disc_for_its_graphic() throws IOException {
    site = PlanFile.read(SAMPLES.resolve("tram-hall.site.json")).orThrow();
    Files.writeString(folder.resolve("heron-ring.svg"), DISC);
  }

  private List<AreaResult> computed(Site of) throws IOException {
    return cache.of(of, folder, () -> false);
  }

  private static PlacedInlay heron(List<AreaResult> areas) {
    return areas.get(0).inlays().get(0);
  }

  private Site moved(String mark, double dx, double dy) {
    Edit edit = new MarkEdit.MoveAll(HALL, Set.of(mark), Move.by(dx, dy));
    return edit.apply(site).orThrow();
  }

  @Test
  void what_moves_beyond_the_reach_of_the_spray_leaves_the_inlay_as_it_was() throws IOException {
    PlacedInlay before = heron(computed(site));
    Site nudged = moved("booth-1", 0, 76.2);
    assertThat(heron(computed(nudged))).isSameAs(before);
  }

  @Test
  void an_inlay_kept_is_the_one_that_a_fresh_computation_gives() throws IOException {
    computed(site);
    Site nudged = moved("booth-1", 0, 76.2);
    PlacedInlay fresh = heron(new AreaCache().of(nudged, folder, () -> false));
    PlacedInlay kept = heron(computed(nudged));
    assertThat(kept.plan().masking()).isEqualTo(fresh.plan().masking());
    assertThat(kept.plan().findings()).isEqualTo(fresh.plan().findings());
  }

  @Test
  void what_moves_on_to_the_inlay_has_it_worked_out_again() throws IOException {
    PlacedInlay before = heron(computed(site));
    double x = before.inlay().middle().vec().x();
    double y = before.inlay().middle().vec().y();
    double far = site.areas().get(0).mark("column-1").orElseThrow().form().spots().get(0).vec().x();
    double up = site.areas().get(0).mark("column-1").orElseThrow().form().spots().get(0).vec().y();
    PlacedInlay after = heron(computed(moved("column-1", x - far, y - up)));
    assertThat(after).isNotSameAs(before);
    assertThat(after.plan().masking()).isNotEqualTo(before.plan().masking());
  }

  @Test
  void a_graphic_changed_on_disk_is_read_again() throws IOException {
    PlacedInlay before = heron(computed(site));
    Path file = folder.resolve("heron-ring.svg");
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_000_000_000_000L));
    assertThat(heron(computed(site))).isNotSameAs(before);
  }

  @Test
  void an_area_that_an_edit_left_alone_is_not_taken_off_again() throws IOException {
    List<AreaResult> before = computed(site);
    List<AreaResult> after = computed(moved("booth-1", 0, 76.2));
    assertThat(after.get(1).takeoff()).isSameAs(before.get(1).takeoff());
    assertThat(after.get(0).takeoff()).isNotSameAs(before.get(0).takeoff());
  }
}
