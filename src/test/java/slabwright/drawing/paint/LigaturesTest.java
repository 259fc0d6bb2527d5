package slabwright.drawing.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.fontbox.ttf.gsub.GsubWorker;
import org.apache.fontbox.ttf.gsub.GsubWorkerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slabwright.drawing.FontFace;

class LigaturesTest {
  /** What is printed in English and Spanish. */
  private static final String PRINTED =
      "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789.,:;!?()/'-"
          + "áéíóúñüÁÉÍÓÚÑÜ¿¡·–—×°²³′″≥≤√→✓✕½¼";

  private static List<Integer> glyphs(CmapLookup lookup, String words) {
    return words.codePoints().mapToObj(lookup::getGlyphId).toList();
  }

  private static List<String> letters(String all) {
    return all.codePoints().mapToObj(Character::toString).toList();
  }

  /** By the fonts' own tables, as PDFBox reads them: every pair of letters, and those with f. */
  @ParameterizedTest
  @EnumSource
  void glyphs_are_those_that_the_fonts_own_tables_give(FontFace face) throws IOException {
    try (TrueTypeFont font = face.read()) {
      CmapLookup lookup = font.getUnicodeCmapLookup();
      GsubWorker tables = new GsubWorkerFactory().getGsubWorker(lookup, font.getGsubData());
      List<String> words = new ArrayList<>();
      for (String a : letters(PRINTED)) {
        for (String b : letters("filtjI.-é0")) {
          words.add(a + b);
          words.add("f" + a + b);
          words.add("ff" + a + b);
        }
      }
      for (String w : words) {
        assertThat(glyphs(lookup, Ligatures.joined(w)))
            .as(w)
            .isEqualTo(tables.applyTransforms(glyphs(lookup, w)));
      }
    }
  }

  @Test
  void the_longest_is_joined_first_and_the_rest_stays() {
    assertThat(Ligatures.joined("floor office stuff fjord of it"))
        .isEqualTo("\uFB02oor o\uFB03ce stu\uFB00 fjord of it");
    assertThat(Ligatures.joined("grind")).isEqualTo("grind");
  }
}
