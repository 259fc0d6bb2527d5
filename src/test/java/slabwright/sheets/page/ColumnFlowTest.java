package slabwright.sheets.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;
import slabwright.drawing.Text;
import slabwright.drawing.TextBox;

class ColumnFlowTest {
  private static final PageFrame PAGE = PageFrame.of(PaperSize.LETTER);

  private static TableBlock table(int rows) {
    List<List<TableCell>> all = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      all.add(List.of(TableCell.of("row " + i), TableCell.of(Integer.toString(i))));
    }
    return new TableBlock(
        List.of(TableColumn.words("what"), TableColumn.number("how many")),
        all,
        List.of(TableCell.of("Total"), TableCell.of("all")));
  }

  private static List<String> words(List<Ink> inks) {
    return inks.stream().filter(Text.class::isInstance).map(i -> ((Text) i).words()).toList();
  }

  @Property(tries = 200)
  void every_row_is_set_once_and_inside_the_page(@ForAll @IntRange(min = 1, max = 150) int rows) {
    List<List<Ink>> pages =
        ColumnLayout.whole(PAGE, 2, List.of(new Heading("A table"), table(rows)));
    List<String> all = pages.stream().flatMap(p -> words(p).stream()).toList();
    for (int i = 0; i < rows; i++) {
      assertThat(all).containsOnlyOnce("row " + i);
    }
    for (List<Ink> page : pages) {
      Drawing drawing = Drawing.paper(PAGE.paper().width(), PAGE.paper().height(), page);
      for (TextBox box : TextBox.of(drawing)) {
        assertThat(PAGE.body().grown(0.01).including(box.bounds()))
            .isEqualTo(PAGE.body().grown(0.01));
      }
    }
  }

  @Test
  void a_table_that_goes_on_shows_its_head_again_and_its_total_once() {
    List<List<Ink>> pages = ColumnLayout.whole(PAGE, 1, List.of(table(60)));
    assertThat(pages).hasSizeGreaterThan(1);
    assertThat(pages).allSatisfy(p -> assertThat(words(p)).contains("how many"));
    List<String> last = words(pages.get(pages.size() - 1));
    assertThat(last).containsSubsequence("row 59", "Total");
  }

  @Test
  void a_heading_is_never_left_alone_at_the_foot() {
    for (int rows = 20; rows < 45; rows++) {
      List<List<Ink>> pages =
          ColumnLayout.whole(PAGE, 1, List.of(table(rows), new Heading("Next"), table(3)));
      for (List<Ink> page : pages) {
        List<String> words = words(page);
        assertThat(words.get(words.size() - 1)).as("%d rows", rows).isNotEqualTo("Next");
      }
    }
  }

  @Test
  void a_key_is_never_parted_over_two_pages() {
    List<KeyBlock.Entry> entries =
        IntStream.range(0, 6).mapToObj(i -> KeyBlock.ringed("" + i, "sign " + i)).toList();
    for (int rows = 15; rows < 40; rows++) {
      List<List<Ink>> pages =
          ColumnLayout.whole(
              PAGE, 1, List.of(table(rows), new Heading("Key"), KeyBlock.of(entries)));
      List<String> with =
          pages.stream()
              .map(ColumnFlowTest::words)
              .filter(w -> w.contains("Key") || w.stream().anyMatch(t -> t.startsWith("sign")))
              .findFirst()
              .orElseThrow();
      assertThat(with).as("%d rows", rows).contains("Key", "sign 0", "sign 5");
    }
  }

  @Test
  void a_narrow_table_wraps_its_words_and_cuts_none() {
    TableBlock t =
        TableBlock.of(
            List.of(TableColumn.words("a"), TableColumn.number("b")),
            List.of(
                List.of(
                    TableCell.of("a long name that needs two lines"), TableCell.of("12,345.6"))));
    List<Ink> inks =
        t.slices(TypeSizes.of(PaperSize.A4), 45).stream().flatMap(s -> s.inks().stream()).toList();
    assertThat(String.join(" ", words(inks))).contains("a long", "two lines", "12,345.6");
  }

  /** A workshop's fourteenth page said no more than how a stencil is pulled up. */
  @Test
  void a_last_page_of_a_line_is_spared_by_closer_lines_and_one_of_many_is_not() {
    PageFrame page = PageFrame.portrait(PaperSize.A4);
    int fits =
        IntStream.iterate(1, n -> n + 1)
            .filter(n -> ColumnLayout.whole(page, 1, lines(n + 1)).size() == 2)
            .findFirst()
            .orElseThrow();
    assertThat(ColumnLayout.whole(page, 1, lines(fits + 1))).hasSize(2);
    assertThat(ColumnLayout.saving(page, lines(fits + 1)))
        .singleElement()
        .satisfies(inks -> assertThat(inks).hasSize(fits + 1));
    assertThat(ColumnLayout.saving(page, lines(fits)))
        .isEqualTo(ColumnLayout.whole(page, 1, lines(fits)));
    assertThat(ColumnLayout.saving(page, lines(fits + 20)))
        .isEqualTo(ColumnLayout.whole(page, 1, lines(fits + 20)));
  }

  private static List<Paragraph> lines(int count) {
    return IntStream.range(0, count).mapToObj(i -> new Paragraph("line " + i)).toList();
  }

  /** Rows of a short table keep together; they ran over the foot where columns began low. */
  @Property(tries = 100)
  void a_short_table_under_a_long_one_stands_inside_the_page(
      @ForAll @IntRange(min = 20, max = 45) int over,
      @ForAll @IntRange(min = 1, max = 6) int rows,
      @ForAll @IntRange(min = 1, max = 12) int lines) {
    List<List<TableCell>> high = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      high.add(List.of(TableCell.of("short " + i + " and so on".repeat(5 * lines))));
    }
    List<Block> under =
        List.of(
            new Heading("Under"),
            TableBlock.of(List.of(TableColumn.words("what")), high),
            table(3));
    List<List<Ink>> pages =
        ColumnLayout.wideThenColumns(PAGE, List.of(table(over)), 2, under, 6, 60);
    for (List<Ink> page : pages) {
      for (TextBox box :
          TextBox.of(Drawing.paper(PAGE.paper().width(), PAGE.paper().height(), page))) {
        assertThat(box.bounds().maxY()).isLessThanOrEqualTo(PAGE.body().maxY() + 0.01);
      }
    }
    List<String> all = pages.stream().flatMap(p -> words(p).stream()).toList();
    for (int i = 0; i < rows; i++) {
      String row = "short " + i + " ";
      assertThat(all.stream().filter(w -> w.startsWith(row))).hasSize(1);
    }
  }
}
