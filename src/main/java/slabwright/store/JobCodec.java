package slabwright.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDateTime;
import java.util.Optional;
import java.util.TreeMap;
import slabwright.site.ClientPhoto;
import slabwright.site.JobDetails;
import slabwright.site.job.CoatReading;
import slabwright.site.job.DayForecast;
import slabwright.site.job.FirmMark;
import slabwright.site.job.JobCrew;
import slabwright.site.job.Party;
import slabwright.site.job.PinnedPhoto;
import slabwright.units.Message;

/** What is known of the job as a whole, in the plan file: fields of the site itself. */
final class JobCodec {
  private JobCodec() {}

  static JobDetails read(FieldReader f) {
    return new JobDetails(
        f.object("contractor", JobCodec::party).orElse(Party.UNKNOWN),
        f.object("client", JobCodec::party).orElse(Party.UNKNOWN),
        f.object("clientPhoto", JobCodec::clientPhoto),
        f.object("crew", JobCodec::crew).orElse(JobCrew.UNKNOWN),
        f.textOr("shopBook", ""),
        f.list("photos", JobCodec::photo),
        f.list("coatReadings", JobCodec::reading),
        f.list("forecast", JobCodec::forecast));
  }

  private static Party party(FieldReader f) {
    return new Party(
        f.textOr("name", ""),
        f.textOr("contact", ""),
        f.textOr("phone", ""),
        f.textOr("mail", ""),
        f.textOr("address", ""),
        f.object("mark", JobCodec::mark).flatMap(m -> m));
  }

  private static Optional<FirmMark> mark(FieldReader f) {
    Optional<FirmMark> mark =
        FirmMark.of(f.text("jpeg"), f.whole("width", 0), f.whole("height", 0));
    if (mark.isEmpty()) {
      f.fault(Message.of("store.job-codec.no-mark", f.place().said()));
    }
    return mark;
  }

  private static ClientPhoto clientPhoto(FieldReader f) {
    return new ClientPhoto(
        f.text("file"),
        f.list(
            "points",
            p -> Optional.of(new ClientPhoto.FloorPoint(p.pixel("picture"), p.spot("floor")))),
        f.pixels("mask"));
  }

  private static JobCrew crew(FieldReader f) {
    TreeMap<String, Integer> tools = new TreeMap<>();
    f.object(
        "tools",
        t -> {
          t.names().forEach(n -> tools.put(n, t.whole(n, 0)));
          return tools;
        });
    return new JobCrew(
        f.textOr("language", ""),
        f.list(
            "persons",
            p ->
                Optional.of(
                    new JobCrew.Person(
                        p.textOr("role", ""), p.text("name"), p.textOr("breathing", "")))),
        tools);
  }

  private static Optional<PinnedPhoto> photo(FieldReader f) {
    return Optional.of(
        new PinnedPhoto(
            f.text("file"),
            f.text("area"),
            pin(f),
            f.dayIf("on"),
            f.textOr("note", ""),
            f.wordIf("phase", PinnedPhoto.Phase.class)));
  }

  private static PinnedPhoto.Pin pin(FieldReader f) {
    boolean marked = f.has("mark");
    boolean cornered = f.has("corner");
    if (marked == cornered) {
      f.fault(Message.of("store.job-codec.must-be-pinned-to-either", f.place().said()));
    }
    return marked
        ? new PinnedPhoto.OnMark(f.textOr("mark", ""))
        : new PinnedPhoto.OnCorner(f.whole("corner", 0));
  }

  private static Optional<CoatReading> reading(FieldReader f) {
    Optional<LocalDateTime> at = f.needed("at", f::momentIf);
    String area = f.text("area");
    String product = f.text("product");
    CoatReading r =
        new CoatReading(
            area,
            product,
            at.orElse(LocalDateTime.MIN),
            f.numberIf("slabC"),
            f.numberIf("airC"),
            f.numberIf("humidity"),
            f.numberIf("dewPointC"),
            f.textOr("by", ""));
    return at.map(t -> r);
  }

