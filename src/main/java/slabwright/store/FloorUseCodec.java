package slabwright.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import slabwright.site.AdviceId;
import slabwright.site.Declined;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.units.Message;

/** What goes on on a floor, and advice declined, in the plan file; what was not asked is absent. */
final class FloorUseCodec {
  private FloorUseCodec() {}

  static FloorUse use(FieldReader f) {
    return new FloorUse(f.flagIf("wet"), f.flagIf("sun"), f.flagIf("traffic"));
  }

  static Optional<Declined> declined(FieldReader f) {
    String by = f.textOr("by", "");
    Optional<LocalDate> on = day(f);
    return f.wordNeeded("advice", AdviceId.class).map(a -> new Declined(a, by, on));
  }

  private static Optional<LocalDate> day(FieldReader f) {
    String text = f.textOr("on", "");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException e) {
      f.fault(Message.of("store.floor-use-codec.was-declined-on-write-a", f.place().said(), text));
      return Optional.empty();
    }
  }

  static void write(FloorArea a, ObjectNode o) {
    FloorUse u = a.use();
    if (!u.equals(FloorUse.NOT_ASKED)) {
      ObjectNode n = o.putObject("use");
      u.wet().ifPresent(v -> n.put("wet", v));
      u.sun().ifPresent(v -> n.put("sun", v));
      u.traffic().ifPresent(v -> n.put("traffic", v));
    }
    FieldWriter.list(o, "declined", a.declined(), FloorUseCodec::declined);
  }

  private static void declined(Declined d, ObjectNode o) {
    o.put("advice", EnumWords.of(d.advice()));
    if (!d.by().isEmpty()) {
      o.put("by", d.by());
    }
    d.on().ifPresent(v -> o.put("on", v.toString()));
  }
}
