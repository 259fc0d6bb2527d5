package slabwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slabwright.site.AreaDetails;
import slabwright.site.Doorway;
import slabwright.site.JobDetails;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Site;

/** Plans that were saved by version 1, kept as they were, open and become version 2 on saving. */
class PlanUpgraderTest {
  static List<Path> ofVersionOne() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/plans/version-1"))) {
      return files.sorted().toList();
    }
  }

  private static Site open(String text) {
    return PlanFile.parse(text).orThrow();
  }

  @ParameterizedTest
  @MethodSource("ofVersionOne")
  void a_plan_of_version_1_opens_saves_as_version_2_and_reads_back_equal(Path plan)
      throws IOException {
    String old = Files.readString(plan);
    assertThat(old).contains("\"version\": 1,");
    Site site = open(old);
    String saved = PlanFile.write(site);
    assertThat(saved).contains("\"version\" : 2,");
    assertThat(open(saved)).isEqualTo(site);
  }

  @ParameterizedTest
  @MethodSource("ofVersionOne")
  void a_plan_of_version_1_says_the_same_as_todays_sample(Path plan) throws IOException {
    Path today = Path.of("sample-plans").resolve(plan.getFileName());
    assertThat(open(Files.readString(plan)))
        .isEqualTo(withoutDetails(open(Files.readString(today))));
  }

  /**
   * What version 1 could not say: which stops are cleared, where a doorway leads, whose job it is,
   * how high a trench stands.
   */
  private static Site withoutDetails(Site site) {
    return site.withJob(JobDetails.NONE)
        .withAreas(
            site.areas().stream()
                .map(
                    a ->
                        a.withDetails(AreaDetails.NONE)
                            .withMarks(
                                a.marks().stream().map(PlanUpgraderTest::unmeasured).toList())
                            .withDoorways(
                                a.doorways().stream()
                                    .map(d -> d.withPassage(Doorway.Passage.UNKNOWN))
                                    .toList()))
                .toList());
  }

  private static Mark unmeasured(Mark m) {
    return m.kind() instanceof MarkKind.Trench t
        ? new Mark(m.id(), m.name(), t.withOff(Optional.empty()), m.form(), m.follows())
        : m;
  }
}
