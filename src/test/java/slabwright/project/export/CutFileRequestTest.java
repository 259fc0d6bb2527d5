package slabwright.project.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.project.TaskProgress;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.OutlinePiece;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

class CutFileRequestTest {
  private static final TaskProgress WATCHED_BY_NOBODY =
      new TaskProgress() {
        @Override
        public void report(double share) {}

        @Override
        public boolean isCancelled() {
          return false;
        }
      };

  @TempDir Path folder;

  private static FloorArea area(String id, String name, double left) {
    Inlay arrow =
        new Inlay(
            "i1",
            "Arrow",
            "arrow.svg",
            "",
            Spot.mm(left + 2_000, 2_000),
            Length.mm(500),
            0,
            StencilSpec.forRoll(Length.mm(1220)));
    return FloorArea.of(
            id,
            name,
            List.of(
                OutlinePiece.wall(Spot.mm(left, 0)),
                OutlinePiece.wall(Spot.mm(left + 4_000, 0)),
                OutlinePiece.wall(Spot.mm(left + 4_000, 4_000)),
                OutlinePiece.wall(Spot.mm(left, 4_000))))
        .withInlays(List.of(arrow));
  }

  private List<String> names(FloorArea... areas) throws IOException {
    Files.writeString(
        folder.resolve("arrow.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 100 100'>"
            + "<path d='M0 0 H100 L50 90 Z'/></svg>");
    Site site = Site.empty("Shed", UnitSystem.METRIC).withAreas(List.of(areas));
    Path plan = folder.resolve("shed.site.json");
    return new CutFileRequest(
            site, plan, Optional.empty(), false, Words.english(), Clock.systemUTC())
        .files(WATCHED_BY_NOBODY)
        .orThrow()
        .names();
  }

  @Test
  void the_cut_files_of_one_inlay_carry_its_name_alone() throws IOException {
    assertThat(names(area("hall", "Hall", 0)))
        .contains("shed-draft/cut-hall_i1/arrow_draft_panel-A.svg");
  }

  @Test
  void inlays_of_two_areas_that_share_id_and_name_give_files_that_tell_their_area()
      throws IOException {
    assertThat(names(area("hall", "Hall", 0), area("bar", "Bar", 9_000)))
        .contains(
            "shed-draft/cut-hall_i1/arrow-hall_draft_panel-A.svg",
            "shed-draft/cut-bar_i1/arrow-bar_draft_panel-A.svg");
  }
}
