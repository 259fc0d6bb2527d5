package slabwright.project;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.site.job.FirmMark;
import slabwright.units.Result;

class FirmMarksTest {
  @TempDir Path folder;

  @Test
  void a_large_picture_is_kept_as_a_small_one_that_a_plan_can_hold() {
    FirmMark mark = FirmMarks.read(Path.of("docs/pictures/desk-inlay.png")).orThrow();
    assertThat(Math.max(mark.width(), mark.height())).isEqualTo(FirmMark.LONGEST_SIDE);
    assertThat(FirmMark.of(mark.jpeg(), mark.width(), mark.height())).contains(mark);
  }

  @Test
  void what_is_no_picture_or_not_there_is_refused_in_a_sentence() throws IOException {
    Path text = Files.writeString(folder.resolve("mark.png"), "no picture");
    assertThat(FirmMarks.read(text)).isInstanceOf(Result.Refused.class);
    assertThat(FirmMarks.read(folder.resolve("gone.png"))).isInstanceOf(Result.Refused.class);
  }

  @Test
  void a_plan_can_hold_no_mark_that_is_no_jpeg_or_far_too_large() {
    assertThat(FirmMark.of("not base64!", 10, 10)).isEmpty();
    assertThat(FirmMark.of("iVBORw0KGgo=", 10, 10)).isEmpty();
    assertThat(FirmMark.of("/9j/2Q==", 0, 10)).isEmpty();
    assertThat(FirmMark.of("/9j/2Q==", 10, FirmMark.LONGEST_SIDE + 1)).isEmpty();
  }
}
