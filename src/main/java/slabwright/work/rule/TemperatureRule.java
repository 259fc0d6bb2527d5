package slabwright.work.rule;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.Setting;
import slabwright.site.Slab;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.book.Product;

/** Temperature against a product's range, and the sun on an outdoor coat. */
public final class TemperatureRule {
  private TemperatureRule() {}

  /** The slab's surface, or else the air, against what the shop book allows. */
  public static List<RuleNote> of(Slab slab, Setting setting, Product product, UnitSystem units) {
    List<RuleNote> notes = new ArrayList<>();
    notes.add(range(slab, product, units));
    if (setting == Setting.OUTDOOR) {
      notes.add(sun(product));
    }
    return List.copyOf(notes);
  }

  private static RuleNote range(Slab slab, Product p, UnitSystem units) {
    Message number =
        p.laying()
            .coldest()
            .with(
                p.laying().hottest(),
                (c, h) ->
                    Message.of(
                        "work.temperature-rule.to",
                        QuantityFormat.temperature(c, units),
                        QuantityFormat.temperature(h, units)))
            .text(s -> s);
    if (slab.surfaceC().isEmpty()) {
      return note(
          p,
          RuleNote.Verdict.UNKNOWN,
          number,
          Message.of("work.temperature-rule.surface-not-measured"),
          Message.of("work.temperature-rule.measure-it"));
    }
    double surface = slab.surfaceC().getAsDouble();
    Message finding =
        Message.of("work.temperature-rule.surface", QuantityFormat.temperature(surface, units));
    return p.laying()
        .coldest()
        .with(p.laying().hottest(), (cold, hot) -> surface >= cold && surface <= hot)
        .maybe()
        .map(fits -> fits(p, number, finding, fits))
        .orElse(note(p, RuleNote.Verdict.UNKNOWN, number, finding, RuleNote.NOTHING));
  }

  private static RuleNote fits(Product p, Message number, Message finding, boolean fits) {
    return note(
        p,
        fits ? RuleNote.Verdict.FINE : RuleNote.Verdict.NOT_MET,
        number,
        finding,
        fits ? RuleNote.NOTHING : Message.of("work.temperature-rule.do-not-lay-it-at"));
  }

  /**
   * The vapour pressure says something of solvent alone; a book that is silent counts as solvent.
   */
  private static RuleNote sun(Product p) {
    boolean solvent = p.solvents().maybe().filter(List::isEmpty).isEmpty();
    return note(
        p,
        RuleNote.Verdict.LOOK,
        solvent
            ? Message.of("work.temperature-rule.acetones-vapour-pressure-mmhg")
            : Message.of("work.temperature-rule.sun-heats"),
        Message.of("work.temperature-rule.outdoors"),
        solvent
            ? Message.of("work.temperature-rule.keep-the-sun-off-coat")
            : Message.of("work.temperature-rule.keep-the-sun-off-water"));
  }

  private static RuleNote note(
      Product p, RuleNote.Verdict verdict, Message number, Message finding, Message todo) {
    return new RuleNote(
        Message.of("work.temperature-rule.temperature", p.label()),
        verdict,
        Message.of("work.temperature-rule.the-products-data-sheet"),
        number,
        finding,
        todo);
  }
}
