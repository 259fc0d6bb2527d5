package slabwright.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.OutlinePiece;
import slabwright.site.Release;
import slabwright.site.Site;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

class ReleaseArchiveTest {
  @TempDir Path folder;

  private Path plan;
  private ReleaseArchive frozen;

  @BeforeEach
  void graphic() throws IOException {
    plan = folder.resolve("shed.site.json");
    frozen = new ReleaseArchive(plan);
    Files.createDirectories(folder.resolve("art"));
    Files.writeString(folder.resolve("art").resolve("ring.svg"), "<svg/>");
  }

  private Site site() throws IOException {
    String hash = GraphicFiles.hash(folder.resolve("art").resolve("ring.svg"));
    Inlay ring =
        new Inlay(
            "i1",
            "Ring",
            "art/ring.svg",
            hash,
            Spot.mm(2000, 2000),
            Length.mm(900),
            0,
            StencilSpec.forRoll(Length.mm(1220)));
    FloorArea area =
        FloorArea.of(
            "a1",
            "Shed",
            List.of(
                OutlinePiece.wall(Spot.mm(0, 0)),
                OutlinePiece.wall(Spot.mm(4000, 0)),
                OutlinePiece.wall(Spot.mm(0, 4000))));
    Release first = new Release(1, LocalDate.of(2026, 12, 1), "", new TreeMap<>());
    return Site.empty("Shed", UnitSystem.METRIC)
        .withAreas(List.of(area.withInlays(List.of(ring))))
        .withReleases(List.of(first));
  }

  @Test
  void a_frozen_copy_is_a_plan_with_its_graphics() throws IOException {
    frozen.write(site(), 1);
    assertThat(frozen.read(1)).contains(site());
    assertThat(PlanFile.read(folder.resolve("shed-release-1").resolve("shed.site.json")))
        .isEqualTo(Result.ok(site()));
  }

  @Test
  void a_number_is_frozen_once() throws IOException {
    frozen.write(site(), 1);
    assertThatThrownBy(() -> frozen.write(site(), 1))
        .isInstanceOf(FileAlreadyExistsException.class);
    assertThat(frozen.highest()).isEqualTo(1);
  }

  @Test
  void a_missing_graphic_leaves_nothing_frozen() throws IOException {
    Site site = site();
    Files.delete(folder.resolve("art").resolve("ring.svg"));
    assertThatThrownBy(() -> frozen.write(site, 1)).isInstanceOf(NoSuchFileException.class);
    assertThat(frozen.highest()).isZero();
    try (var all = Files.list(folder)) {
      assertThat(all).containsExactly(folder.resolve("art"));
    }
  }

  @Test
  void a_release_is_carried_until_something_changes() throws IOException {
    frozen.write(site(), 1);
    assertThat(frozen.withoutOutdatedReleases(site()).releaseNumber()).isEqualTo(1);
    assertThat(
            frozen
                .withoutOutdatedReleases(site().withUnits(UnitSystem.FEET_INCHES))
                .releaseNumber())
        .isEqualTo(1);
    assertThat(frozen.withoutOutdatedReleases(site().withNote("moved")).releaseNumber()).isZero();
  }

  @Test
  void a_graphic_changed_on_disk_makes_it_a_draft() throws IOException {
    Site site = site();
    frozen.write(site, 1);
    Files.writeString(folder.resolve("art").resolve("ring.svg"), "<svg></svg>");
    assertThat(frozen.isAsIssued(site)).isFalse();
    assertThat(frozen.read(1)).contains(site);
  }

  @Test
  void frozen_copies_go_along_when_the_plan_is_saved_elsewhere() throws IOException {
    frozen.write(site(), 1);
    Path other = folder.resolve("moved").resolve("hall.site.json");
    frozen.copyTo(other, site());
    assertThat(new ReleaseArchive(other).read(1)).contains(site());
  }
}
