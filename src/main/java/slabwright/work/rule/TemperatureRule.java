package slabwright.work.rule;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.Setting;
import slabwright.site.Slab;
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
    String number =
        p.laying()
            .coldest()
            .with(
                p.laying().hottest(),
                (c, h) ->
                    QuantityFormat.temperature(c, units)
                        + " to "
                        + QuantityFormat.temperature(h, units))
            .text(s -> s);
    if (slab.surfaceC().isEmpty()) {
      return note(p, RuleNote.Verdict.UNKNOWN, number, "surface not measured", "Measure it.");
    }
    double surface = slab.surfaceC().getAsDouble();
    String finding = "surface " + QuantityFormat.temperature(surface, units);
    return p.laying()
        .coldest()
        .with(p.laying().hottest(), (cold, hot) -> surface >= cold && surface <= hot)
        .maybe()
        .map(fits -> fits(p, number, finding, fits))
        .orElse(note(p, RuleNote.Verdict.UNKNOWN, number, finding, ""));
  }

  private static RuleNote fits(Product p, String number, String finding, boolean fits) {
    return note(
        p,
        fits ? RuleNote.Verdict.FINE : RuleNote.Verdict.NOT_MET,
        number,
        finding,
        fits ? "" : "Do not lay it at this temperature.");
  }

  private static RuleNote sun(Product p) {
    return note(
        p,
        RuleNote.Verdict.LOOK,
        "acetone's vapour pressure 180 mmHg at 20 °C, 270 at 30 °C (NTP)",
        "outdoors",
        "Keep the sun off: coat in shade or in the evening and measure the surface, not the air. Heat"
            + " shortens working time and raises evaporation.");
  }

  private static RuleNote note(
      Product p, RuleNote.Verdict verdict, String number, String finding, String todo) {
    return new RuleNote(
        "Temperature, " + p.label(), verdict, "the product's data sheet", number, finding, todo);
  }
}
