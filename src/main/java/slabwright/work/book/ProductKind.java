package slabwright.work.book;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What a product is for. */
public enum ProductKind {
  BASE_DYE,
  INLAY_DYE,
  SEALER,
  TOPCOAT,
  OUTDOOR_SEALER,
  GRIT_ADDITIVE,
  FILLER,
  LEVELLER,
  CLEANER;

  /** The word in the shop book. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static Optional<ProductKind> named(String word) {
    return Arrays.stream(values()).filter(k -> k.word().equals(word)).findFirst();
  }
}
