package slabwright.units;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Names of files, made one way for every door. Only A to Z, digits, dots, hyphens and underscores,
 * so that any disk, mail and cutter's computer takes them.
 */
public final class FileName {
  private static final Pattern LETTER = Pattern.compile("[\\p{L}\\p{N}]");

  private FileName() {}

  /**
   * From what a person called a thing: small letters and digits with single hyphens between.
   * Accents are dropped. A letter of another script can't be kept: then six digits computed from
   * the whole text tell it from others.
   *
   * @param empty what stands where no letter is left
   */
  public static String slug(String text, String empty) {
    String plain =
        Normalizer.normalize(text, Normalizer.Form.NFKD)
            .replaceAll("\\p{M}+", "")
            .toLowerCase(Locale.ROOT)
            .replace("ß", "ss");
    String kept = plain.replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    String some = kept.isEmpty() ? empty : kept;
    boolean lost = LETTER.matcher(plain.replaceAll("[a-z0-9]", "")).find();
    return lost ? some + String.format(Locale.ROOT, "-%06x", text.hashCode() & 0xff_ff_ff) : some;
  }

  /** From an id, kept as it is but for what no name may hold; never empty, never a dot first. */
  public static String ofId(String id) {
    String kept = id.replaceAll("[^A-Za-z0-9._-]+", "-").replaceAll("^[^A-Za-z0-9]+", "");
    return kept.isEmpty() ? "unnamed" : kept;
  }
}