  private static Optional<DayForecast> forecast(FieldReader f) {
    var low = f.numberIf("lowC");
    var high = f.numberIf("highC");
    var humidity = f.numberIf("humidity");
    var rain = f.numberIf("rain");
    return f.needed("on", f::dayIf).map(d -> new DayForecast(d, low, high, humidity, rain));
  }

  static void write(JobDetails j, ObjectNode o) {
    party("contractor", j.contractor(), o);
    party("client", j.client(), o);
    j.clientPhoto().ifPresent(p -> clientPhoto(p, o.putObject("clientPhoto")));
    if (!j.crew().equals(JobCrew.UNKNOWN)) {
      crew(j.crew(), o.putObject("crew"));
    }
    FieldWriter.text(o, "shopBook", j.shopBook());
    FieldWriter.list(o, "photos", j.photos(), JobCodec::photo);
    FieldWriter.list(o, "coatReadings", j.readings(), JobCodec::reading);
    FieldWriter.list(o, "forecast", j.forecast(), JobCodec::forecast);
  }

  private static void party(String name, Party p, ObjectNode o) {
    if (!p.equals(Party.UNKNOWN)) {
      ObjectNode n = o.putObject(name);
      FieldWriter.text(n, "name", p.name());
      FieldWriter.text(n, "contact", p.contact());
      FieldWriter.text(n, "phone", p.phone());
      FieldWriter.text(n, "mail", p.mail());
      FieldWriter.text(n, "address", p.address());
      p.mark().ifPresent(m -> mark(m, n.putObject("mark")));
    }
  }

  private static void mark(FirmMark m, ObjectNode o) {
    o.put("jpeg", m.jpeg()).put("width", m.width()).put("height", m.height());
  }

  private static void clientPhoto(ClientPhoto p, ObjectNode o) {
    o.put("file", p.file());
    FieldWriter.list(
        o,
        "points",
        p.points(),
        (at, n) -> {
          n.putArray("picture").add(at.picture().x()).add(at.picture().y());
          FieldWriter.spot(n, "floor", at.floor());
        });
    FieldWriter.pixels(o, "mask", p.mask());
  }

  private static void crew(JobCrew c, ObjectNode o) {
    FieldWriter.text(o, "language", c.language());
    FieldWriter.list(
        o,
        "persons",
        c.persons(),
        (p, n) -> {
          FieldWriter.text(n, "role", p.role());
          n.put("name", p.name());
          FieldWriter.text(n, "breathing", p.breathing());
        });
    if (!c.tools().isEmpty()) {
      ObjectNode tools = o.putObject("tools");
      c.tools().forEach(tools::put);
    }
  }

  private static void photo(PinnedPhoto p, ObjectNode o) {
    o.put("file", p.file()).put("area", p.area());
    if (p.pin() instanceof PinnedPhoto.OnMark m) {
      o.put("mark", m.mark());
    } else if (p.pin() instanceof PinnedPhoto.OnCorner c) {
      o.put("corner", c.corner());
    }
    FieldWriter.known(o, "on", p.on());
    FieldWriter.text(o, "note", p.note());
    FieldWriter.known(o, "phase", p.phase());
  }

  private static void reading(CoatReading r, ObjectNode o) {
    o.put("area", r.area()).put("product", r.product()).put("at", r.at().toString());
    FieldWriter.number(o, "slabC", r.slabC());
    FieldWriter.number(o, "airC", r.airC());
    FieldWriter.number(o, "humidity", r.humidity());
    FieldWriter.number(o, "dewPointC", r.dewPointC());
    FieldWriter.text(o, "by", r.by());
  }

  private static void forecast(DayForecast d, ObjectNode o) {
    o.put("on", d.on().toString());
    FieldWriter.number(o, "lowC", d.lowC());
    FieldWriter.number(o, "highC", d.highC());
    FieldWriter.number(o, "humidity", d.humidity());
    FieldWriter.number(o, "rain", d.rain());
  }
}
