package slabwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import slabwright.site.Site;
import slabwright.units.Result;

/** Every plan dropped into {@code sample-plans} must read, save and read back equal. */
class SamplePlansTest {
  static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-plans"))) {
      return files.filter(f -> f.toString().endsWith(".site.json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("samples")
  void a_sample_reads_without_fault(Path plan) {
    assertThat(PlanFile.read(plan)).isInstanceOf(Result.Ok.class);
  }

  @ParameterizedTest
  @MethodSource("samples")
  void a_saved_sample_reads_back_equal(Path plan) {
    Site site = PlanFile.read(plan).orThrow();
    Result<Site> again = PlanFile.parse(PlanFile.write(site));
    assertThat(again).isEqualTo(Result.ok(site));
  }

  @ParameterizedTest
  @MethodSource("samples")
  void a_sample_says_that_it_is_invented(Path plan) {
    Site site = PlanFile.read(plan).orThrow();
    assertThat(site.note()).contains("invented");
  }
}
