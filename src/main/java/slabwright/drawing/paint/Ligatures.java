package slabwright.drawing.paint;

import java.util.List;

/**
 * The joined letters of the faces, put in by the characters that stand for them: what the fonts'
 * own tables ask for in Latin words, without a search of those tables for every word.
 */
final class Ligatures {
  /** The longer before what it begins with. */
  private static final List<String> PARTED = List.of("ffi", "ffl", "ff", "fi", "fl");

  private static final List<String> JOINED =
      List.of("\uFB03", "\uFB04", "\uFB00", "\uFB01", "\uFB02");

  private Ligatures() {}

  static String joined(String words) {
    int f = words.indexOf('f');
    if (f < 0) {
      return words;
    }
    StringBuilder all = new StringBuilder(words.length()).append(words, 0, f);
    int i = f;
    while (i < words.length()) {
      int found = words.charAt(i) == 'f' ? at(words, i) : -1;
      all.append(found < 0 ? words.substring(i, i + 1) : JOINED.get(found));
      i += found < 0 ? 1 : PARTED.get(found).length();
    }
    return all.toString();
  }

  /** Which of them begins there; -1 for none. */
  private static int at(String words, int i) {
    for (int n = 0; n < PARTED.size(); n++) {
      if (words.startsWith(PARTED.get(n), i)) {
        return n;
      }
    }
    return -1;
  }
}
