package slabwright.work.rule;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.MoistureReading;
import slabwright.site.Slab;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.book.Product;

/** The slab's readings against what a product's data sheet allows. */
public final class MoistureNotes {
  private MoistureNotes() {}

  /**
   * Each reading held against each product, and what to test when none was probed; floor in mm².
   */
  public static List<RuleNote> of(
      Slab slab, double floorMm2, List<Product> products, UnitSystem units) {
    List<RuleNote> notes = new ArrayList<>();
    slab.moisture().forEach(r -> notes.addAll(notes(r, products)));
    boolean probed = slab.moisture().stream().anyMatch(r -> r.test() == MoistureReading.Test.F2170);
    if (!probed) {
      notes.add(toTest(slab, floorMm2, units));
    }
    return List.copyOf(notes);
  }

  private static List<RuleNote> notes(MoistureReading r, List<Product> products) {
    return r.test() == MoistureReading.Test.D4263
        ? List.of(sheet(r))
        : products.stream().map(p -> note(r, p)).toList();
  }

  private static RuleNote note(MoistureReading r, Product p) {
    return switch (r.test()) {
      case F2170 ->
          against(r, p.suits().slabHumidity().maybe().map(h -> h * 100).orElse(null), "% RH", p);
      case F1869 -> against(r, p.suits().emission().maybe().orElse(null), "lb/1000 ft² in 24 h", p);
      case D4263 -> sheet(r);
    };
  }

  private static RuleNote against(MoistureReading r, Double limit, String unit, Product p) {
    RuleNote.Verdict verdict =
        limit == null
            ? RuleNote.Verdict.UNKNOWN
            : r.value() > limit ? RuleNote.Verdict.NOT_MET : RuleNote.Verdict.FINE;
    String number =
        limit == null
            ? p.label() + ": not in the shop book"
            : "%s: at most %s %s".formatted(p.label(), QuantityFormat.number(limit, 1), unit);
    return new RuleNote(
        "Moisture",
        verdict,
        "ASTM " + r.test(),
        number,
        "%s %s%s".formatted(QuantityFormat.number(r.value(), 1), unit, place(r)),
        verdict == RuleNote.Verdict.NOT_MET
            ? "Do not lay it: choose a breathing finish or a moisture treatment, or let it dry."
            : "");
  }

  private static String place(MoistureReading r) {
    return r.place().isBlank() ? "" : " (" + r.place() + ")";
  }

  private static RuleNote sheet(MoistureReading r) {
    boolean damp = r.value() > 0;
    return new RuleNote(
        "Moisture",
        damp ? RuleNote.Verdict.NOT_MET : RuleNote.Verdict.LOOK,
        "ASTM D4263",
        "18 x 18 in sheet, 4 mil, at least 16 h",
        (damp ? "damp" : "no moisture seen") + place(r),
        damp ? "Find the source and measure by F2170." : "A pass does not prove a dry slab.");
  }

  private static RuleNote toTest(Slab slab, double floorMm2, UnitSystem units) {
    int probes = MoistureFormulas.probes(floorMm2 / QuantityFormat.SQUARE_FOOT_MM2);
    String depth =
        slab.thickness()
            .map(Length::mm)
            .map(
                t ->
                    LengthFormat.show(MoistureFormulas.probeDepth(t, false), units)
                        + " deep (40 % of the slab)")
            .orElse("40 % of the slab deep; its thickness is not known");
    return new RuleNote(
        "Moisture",
        RuleNote.Verdict.UNKNOWN,
        "ASTM F2170",
        "%d probes, %s".formatted(probes, depth),
        "not measured",
        "Measure before the finish is chosen; 24 h after drilling at the earliest.");
  }
}
