package slabwright.site.rules;

import java.util.List;
import slabwright.site.Refusal;

/** Files that a plan names lie in its folder. */
final class FileRules {
  private FileRules() {}

  static void inside(String file, String what, String path, List<Refusal> out) {
    if (!InlaySpecRules.staysInside(file)) {
      out.add(
          Refusal.at(
              path,
              "The "
                  + what
                  + " \""
                  + file
                  + "\" lies outside the plan's folder; copy it beside the plan and name it by a relative path."));
    }
  }

  static void colour(String colour, String path, List<Refusal> out) {
    if (!colour.matches("#[0-9a-f]{6}")) {
      out.add(
          Refusal.at(
              path, "The colour \"" + colour + "\" must be written as #rrggbb in lower case."));
    }
  }
}
