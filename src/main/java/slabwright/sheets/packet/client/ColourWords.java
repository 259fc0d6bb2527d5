package slabwright.sheets.packet.client;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.sheets.page.SheetContext;
import slabwright.units.ColourNaming;

/** Colours as people say them: nobody outside a sign shop reads a code. */
final class ColourWords {
  private static final Pattern IN_BRACKETS = Pattern.compile(" \\(#[0-9a-fA-F]{6}\\)");
  private static final Pattern CODE = Pattern.compile("#[0-9a-fA-F]{6}");

  private ColourWords() {}

  /** The sentence with each code in its colour's name, and without one that only follows a name. */
  static String named(String sentence, SheetContext context) {
    return CODE.matcher(IN_BRACKETS.matcher(sentence).replaceAll(""))
        .replaceAll(m -> Matcher.quoteReplacement(context.say(ColourNaming.of(m.group()))));
  }
}
