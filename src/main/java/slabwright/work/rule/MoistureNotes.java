package slabwright.work.rule;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.MoistureReading;
import slabwright.site.Slab;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
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
          against(
              r,
              p.suits().slabHumidity().maybe().map(h -> h * 100).orElse(null),
              Message.of("work.moisture-notes.rh"),
              p);
      case F1869 ->
          against(
              r,
              p.suits().emission().maybe().orElse(null),
              Message.of("work.moisture-notes.emission-unit"),
              p);
      case D4263 -> sheet(r);
    };
  }

  private static RuleNote against(MoistureReading r, Double limit, Message unit, Product p) {
    RuleNote.Verdict verdict =
        limit == null
            ? RuleNote.Verdict.UNKNOWN
            : r.value() > limit ? RuleNote.Verdict.NOT_MET : RuleNote.Verdict.FINE;
    Message number =
        limit == null
            ? Message.of("work.moisture-notes.not-in-the-shop-book", p.label())
            : Message.of(
                "work.moisture-notes.at-most", p.label(), QuantityFormat.number(limit, 1), unit);
    return new RuleNote(
        Message.of("work.moisture-notes.moisture"),
        verdict,
        Message.of("work.moisture-notes.astm", r.test().name()),
        number,
        at(r, Message.of("work.moisture-notes.reading", QuantityFormat.number(r.value(), 1), unit)),
        verdict == RuleNote.Verdict.NOT_MET
            ? Message.of("work.moisture-notes.do-not-lay-it-choose")
            : RuleNote.NOTHING);
  }

  private static Message at(MoistureReading r, Message found) {
    return r.place().isBlank()
        ? found
        : Message.of("work.moisture-notes.at-place", found, r.place());
  }

  private static RuleNote sheet(MoistureReading r) {
    boolean damp = r.value() > 0;
    return new RuleNote(
        Message.of("work.moisture-notes.moisture"),
        damp ? RuleNote.Verdict.NOT_MET : RuleNote.Verdict.LOOK,
        Message.of("work.moisture-notes.astm-d"),
        Message.of("work.moisture-notes.x-in-sheet-mil-at"),
        at(
            r,
            damp
                ? Message.of("work.moisture-notes.damp")
                : Message.of("work.moisture-notes.no-moisture-seen")),
        damp
            ? Message.of("work.moisture-notes.find-the-source-and-measure")
            : Message.of("work.moisture-notes.a-pass-does-not-prove"));
  }

  private static RuleNote toTest(Slab slab, double floorMm2, UnitSystem units) {
    int probes = MoistureFormulas.probes(floorMm2 / QuantityFormat.SQUARE_FOOT_MM2);
    Message depth =
        slab.thickness()
            .map(Length::mm)
            .map(
                t ->
                    Message.of(
                        "work.moisture-notes.deep-of-the-slab",
                        LengthFormat.show(MoistureFormulas.probeDepth(t, false), units)))
            .orElse(Message.of("work.moisture-notes.of-the-slab-deep-its"));
    return new RuleNote(
        Message.of("work.moisture-notes.moisture"),
        RuleNote.Verdict.UNKNOWN,
        Message.of("work.moisture-notes.astm-f"),
        Message.of("work.moisture-notes.probes", probes, depth),
        Message.of("work.moisture-notes.not-measured"),
        Message.of("work.moisture-notes.measure-before-the-finish-is"));
  }
}
