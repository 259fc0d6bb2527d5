package slabwright.work.rule;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.MoistureReading;
import slabwright.site.Setting;
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
   * What a probe may be off by where nobody said otherwise, % relative humidity: the usual figure
   * of a probe's maker, from memory.
   */
  static final double PROBE_TOLERANCE = 2;

  /**
   * Each reading held against each product, how many probes that takes, and what to test when none
   * was probed; floor in mm². F2170 asks for a slab at the temperature and humidity it is used at,
   * which no outdoor slab keeps.
   */
  public static List<RuleNote> of(
      Slab slab, Setting setting, double floorMm2, List<Product> products, UnitSystem units) {
    List<RuleNote> notes = new ArrayList<>();
    slab.moisture().forEach(r -> notes.addAll(notes(r, products)));
    long taken =
        slab.moisture().stream().filter(r -> r.test() == MoistureReading.Test.F2170).count();
    int needed = MoistureFormulas.probes(floorMm2 / QuantityFormat.SQUARE_FOOT_MM2);
    if (setting == Setting.OUTDOOR) {
      notes.add(outdoors(taken));
    } else if (taken == 0) {
      notes.add(toTest(slab, needed, units));
    } else if (taken < needed) {
      notes.add(tooFew(taken, needed));
    }
    return List.copyOf(notes);
  }

  private static RuleNote tooFew(long taken, int needed) {
    return new RuleNote(
        Message.of("work.moisture-notes.moisture"),
        RuleNote.Verdict.LOOK,
        Message.of("work.moisture-notes.astm-f"),
        Message.of("work.moisture-notes.probes-needed", needed),
        Message.of("work.moisture-notes.probes-taken", taken),
        Message.of("work.moisture-notes.take-more", needed - taken));
  }

  private static RuleNote outdoors(long taken) {
    return new RuleNote(
        Message.of("work.moisture-notes.moisture"),
        RuleNote.Verdict.LOOK,
        Message.of("work.moisture-notes.astm-f"),
        Message.of("work.moisture-notes.at-service-conditions"),
        taken > 0
            ? Message.of("work.moisture-notes.read-outdoors", taken)
            : Message.of("work.moisture-notes.outdoors"),
        Message.of("work.moisture-notes.does-not-fit"));
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
    RuleNote.Verdict verdict = limit == null ? RuleNote.Verdict.UNKNOWN : verdict(r, limit);
    Message number =
        limit == null
            ? Message.of("work.moisture-notes.not-in-the-shop-book", p.label())
            : Message.of(
                "work.moisture-notes.at-most", p.label(), QuantityFormat.number(limit, 1), unit);
    String value = QuantityFormat.number(r.value(), limit == null ? 1 : decimals(r, limit));
    return new RuleNote(
        Message.of("work.moisture-notes.moisture"),
        verdict,
        Message.of("work.moisture-notes.astm", r.test().name()),
        number,
        at(r, Message.of("work.moisture-notes.reading", value, unit)),
        switch (verdict) {
          case NOT_MET -> Message.of("work.moisture-notes.do-not-lay-it-choose");
          case LOOK -> Message.of("work.moisture-notes.near-the-limit", PROBE_TOLERANCE);
          case FINE, UNKNOWN -> RuleNote.NOTHING;
        });
  }

  /** Above the limit it is not met; under it by less than the probe can tell nobody knows. */
  private static RuleNote.Verdict verdict(MoistureReading r, double limit) {
    double tolerance = r.test() == MoistureReading.Test.F2170 ? PROBE_TOLERANCE : 0;
    if (r.value() > limit) {
      return RuleNote.Verdict.NOT_MET;
    }
    return r.value() > limit - tolerance ? RuleNote.Verdict.LOOK : RuleNote.Verdict.FINE;
  }

  /** One more where a reading and its limit would print alike and are not. */
  private static int decimals(MoistureReading r, double limit) {
    boolean alike = QuantityFormat.number(r.value(), 1).equals(QuantityFormat.number(limit, 1));
    return alike && r.value() != limit ? 2 : 1;
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

  private static RuleNote toTest(Slab slab, int probes, UnitSystem units) {
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
