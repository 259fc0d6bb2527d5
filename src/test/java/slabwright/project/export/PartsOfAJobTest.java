package slabwright.project.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.project.RefusedInput;
import slabwright.project.SiteResult;
import slabwright.project.UsableAreas;
import slabwright.sheets.page.PaperSize;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.Site;
import slabwright.store.PlanFile;
import slabwright.units.Message;
import slabwright.units.PartFaults;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/** A fault in one part of a job is said, and the other parts are made all the same. */
class PartsOfAJobTest {
  private static final Path PLAN = Path.of("sample-plans/bike-workshop.site.json");
  private static final Words WORDS = Words.english();
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

  private static Site site;
  private static SiteResult whole;

  @TempDir Path folder;

  @BeforeAll
  static void work_the_sample_out() throws IOException {
    site = PlanFile.read(PLAN).orThrow();
    whole = SiteResult.compute(site, PLAN, () -> false).orThrow();
  }

  /** The same with an area of which nobody knows the machines' ways. */
  private static SiteResult withoutWays() {
    List<AreaResult> areas =
        whole.areas().stream()
            .map(a -> new AreaResult(a.takeoff(), null, a.inlays(), a.refused()))
            .toList();
    return new SiteResult(whole.site(), whole.folder(), areas, whole.work());
  }

  private JobFiles.Added make(SiteResult result) throws IOException, RefusedInput {
    OutFolder out = new OutFolder(folder);
    JobFiles.Added added =
        new JobFiles(
                result,
                PLAN,
                Optional.empty(),
                PaperSize.TABLOID,
                true,
                false,
                WORDS,
                Optional.empty(),
                CLOCK)
            .addTo(out);
    out.commit();
    return added;
  }

  @Test
  void what_a_fault_ends_is_said_and_the_index_tells_it_and_all_else_is_written()
      throws IOException, RefusedInput {
    JobFiles.Added added = make(withoutWays());
    assertThat(added.faults())
        .extracting(PartFaults.PartFault::part)
        .contains(Message.of("project.guarded-files.file", "tally.json"));
    assertThat(folder.resolve("tally.json")).doesNotExist();
    assertThat(folder.resolve("work.json")).exists();
    assertThat(folder.resolve("quantities.csv")).exists();
    assertThat(folder.resolve("sheets.pdf")).exists();
    assertThat(folder.resolve("4-fire-and-safety.pdf")).exists();
    String prep = WORDS.say("sheets.prep-sheet.poster");
    assertThat(Files.readString(folder.resolve("index.html")))
        .contains(WORDS.say("project.packet-index.missing"), prep);
  }

  @Test
  void an_area_that_a_fault_ends_is_left_out_and_the_papers_name_it() throws IOException {
    FloorArea good = site.areas().get(0);
    Form spot = new Form.Place(good.outline().get(0).from());
    FloorArea bad =
        FloorArea.of("void", "Void", good.outline())
            .withMarks(List.of(Mark.of("m", "mark of no kind", null, spot)));
    Site two = site.withAreas(List.of(good, bad));
    UsableAreas usable = UsableAreas.compute(two, PLAN, WORDS).orThrow();
    assertThat(usable.isWhole()).isFalse();
    assertThat(usable.faults())
        .extracting(PartFaults.PartFault::part)
        .containsExactly(Message.of("project.usable-areas.area", "Void"));
    assertThat(usable.result().site().note())
        .isEqualTo(WORDS.say("project.usable-areas.note", "Void"));
    assertThat(usable.result().areas()).hasSize(1);
  }

  @Test
  void an_index_of_whole_papers_tells_nothing_missing() {
    assertThat(new PacketIndex(site, LocalDate.now(CLOCK), List.of(), List.of(), WORDS).html())
        .doesNotContain("alert");
  }
}
