package slabwright.inlay.artwork.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.inlay.artwork.DrawnOutline;
import slabwright.inlay.artwork.PaintedPage;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** Of a page of 300 by 200 points; one is 25.4 / 72 mm. */
class PaintedPageTest {
  private static final double POINT = 25.4 / 72;

  /** Red from (30, 20) to (90, 60) as PDF counts, upwards. */
  private static final String RED_BOX = "1 0 0 rg 30 20 60 40 re f ";

  private static PaintedPage painted(String operators, int turn) throws IOException {
    byte[] pdf =
        PdfFile.of(
            operators,
            (document, page) -> {
              page.setMediaBox(new PDRectangle(300, 200));
              page.setRotation(turn);
            });
    return PdfArtworkReader.painted(pdf, "drawing.pdf", 1, 0.01).orThrow();
  }

  private static void assertBox(DrawnOutline area, double x0, double y0, double x1, double y1) {
    Bounds box = Bounds.EMPTY;
    for (Vec v : area.rings().stream().flatMap(r -> r.points().stream()).toList()) {
      box = box.including(v);
    }
    assertThat(box.minX()).isCloseTo(x0 * POINT, within(0.02));
    assertThat(box.minY()).isCloseTo(y0 * POINT, within(0.02));
    assertThat(box.maxX()).isCloseTo(x1 * POINT, within(0.02));
    assertThat(box.maxY()).isCloseTo(y1 * POINT, within(0.02));
  }

  /** A blue line 10 points wide from (150, 100) to (250, 100): 100 by 10 points. */
  @ParameterizedTest
  @ValueSource(ints = {0, 90, 180, 270})
  void areas_lie_as_the_page_was_written_however_it_is_shown(int turn) throws IOException {
    PaintedPage page = painted(RED_BOX + "0 0 1 RG 10 w 150 100 m 250 100 l S", turn);
    assertThat(page.unread()).isEmpty();
    assertThat(page.areas())
        .extracting(DrawnOutline::fill)
        .containsExactly(Optional.of("#ff0000"), Optional.of("#0000ff"));
    assertBox(page.areas().get(0), 30, 140, 90, 180);
    assertBox(page.areas().get(1), 150, 95, 250, 105);
  }

  @Test
  void areas_come_in_paint_order_and_a_clip_cuts_them() throws IOException {
    PaintedPage page = painted(RED_BOX + "q 60 0 300 200 re W n 0 0 1 rg 0 0 300 30 re f Q", 0);
    assertBox(page.areas().get(1), 60, 170, 300, 200);
    double red =
        page.areas().get(0).rings().stream().mapToDouble(r -> Math.abs(r.signedArea())).sum();
    assertThat(red).isCloseTo(60 * 40 * POINT * POINT, within(0.1));
  }

  @Test
  void one_colour_needs_no_areas() throws IOException {
    assertThat(painted(RED_BOX + "1 0 0 RG 10 w 150 100 m 250 100 l S", 0))
        .isEqualTo(PaintedPage.FILLS);
    assertThat(painted("", 0)).isEqualTo(PaintedPage.FILLS);
  }
}
