package slabwright.inlay.artwork.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ColourHistogramTest {
  @Test
  void colors_that_share_their_upper_six_bits_of_each_channel_share_a_cell() {
    int cell = ColourHistogram.cell(0x804020);
    assertThat(ColourHistogram.cell(0x834323)).isEqualTo(cell);
    assertThat(ColourHistogram.cell(0x844020)).isNotEqualTo(cell);
    assertThat(ColourHistogram.cell(0x804420)).isNotEqualTo(cell);
    assertThat(ColourHistogram.cell(0x804024)).isNotEqualTo(cell);
  }

  /** Of 0x80, 0x80 and 0x83 the mean is 0x81, and so for the others. */
  @Test
  void a_cell_is_the_mean_of_its_pixels_and_the_fullest_comes_first() {
    ColourHistogram histogram = new ColourHistogram();
    histogram.add(0xff0000);
    histogram.add(0x804020);
    histogram.add(0x804020);
    histogram.add(0x834323);
    assertThat(histogram.cells())
        .extracting(ColourHistogram.Cell::rgb)
        .containsExactly(0x814121, 0xff0000);
    assertThat(histogram.cells()).extracting(ColourHistogram.Cell::count).containsExactly(3L, 1L);
  }
}
