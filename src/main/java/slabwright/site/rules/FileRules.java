package slabwright.site.rules;

import java.util.List;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** Files that a plan names lie in its folder. */
final class FileRules {
  private FileRules() {}

  static void inside(String file, Message outside, String path, List<Refusal> out) {
    if (!InlaySpecRules.staysInside(file)) {
      out.add(Refusal.at(path, outside));
    }
  }

  static void colour(String colour, String path, List<Refusal> out) {
    if (!colour.matches("#[0-9a-f]{6}")) {
      out.add(Refusal.at(path, Message.of("site.file-rules.the-colour-must-be-written", colour)));
    }
  }
}
