package slabwright.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever is fed, the answer is the thing or a clear sentence: nothing is thrown, nothing takes
 * longer than five seconds or more than 512 MB.
 */
class FuzzTest {
  private static final int LONG_RUN = Integer.getInteger("slabwright.fuzz.count", 5000);
  private static final int LONG_FIRST = Integer.getInteger("slabwright.fuzz.first", 1_000_000);

  @TempDir Path scratch;

  @ParameterizedTest
  @CsvSource({
    "PLAN, 100",
    "JOB, 1",
    "TAPE, 50",
    "BOOK, 4",
    "FORECAST, 200",
    "SVG, 40",
    "STENCIL, 2",
    "PDF, 40",
    "PROOF_SVG, 20",
    "PROOF_PDF, 40",
    "PICTURE, 40",
    "UNDERLAY, 40"
  })
  void spoilt_inputs_are_taken_or_refused_in_a_sentence(FuzzKind kind, int count)
      throws IOException, InterruptedException {
    assertThat(new FuzzRun(kind.target(scratch)).failures(0, count)).isEmpty();
  }

  /** Each was thrown at or took too long once; its name says by which way in. */
  static Stream<Path> failedOnce() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/fuzz"))) {
      return files.sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("failedOnce")
  void inputs_that_failed_once_do_so_no_more(Path input) throws IOException, InterruptedException {
    String name = input.getFileName().toString();
    FuzzKind kind = FuzzKind.valueOf(name.substring(0, name.indexOf('-')));
    assertThat(new FuzzRun(kind.target(scratch)).failure(Files.readAllBytes(input))).isEmpty();
  }

  @ParameterizedTest
  @Tag("long")
  @EnumSource(FuzzKind.class)
  void many_spoilt_inputs_are_so_within_512_megabytes(FuzzKind kind)
      throws IOException, InterruptedException {
    Process run =
        new ProcessBuilder(
                List.of(
                    ProcessHandle.current().info().command().orElse("java"),
                    "-Xmx512m",
                    "-Djava.awt.headless=true",
                    "-cp",
                    System.getProperty("java.class.path"),
                    FuzzProcess.class.getName(),
                    kind.name(),
                    String.valueOf(LONG_FIRST),
                    String.valueOf(LONG_RUN)))
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String said = new String(run.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(said.strip()).isEqualTo("done");
    assertThat(run.waitFor()).isZero();
  }
}
