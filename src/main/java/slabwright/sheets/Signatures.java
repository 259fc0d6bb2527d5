package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines to sign that are never parted, under what they are signed for: on a further page they would
 * else say nothing.
 */
record Signatures(String what, List<String> who) implements Block {
  Signatures {
    who = List.copyOf(who);
  }

  @Override
  public List<Slice> slices(Type type, double width) {
    List<Slice> slices = new ArrayList<>(new Heading(what).slices(type, width));
    for (String w : who) {
      slices.addAll(new SignLine(w).slices(type, width));
    }
    List<Slice> kept = new ArrayList<>();
    for (int i = 0; i < slices.size(); i++) {
      Slice s = slices.get(i);
      kept.add(new Slice(s.height(), i < slices.size() - 1, s.inks()));
    }
    return kept;
  }
}
