package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;

/**
 * Advice that was declined, in full, over a line to sign: who signs reads what is declined.
 *
 * @param standing who declined it and when, as far as known
 */
record DeclinedBlock(String advice, String standing) implements Block {
  @Override
  public List<Slice> slices(Type type, double width) {
    List<Slice> slices = new ArrayList<>();
    Prose words = new Prose(advice + " This advice was " + standing + ".");
    words.slices(type, width).forEach(s -> slices.add(new Slice(s.height(), true, s.inks())));
    slices.addAll(new SignLine("client, does not take this advice").slices(type, width));
    return slices;
  }
}
