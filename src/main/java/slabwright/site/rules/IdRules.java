package slabwright.site.rules;

import java.util.List;
import java.util.Set;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** Ids: short, plain, and each used once. File names are made of them. */
final class IdRules {
  private IdRules() {}

  static void check(String id, String path, Set<String> seen, List<Refusal> out) {
    if (!id.matches("[A-Za-z0-9][A-Za-z0-9_-]{0,63}")) {
      out.add(Refusal.at(path, Message.of("site.id-rules.the-id-must-be-to", id)));
    } else if (!seen.add(id)) {
      out.add(Refusal.at(path, Message.of("site.id-rules.the-id-is-used-twice", id)));
    }
  }
}
