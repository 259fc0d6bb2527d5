package slabwright.site.rules;

import java.util.List;
import java.util.Set;
import slabwright.site.Refusal;

/** Ids: short, plain, and each used once. File names are made of them. */
final class IdRules {
  private IdRules() {}

  static void check(String id, String path, Set<String> seen, List<Refusal> out) {
    if (!id.matches("[A-Za-z0-9][A-Za-z0-9_-]{0,63}")) {
      out.add(
          Refusal.at(
              path,
              "The id \""
                  + id
                  + "\" must be 1 to 64 letters, digits, - or _, a letter or digit first."));
    } else if (!seen.add(id)) {
      out.add(Refusal.at(path, "The id \"" + id + "\" is used twice; give each its own."));
    }
  }
}
