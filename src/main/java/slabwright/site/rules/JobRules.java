package slabwright.site.rules;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slabwright.site.ClientPhoto;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.JobDetails;
import slabwright.site.Refusal;
import slabwright.site.Site;
import slabwright.site.job.CoatReading;
import slabwright.site.job.DayForecast;
import slabwright.site.job.JobCrew;
import slabwright.site.job.PinnedPhoto;

/** What must hold of a site as a whole: the job's details, and what leads from area to area. */
final class JobRules {
  private JobRules() {}

  static void check(Site site, List<Refusal> out) {
    links(site, out);
    JobDetails job = site.job();
    job.clientPhoto().ifPresent(p -> clientPhoto(p, out));
    crew(job.crew(), out);
    if (!job.shopBook().isEmpty()) {
      FileRules.inside(job.shopBook(), "shop book", "shopBook", out);
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
      }
    }
  }

  private static void link(
      Site site, FloorArea area, Doorway door, Doorway.LeadsTo to, String at, List<Refusal> out) {
    String its = "Doorway \"" + door.name() + "\" of \"" + area.name() + "\"";
    if (to.area().equals(area.id())) {
      out.add(Refusal.at(at, its + " leads to its own floor area; name another or none."));
    } else if (site.area(to.area()).flatMap(o -> o.doorway(to.doorway())).isEmpty()) {
      out.add(
          Refusal.at(
              at,
              its
                  + " leads to doorway \""
                  + to.doorway()
                  + "\" of floor area \""
                  + to.area()
                  + "\", which is not there; name another or none."));
    }
  }

  private static void clientPhoto(ClientPhoto photo, List<Refusal> out) {
    FileRules.inside(photo.file(), "client's photo", "clientPhoto.file", out);
    if (photo.points().size() != 4) {
      out.add(
          Refusal.at(
              "clientPhoto.points",
              "The client's photo has " + photo.points().size() + " floor points; give 4."));
    }
    if (!photo.mask().isEmpty() && photo.mask().size() < 3) {
      out.add(
          Refusal.at(
              "clientPhoto.mask",
              "The mask of the client's photo has "
                  + photo.mask().size()
                  + " corners; give at least 3 or none."));
    }
  }

  private static void crew(JobCrew crew, List<Refusal> out) {
    if (!crew.language().isEmpty() && !crew.language().matches("[a-z]{2,3}(-[A-Z]{2})?")) {
      out.add(
          Refusal.at(
              "crew.language",
              "The crew's language is \""
                  + crew.language()
                  + "\"; write a tag such as en or es-MX."));
    }
    crew.tools()
        .forEach(
            (tool, n) ->
                SizeRules.between(
                    n, 0, 1000, "The number of tool \"" + tool + "\"", "crew.tools." + tool, out));
    for (int i = 0; i < crew.persons().size(); i++) {
      if (crew.persons().get(i).name().isBlank()) {
        out.add(
            Refusal.at(
                "crew.persons[" + i + "].name",
                "Person " + (i + 1) + " of the crew has no name; write a name or initials."));
      }
    }
  }

  private static void photos(List<PinnedPhoto> photos, List<Refusal> out) {
    for (int i = 0; i < photos.size(); i++) {
      String at = "photos[" + i + "]";
      FileRules.inside(photos.get(i).file(), "photo", at + ".file", out);
      if (photos.get(i).pin() instanceof PinnedPhoto.OnCorner c && c.corner() < 0) {
        out.add(
            Refusal.at(
                at + ".corner",
                "Photo \""
                    + photos.get(i).file()
                    + "\" is pinned to corner "
                    + c.corner()
                    + "; corners count from 0."));
      }
    }
  }

  private static void readings(List<CoatReading> readings, List<Refusal> out) {
    for (int i = 0; i < readings.size(); i++) {
      CoatReading r = readings.get(i);
      String at = "coatReadings[" + i + "]";
      String when = " read at " + r.at();
      r.slabC().ifPresent(v -> degrees(v, "The slab's °C" + when, at + ".slabC", out));
      r.airC().ifPresent(v -> degrees(v, "The air's °C" + when, at + ".airC", out));
      r.dewPointC().ifPresent(v -> degrees(v, "The dew point's °C" + when, at + ".dewPointC", out));
      r.humidity()
          .ifPresent(
              v ->
                  SizeRules.between(
                      v, 1, 100, "The relative humidity in %" + when, at + ".humidity", out));
    }
  }

  private static void degrees(double v, String what, String at, List<Refusal> out) {
    SizeRules.between(v, -60, 80, what, at, out);
  }

  private static void forecast(List<DayForecast> days, List<Refusal> out) {
    Set<LocalDate> seen = new HashSet<>();
    for (int i = 0; i < days.size(); i++) {
      DayForecast d = days.get(i);
      String at = "forecast[" + i + "]";
      String day = " forecast for " + d.on();
      if (!seen.add(d.on())) {
        out.add(
            Refusal.at(at + ".on", "The day " + d.on() + " is forecast twice; keep one entry."));
      }
      d.lowC().ifPresent(v -> degrees(v, "The lowest °C" + day, at + ".lowC", out));
      d.highC().ifPresent(v -> degrees(v, "The highest °C" + day, at + ".highC", out));
      d.humidity()
          .ifPresent(
              v ->
                  SizeRules.between(
                      v, 1, 100, "The relative humidity in %" + day, at + ".humidity", out));
      d.rain()
          .ifPresent(
              v ->
                  SizeRules.between(v, 0, 100, "The chance of rain in %" + day, at + ".rain", out));
      if (d.lowC().isPresent()
          && d.highC().isPresent()
          && d.lowC().getAsDouble() > d.highC().getAsDouble()) {
        out.add(
            Refusal.at(
                at + ".lowC",
                "The lowest °C" + day + " is above the highest; swap or correct them."));
      }
    }
  }
}
