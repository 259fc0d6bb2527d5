package slabwright.store;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Enum constants as words of the plan file: lower case, hyphens. */
final class EnumWords {
  private EnumWords() {}

  static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static <E extends Enum<E>> Optional<E> find(Class<E> type, String word) {
    return Arrays.stream(type.getEnumConstants()).filter(c -> of(c).equals(word)).findFirst();
  }

  static <E extends Enum<E>> String list(Class<E> type) {
    return Arrays.stream(type.getEnumConstants())
        .map(EnumWords::of)
        .collect(Collectors.joining(", "));
  }
}
