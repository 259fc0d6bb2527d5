package slabwright.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FileNameTest {
  private static String slug(String text) {
    return FileName.slug(text, "site");
  }

  @Test
  void ids_are_cleaned_into_names() {
    assertThat(FileName.ofId("../../etc/passwd")).isEqualTo("etc-passwd");
    assertThat(FileName.ofId("¿?")).isEqualTo("unnamed");
  }

  @Test
  void a_slug_is_small_letters_and_digits_with_single_hyphens_between() {
    assertThat(slug("  Library, in a former Tram Hall (2) "))
        .isEqualTo("library-in-a-former-tram-hall-2");
    assertThat(slug("¡!")).isEqualTo("site");
  }

  @Test
  void accents_are_dropped() {
    assertThat(slug("Salón de Peñas")).isEqualTo("salon-de-penas");
    assertThat(slug("Große Halle")).isEqualTo("grosse-halle");
  }

  @Test
  void two_names_in_another_script_are_told_apart_and_the_same_ones_never() {
    assertThat(slug("Цапля")).matches("site-[0-9a-f]{6}").isEqualTo(slug("Цапля"));
    assertThat(slug("Цапля")).isNotEqualTo(slug("Кольцо"));
    assertThat(slug("Зал 2")).matches("2-[0-9a-f]{6}");
  }
}
