package slabwright.store;

import java.util.List;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.units.Result;

/** What a plan was refused for, by keys. */
final class FaultKeys {
  private FaultKeys() {}

  /** One text a fault: its key, its values and those of the messages in it, with spaces between. */
  static List<String> of(Result<Site> reading) {
    return reading instanceof Result.Refused<Site> bad
        ? bad.refusals().stream().map(r -> text(r.message())).toList()
        : List.of();
  }

  private static String text(Message m) {
    StringBuilder out = new StringBuilder(m.key());
    for (Object v : m.values()) {
      out.append(' ').append(v instanceof Message inner ? text(inner) : v);
    }
    return out.toString();
  }
}
