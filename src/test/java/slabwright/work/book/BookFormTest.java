package slabwright.work.book;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import slabwright.units.Result;
import slabwright.work.Said;

class BookFormTest {
  private static final ShopBookText BOOK = ExampleBook.text();

  @Test
  void every_value_of_the_file_is_in_the_form_with_its_unit_and_comment() {
    BookForm form = BookForm.of(BOOK);
    for (ShopBookText.Entry e : BOOK.entries()) {
      BookField field = form.field(e.kind(), e.name(), e.key()).orElseThrow();
      assertThat(field.value()).isEqualTo(e.value());
      assertThat(Said.of(field.example())).isNotBlank();
    }
    assertThat(form.field("crew", "", "price an hour").orElseThrow().comment())
        .isEqualTo("for one person");
    assertThat(form.faults()).isEmpty();
  }

  @Test
  void what_the_book_is_silent_on_is_in_the_form_as_missing() {
    BookField field = BookForm.of(BOOK).field("product", "filler", "coverage").orElseThrow();
    assertThat(field.isMissing()).isTrue();
    assertThat(Said.of(field.example())).isEqualTo("300 ft2/gal");
  }

  @Test
  void a_change_keeps_every_comment_and_all_other_lines() {
    BookField field = BookForm.of(BOOK).field("crew", "", "price an hour").orElseThrow();
    String after = BookForm.changed(BOOK, field, "70.00").orThrow().text();
    assertThat(after).isEqualTo(BOOK.text().replace("= 62.00", "= 70.00"));
  }

  @Test
  void an_emptied_value_is_not_known_any_more() {
    BookField field = BookForm.of(BOOK).field("product", "sealer", "coverage").orElseThrow();
    ShopBookText after = BookForm.changed(BOOK, field, " ").orThrow();
    assertThat(BookForm.of(after).field("product", "sealer", "coverage").orElseThrow().isMissing())
        .isTrue();
    assertThat(BookForm.of(after).missing()).isEqualTo(BookForm.of(BOOK).missing() + 1);
  }

  @Test
  void a_value_that_can_not_be_read_is_refused_with_an_example() {
    BookField field = BookForm.of(BOOK).field("product", "sealer", "coverage").orElseThrow();
    Result<ShopBookText> bad = BookForm.changed(BOOK, field, "a lot");
    assertThat(Said.why(bad)).contains("a lot").contains("300 ft2/gal");
    Result<ShopBookText> comment = BookForm.changed(BOOK, field, "300 ft2/gal # mine");
    assertThat(comment.isOk()).isFalse();
  }

  @Test
  void faults_of_the_file_are_sentences_with_their_line() {
    ShopBookText odd = BOOK.with("crew", "", "people", "many").with("crew", "", "hats", "3");
    assertThat(BookForm.of(odd).faults())
        .extracting(f -> Said.of(f.said()))
        .anyMatch(s -> s.matches("line \\d+: people: \"many\" is no number from 1 to 9999"))
        .anyMatch(s -> s.contains("\"hats\" is not known in [crew]"));
  }
}
