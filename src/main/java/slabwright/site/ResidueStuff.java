package slabwright.site;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What a residue is, as far as a person's words tell: what has to be asked of it hangs on it. A
 * word that says paint counts before any other; what no word tells is not known, and is asked
 * about.
 */
public enum ResidueStuff {
  PAINT,
  MASTIC,
  ADHESIVE,
  THINSET,
  GROUT,
  UNKNOWN;

  private List<String> words() {
    return switch (this) {
      case PAINT ->
          List.of("paint", "enamel", "lacquer", "varnish", "primer", "coating", "marking");
      case MASTIC -> List.of("mastic", "cutback", "bitumen", "asphalt", "tar");
      case ADHESIVE -> List.of("adhesive", "glue", "latex");
      case THINSET -> List.of("thinset", "thin-set", "mortar", "tile");
      case GROUT -> List.of("grout");
      case UNKNOWN -> List.of();
    };
  }

  /** What a text says. */
  public static ResidueStuff said(String text) {
    String t = " " + text.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9-]+", " ") + " ";
    return Arrays.stream(values())
        .filter(s -> s.words().stream().anyMatch(w -> isIn(t, w)))
        .findFirst()
        .orElse(UNKNOWN);
  }

  /** A short word only as a word of its own: "tar" is not in "started". */
  private static boolean isIn(String text, String word) {
    return text.contains(word.length() < 4 ? " " + word + " " : word);
  }

  /** What is written for it where a person only chooses; empty for what is not known. */
  public String word() {
    return words().isEmpty() ? "" : words().get(0);
  }

  /** Whether it may hold lead: paint does, and nobody knows of what is not known. */
  public boolean mayHoldLead() {
    return this == PAINT || this == UNKNOWN;
  }
}
