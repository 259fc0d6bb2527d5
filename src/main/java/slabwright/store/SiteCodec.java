package slabwright.store;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.TreeMap;
import slabwright.shape.Affine;
import slabwright.site.Release;
import slabwright.site.Site;
import slabwright.site.Underlay;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** A site in the plan file, version 2. */
final class SiteCodec {
  static final int VERSION = 2;

  private SiteCodec() {}

  static Site read(FieldReader f) {
    f.has("version");
    f.has("$schema");
    Site site =
        new Site(
            f.text("name"),
            f.textOr("note", ""),
            f.word("units", UnitSystem.class, UnitSystem.METRIC),
            start(f),
            f.list("areas", AreaCodec::read),
            f.object("underlay", SiteCodec::underlay),
            f.list("releases", SiteCodec::release),
            JobCodec.read(f));
    f.reportUnknown();
    return site;
  }

  private static Optional<LocalDateTime> start(FieldReader f) {
    String text = f.textOr("start", "");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDateTime.parse(text));
    } catch (DateTimeException e) {
      f.fault(Message.of("store.site-codec.start-is-write-a-date", text));
      return Optional.empty();
    }
  }

  private static Underlay underlay(FieldReader f) {
    return new Underlay(
        f.text("file"),
        new Affine(
            f.number("a"),
            f.number("b"),
            f.number("c"),
            f.number("d"),
            f.number("e"),
            f.number("f")),
        f.textOr("caution", ""));
  }

  private static Optional<Release> release(FieldReader f) {
    int number = f.whole("number", 0);
    String issued = f.text("issued");
    String note = f.textOr("note", "");
    TreeMap<String, String> graphics = new TreeMap<>();
    f.object(
        "graphics",
        g -> {
          g.names().forEach(n -> graphics.put(n, g.textOr(n, "")));
          return graphics;
        });
    try {
      return Optional.of(new Release(number, LocalDate.parse(issued), note, graphics));
    } catch (DateTimeException e) {
      f.fault(Message.of("store.site-codec.was-issued-on-write-a", f.place().said(), issued));
      return Optional.empty();
    }
  }

  static ObjectNode write(Site s) {
    ObjectNode o = JsonNodeFactory.instance.objectNode();
    o.put("version", VERSION);
    o.put("name", s.name());
    o.put("note", s.note());
    o.put("units", EnumWords.of(s.units()));
    s.start().ifPresent(t -> o.put("start", t.toString()));
    FieldWriter.list(o, "areas", s.areas(), AreaCodec::write);
    s.underlay().ifPresent(u -> underlay(u, o.putObject("underlay")));
    FieldWriter.list(o, "releases", s.releases(), SiteCodec::release);
    JobCodec.write(s.job(), o);
    return o;
  }

  private static void underlay(Underlay u, ObjectNode o) {
    o.put("file", u.file());
    Affine m = u.placing();
    o.put("a", m.a())
        .put("b", m.b())
        .put("c", m.c())
        .put("d", m.d())
        .put("e", m.e())
        .put("f", m.f());
    if (!u.caution().isEmpty()) {
      o.put("caution", u.caution());
    }
  }

  private static void release(Release r, ObjectNode o) {
    o.put("number", r.number());
    o.put("issued", r.issued().toString());
    o.put("note", r.note());
    ObjectNode graphics = o.putObject("graphics");
    r.graphics().forEach(graphics::put);
  }
}
