package slabwright.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import slabwright.site.AreaDetails;
import slabwright.site.AreaDetails.Built;
import slabwright.site.AreaDetails.CoatDivision;
import slabwright.site.job.StepHold;
import slabwright.site.job.Stop;

/** What else is known of a floor area, in the plan file: fields of the area itself. */
final class AreaDetailsCodec {
  private AreaDetailsCodec() {}

  /** Words of a stop's state. */
  private enum StateWord {
    OPEN,
    CLEARED,
    CONFIRMED
  }

  static AreaDetails read(FieldReader f) {
    return new AreaDetails(
        f.texts("taped"),
        f.object("built", AreaDetailsCodec::built).orElse(Built.UNKNOWN),
        f.list("coatDivisions", AreaDetailsCodec::division),
        f.list("stops", AreaDetailsCodec::stop),
        f.list("holds", AreaDetailsCodec::hold));
  }

  private static Built built(FieldReader f) {
    OptionalInt year = f.has("year") ? OptionalInt.of(f.whole("year", 0)) : OptionalInt.empty();
    return new Built(year, f.flagIf("postTensioned"), f.flagIf("heated"));
  }

  private static Optional<CoatDivision> division(FieldReader f) {
    return Optional.of(new CoatDivision(f.textOr("product", ""), f.spots("line")));
  }

  private static Optional<StepHold> hold(FieldReader f) {
    return Optional.of(new StepHold(f.text("step"), f.text("reason")));
  }

  private static Optional<Stop> stop(FieldReader f) {
    Optional<Stop.Kind> kind = f.wordNeeded("kind", Stop.Kind.class);
    Optional<Stop.State> state =
        switch (f.word("state", StateWord.class, StateWord.OPEN)) {
          case OPEN -> Optional.of(new Stop.Open());
          case CLEARED -> cleared(f);
          case CONFIRMED ->
              Optional.of(new Stop.Confirmed(f.text("by"), f.dayIf("on"), f.textOr("reason", "")));
        };
    return kind.flatMap(k -> state.map(s -> new Stop(k, s)));
  }

  private static Optional<Stop.State> cleared(FieldReader f) {
    String by = f.text("by");
    String report = f.textOr("report", "");
    Optional<LocalDate> on = f.needed("on", f::dayIf);
    return on.map(d -> new Stop.Cleared(by, d, report));
  }

  static void write(AreaDetails d, ObjectNode o) {
    if (!d.taped().isEmpty()) {
      ArrayNode lines = o.putArray("taped");
      d.taped().forEach(lines::add);
    }
    if (!d.built().equals(Built.UNKNOWN)) {
      ObjectNode n = o.putObject("built");
      d.built().year().ifPresent(y -> n.put("year", y));
      FieldWriter.known(n, "postTensioned", d.built().postTensioned());
      FieldWriter.known(n, "heated", d.built().heated());
    }
    FieldWriter.list(o, "coatDivisions", d.coatDivisions(), AreaDetailsCodec::division);
    FieldWriter.list(o, "stops", d.stops(), AreaDetailsCodec::stop);
    FieldWriter.list(
        o, "holds", d.holds(), (h, n) -> n.put("step", h.step()).put("reason", h.reason()));
  }

  private static void division(CoatDivision d, ObjectNode o) {
    FieldWriter.text(o, "product", d.product());
    FieldWriter.spots(o, "line", d.line());
  }

  private static void stop(Stop s, ObjectNode o) {
    o.put("kind", EnumWords.of(s.kind()));
    if (s.state() instanceof Stop.Cleared c) {
      o.put("state", EnumWords.of(StateWord.CLEARED))
          .put("by", c.by())
          .put("on", c.on().toString());
      FieldWriter.text(o, "report", c.report());
    } else if (s.state() instanceof Stop.Confirmed c) {
      o.put("state", EnumWords.of(StateWord.CONFIRMED)).put("by", c.by());
      FieldWriter.known(o, "on", c.on());
      FieldWriter.text(o, "reason", c.reason());
    } else {
      o.put("state", EnumWords.of(StateWord.OPEN));
    }
  }
}
