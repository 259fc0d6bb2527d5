package slabwright.site.rules;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.site.ClientPhoto;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.JobDetails;
import slabwright.site.Site;
import slabwright.site.job.CoatReading;
import slabwright.site.job.DayForecast;
import slabwright.site.job.JobCrew;
import slabwright.site.job.PinnedPhoto;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** What must hold of a site as a whole: the job's details, and what leads from area to area. */
final class JobRules {
  private JobRules() {}

  static void check(Site site, List<Refusal> out) {
    links(site, out);
    JobDetails job = site.job();
    site.underlay()
        .ifPresent(
            u ->
                FileRules.inside(
                    u.file(),
                    Message.of("site.file-rules.underlay-lies-outside", u.file()),
                    "underlay.file",
                    out));
    job.clientPhoto().ifPresent(p -> clientPhoto(p, out));
    crew(job.crew(), out);
    if (!job.shopBook().isEmpty()) {
      FileRules.inside(
          job.shopBook(),
          Message.of("site.file-rules.shop-book-lies-outside", job.shopBook()),
          "shopBook",
          out);
    }
    photos(job.photos(), out);
    readings(job.readings(), out);
    forecast(job.forecast(), out);
  }

  private static void links(Site site, List<Refusal> out) {
    for (int a = 0; a < site.areas().size(); a++) {
      FloorArea area = site.areas().get(a);
      for (int d = 0; d < area.doorways().size(); d++) {
        String at = "areas[" + a + "].doorways[" + d + "].leadsTo";
        Doorway door = area.doorways().get(d);
        door.passage().leadsTo().ifPresent(to -> link(site, area, door, to, at, out));
        sealed(site, area, door, "areas[" + a + "].doorways[" + d + "].sealed", out);
      }
    }
  }

  private static void link(
      Site site, FloorArea area, Doorway door, Doorway.LeadsTo to, String at, List<Refusal> out) {
    if (to.area().equals(area.id())) {
      out.add(
          Refusal.at(
              at, Message.of("site.job-rules.leads-to-its-own-floor", door.name(), area.name())));
    } else if (site.area(to.area()).flatMap(o -> o.doorway(to.doorway())).isEmpty()) {
      out.add(
          Refusal.at(
              at,
              Message.of(
                  "site.job-rules.leads-to-doorway-of-floor",
                  door.name(),
                  area.name(),
                  to.doorway(),
                  to.area())));
    }
  }

  /** Nobody comes in by a doorway that is sealed, whichever side says so. */
  private static void sealed(
      Site site, FloorArea area, Doorway door, String at, List<Refusal> out) {
    Optional<Doorway> other =
        door.passage()
            .leadsTo()
            .flatMap(to -> site.area(to.area()).flatMap(o -> o.doorway(to.doorway())));
    boolean wayIn = door.wayIn() || other.filter(Doorway::wayIn).isPresent();
    boolean shut = door.passage().sealed() || other.filter(o -> o.passage().sealed()).isPresent();
    if (wayIn && shut) {
      out.add(Refusal.at(at, Message.of("site.job-rules.sealed-way-in", door.name(), area.name())));
    }
  }

  private static void clientPhoto(ClientPhoto photo, List<Refusal> out) {
    FileRules.inside(
        photo.file(),
        Message.of("site.file-rules.clients-photo-lies-outside", photo.file()),
        "clientPhoto.file",
        out);
    if (photo.points().size() != 4) {
      out.add(
          Refusal.at(
              "clientPhoto.points",
              Message.of("site.job-rules.the-clients-photo-has-floor", photo.points().size())));
    }
    if (!photo.mask().isEmpty() && photo.mask().size() < 3) {
      out.add(
          Refusal.at(
              "clientPhoto.mask",
              Message.of("site.job-rules.the-mask-of-the-clients", photo.mask().size())));
    }
  }

