package slabwright.inlay.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.units.Result;

/** Returned drawings made to overwhelm are refused before they are sorted out. */
class DrawingBudgetTest {
  @TempDir Path folder;

  private Result<ReturnedFile> read(String drawn) throws IOException {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='2000mm' height='2000mm' viewBox='0 0 2000"
            + " 2000'>";
    return ReturnedFile.read(Files.writeString(folder.resolve("x.svg"), svg + drawn + "</svg>"));
  }

  private static void assertRefused(Result<ReturnedFile> read, String because) {
    assertThat(read).isInstanceOf(Result.Refused.class);
    assertThat(((Result.Refused<ReturnedFile>) read).message().toString()).contains(because);
  }

  @ParameterizedTest
  @ValueSource(strings = {"fill='#803020'", "fill='none' stroke='#000'"})
  void an_outline_through_random_points_crosses_itself_too_often(String paint) throws IOException {
    Random random = new Random(5);
    StringBuilder path = new StringBuilder("M");
    for (int i = 0; i < 6000; i++) {
      path.append(
          String.format(
              Locale.ROOT, "%.1f,%.1f ", 2000 * random.nextDouble(), 2000 * random.nextDouble()));
    }
    assertRefused(
        read("<path " + paint + " d='" + path + "Z'/>"), "inlay.crossing-budget.too-many");
  }

  @Test
  void more_outlines_than_are_checked_at_once_are_too_many() throws IOException {
    assertRefused(
        read("<path fill='#803020' d='" + squares(10_001) + "'/>"),
        "inlay.drawing-budget.too-many-outlines");
  }

  @Test
  void more_corners_than_are_checked_at_once_are_too_many() throws IOException {
    assertRefused(
        read("<path fill='#803020' d='M0,0 " + "l1,1 -1,1 ".repeat(100_001) + "'/>"),
        "inlay.drawing-budget.too-many-corners");
  }

  @Test
  void as_many_outlines_as_fit_are_read() throws IOException {
    Result<ReturnedFile> read = read("<path fill='#803020' d='" + squares(10_000) + "'/>");
    assertThat(read.orThrow().pages().get(0).drawing().pieces().get(0).rings()).hasSize(10_000);
  }

  private static String squares(int count) {
    StringBuilder path = new StringBuilder();
    for (int i = 0; i < count; i++) {
      path.append(String.format(Locale.ROOT, "M%d,%dh10v10h-10z", (i % 140) * 14, (i / 140) * 14));
    }
    return path.toString();
  }
}
