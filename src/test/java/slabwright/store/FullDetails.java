package slabwright.store;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import slabwright.shape.Vec;
import slabwright.site.AreaDetails;
import slabwright.site.ClientPhoto;
import slabwright.site.GraphicSource;
import slabwright.site.JobDetails;
import slabwright.site.Spot;
import slabwright.site.job.CoatReading;
import slabwright.site.job.DayForecast;
import slabwright.site.job.FirmMark;
import slabwright.site.job.JobCrew;
import slabwright.site.job.Party;
import slabwright.site.job.PinnedPhoto;
import slabwright.site.job.StepHold;
import slabwright.site.job.Stop;
import slabwright.units.Length;

/** The details of {@link FullSite}, every field in use. */
final class FullDetails {
  private static final LocalDate DAY = LocalDate.of(2026, 12, 7);

  private FullDetails() {}

  static AreaDetails area() {
    return new AreaDetails(
        List.of("room Hall", "", "wall A-B 32' 9 11/16\"   # twice"),
        new AreaDetails.Built(OptionalInt.of(1958), Optional.of(true), Optional.of(false)),
        List.of(
            new AreaDetails.CoatDivision("sealer", List.of(Spot.mm(5000, 0), Spot.mm(5000, 8000)))),
        List.of(
            new Stop(Stop.Kind.ASBESTOS, new Stop.Cleared("K. R.", DAY, "lab 17")),
            new Stop(
                Stop.Kind.LEAD_PAINT, new Stop.Confirmed("K. R.", Optional.of(DAY), "no paint")),
            new Stop(Stop.Kind.SLAB_BEFORE_DRILLING, new Stop.Open())),
        List.of(new StepHold("grind", "the client sleeps above")));
  }

  static GraphicSource source() {
    return new GraphicSource(
        OptionalInt.of(2),
        Optional.of(
            new GraphicSource.Traced(
                "pictures/heron.png",
                4,
                Length.mm(3),
                0.5,
                "#ffffff",
                List.of(
                    new Vec(12, 8.5), new Vec(300, 20), new Vec(290, 210), new Vec(20, 190.25)))));
  }

  static JobDetails job() {
    return new JobDetails(
        new Party("Level Floors", "K. R.", "555 0100", "k@example.org", "1 Slab Road\nTown")
            .withMark(FirmMark.of("/9j/2Q==", 240, 80)),
        new Party("Tram Museum", "A. B.", "555 0101", "a@example.org", "2 Rail Road"),
        Optional.of(
            new ClientPhoto(
                "pictures/hall.jpg",
                List.of(
                    point(10, 900, 0, 0),
                    point(1900, 900.5, 10_000, 0),
                    point(1400, 500, 10_000, 8000),
                    point(500, 500, 0, 8000)),
                List.of(new Vec(10, 900), new Vec(1900, 900), new Vec(900, 480)))),
        new JobCrew(
            "es-MX",
            List.of(new JobCrew.Person("lead", "K. R.", "half mask A2P3")),
            new TreeMap<>(Map.of("floor-grinder", 2))),
        "books/town.json",
        List.of(
            new PinnedPhoto(
                "pictures/m0.jpg",
                "hall",
                new PinnedPhoto.OnMark("m0"),
                Optional.of(DAY),
                "as found",
                Optional.of(PinnedPhoto.Phase.BEFORE)),
            new PinnedPhoto(
                "pictures/c2.jpg",
                "hall",
                new PinnedPhoto.OnCorner(2),
                Optional.empty(),
                "",
                Optional.empty())),
        List.of(
            new CoatReading(
                "hall",
                "sealer",
                LocalDateTime.of(2026, 12, 9, 8, 15),
                OptionalDouble.of(14.5),
                OptionalDouble.of(16),
                OptionalDouble.of(55),
                OptionalDouble.of(7),
                "K. R.")),
        List.of(
            new DayForecast(
                DAY,
                OptionalDouble.of(-2),
                OptionalDouble.of(9.5),
                OptionalDouble.of(80),
                OptionalDouble.of(100))));
  }

  private static ClientPhoto.FloorPoint point(double px, double py, double x, double y) {
    return new ClientPhoto.FloorPoint(new Vec(px, py), Spot.mm(x, y));
  }
}