  private static void crew(JobCrew crew, List<Refusal> out) {
    if (!crew.language().isEmpty() && !crew.language().matches("[a-z]{2,3}(-[A-Z]{2})?")) {
      out.add(
          Refusal.at(
              "crew.language",
              Message.of("site.job-rules.the-crews-language-is-write", crew.language())));
    }
    crew.tools()
        .forEach(
            (tool, n) ->
                SizeRules.between(
                    n,
                    0,
                    1000,
                    Message.of("site.job-rules.the-number-of-tool", tool),
                    "crew.tools." + tool,
                    out));
    for (int i = 0; i < crew.persons().size(); i++) {
      if (crew.persons().get(i).name().isBlank()) {
        out.add(
            Refusal.at(
                "crew.persons[" + i + "].name",
                Message.of("site.job-rules.person-of-the-crew-has", i + 1)));
      }
    }
  }

  private static void photos(List<PinnedPhoto> photos, List<Refusal> out) {
    for (int i = 0; i < photos.size(); i++) {
      String at = "photos[" + i + "]";
      FileRules.inside(
          photos.get(i).file(),
          Message.of("site.file-rules.photo-lies-outside", photos.get(i).file()),
          at + ".file",
          out);
      if (photos.get(i).pin() instanceof PinnedPhoto.OnCorner c && c.corner() < 0) {
        out.add(
            Refusal.at(
                at + ".corner",
                Message.of(
                    "site.job-rules.photo-is-pinned-to-corner", photos.get(i).file(), c.corner())));
      }
    }
  }

  private static void readings(List<CoatReading> readings, List<Refusal> out) {
    for (int i = 0; i < readings.size(); i++) {
      CoatReading r = readings.get(i);
      String at = "coatReadings[" + i + "]";
      String when = r.at().toString();
      r.slabC()
          .ifPresent(
              v -> degrees(v, Message.of("site.job-rules.the-slabs-c", when), at + ".slabC", out));
      r.airC()
          .ifPresent(
              v -> degrees(v, Message.of("site.job-rules.the-airs-c", when), at + ".airC", out));
      r.dewPointC()
          .ifPresent(
              v ->
                  degrees(
                      v,
                      Message.of("site.job-rules.the-dew-points-c", when),
                      at + ".dewPointC",
                      out));
      r.humidity()
          .ifPresent(
              v ->
                  SizeRules.between(
                      v,
                      1,
                      100,
                      Message.of("site.job-rules.humidity-read-at", when),
                      at + ".humidity",
                      out));
    }
  }

  private static void degrees(double v, Message what, String at, List<Refusal> out) {
    SizeRules.between(v, -60, 80, what, at, out);
  }

  private static void forecast(List<DayForecast> days, List<Refusal> out) {
    Set<LocalDate> seen = new HashSet<>();
    for (int i = 0; i < days.size(); i++) {
      DayForecast d = days.get(i);
      String at = "forecast[" + i + "]";
      String day = d.on().toString();
      if (!seen.add(d.on())) {
        out.add(
            Refusal.at(at + ".on", Message.of("site.job-rules.the-day-is-forecast-twice", day)));
      }
      d.lowC()
          .ifPresent(
              v -> degrees(v, Message.of("site.job-rules.the-lowest-c", day), at + ".lowC", out));
      d.highC()
          .ifPresent(
              v -> degrees(v, Message.of("site.job-rules.the-highest-c", day), at + ".highC", out));
      d.humidity()
          .ifPresent(
              v ->
                  SizeRules.between(
                      v,
                      1,
                      100,
                      Message.of("site.job-rules.humidity-forecast", day),
                      at + ".humidity",
                      out));
      d.rain()
          .ifPresent(
              v ->
                  SizeRules.between(
                      v,
                      0,
                      100,
                      Message.of("site.job-rules.the-chance-of-rain-in", day),
                      at + ".rain",
                      out));
      if (d.lowC().isPresent()
          && d.highC().isPresent()
          && d.lowC().getAsDouble() > d.highC().getAsDouble()) {
        out.add(Refusal.at(at + ".lowC", Message.of("site.job-rules.the-lowest-c-is-above", day)));
      }
    }
  }
}
