package slabwright.work;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import slabwright.floor.FloorTakeoff;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.AirSpace;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.site.job.JobCrew;
import slabwright.site.job.Stop;
import slabwright.store.PlanFile;
import slabwright.units.ColourNaming;
import slabwright.work.book.BookSamples;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookText;
import slabwright.work.prep.PrepParameters;

/** The tram hall sample with its work planned by the example shop book. */
public final class WorkSamples {
  private static final List<AreaTakeoff> FLOORS = floors(tramHall());

  private WorkSamples() {}

  public static Site tramHall() {
    return PlanFile.read(Path.of("sample-plans/tram-hall.site.json")).orThrow();
  }

  /**
   * The tram hall with a solvent dye on the whole floor, more air than the sample has and masks for
   * two of the three: vapour to reckon with, and the job can still be done.
   */
  public static Site solventHall() {
    Site site = tramHall();
    FloorArea hall = site.area("reading-hall").orElseThrow();
    List<Finish.Coat> coats =
        hall.finish().coats().stream()
            .map(
                c ->
                    c.product().equals("water-dye")
                        ? new Finish.Coat("base-dye", c.coats(), c.target())
                        : c)
            .toList();
    FloorArea solvent =
        hall.withFinish(new Finish(hall.finish().exposure(), coats))
            .withAir(new AirSpace(hall.air().ceiling(), 80_000, 3))
            .withDetails(hall.details().withStops(withPermit(hall.details().stops())));
    List<FloorArea> areas =
        site.areas().stream().map(a -> a.id().equals(hall.id()) ? solvent : a).toList();
    String mask = "half mask, organic vapour";
    JobCrew crew =
        new JobCrew(
            "",
            List.of(
                new JobCrew.Person("lead", "A. (invented)", mask),
                new JobCrew.Person("hand", "B. (invented)", mask),
                new JobCrew.Person("hand", "C. (invented)", "")),
            new TreeMap<>());
    return site.withAreas(areas).withJob(site.job().withCrew(crew));
  }

  /** Solvent on the whole floor asks for the fire authority's permit: it has been given. */
  private static List<Stop> withPermit(List<Stop> stops) {
    List<Stop> all = new ArrayList<>(stops);
    Stop.State given = new Stop.Cleared("F. A. (invented)", LocalDate.of(2026, 11, 20), "");
    all.add(new Stop(Stop.Kind.FIRE_PERMIT, given));
    return all;
  }

  public static WorkPlan plan(Site site) {
    return plan(site, BookSamples.book());
  }

  /** The same floors as measured once; only what is known of them may differ. */
  public static WorkPlan plan(Site site, ShopBook book) {
    List<AreaTakeoff> floors = new ArrayList<>();
    for (AreaTakeoff f : FLOORS) {
      FloorArea area = site.area(f.area().id()).orElseThrow();
      floors.add(
          new AreaTakeoff(area, f.floor(), f.cutIn(), f.wayOut(), f.prep(), f.tops(), f.inlays()));
    }
    return WorkPlan.of(site, floors, book);
  }

  /** The same areas with a floor of one square metre each: quick, for odd books. */
  public static WorkPlan planSmall(Site site, ShopBook book) {
    Region floor = Region.of(Ring.rectangle(0, 0, 1000, 1000));
    List<AreaTakeoff> floors = new ArrayList<>();
    for (AreaTakeoff f : FLOORS) {
      floors.add(
          new AreaTakeoff(
              site.area(f.area().id()).orElseThrow(),
              floor,
              4000,
              Optional.of(Vec.ZERO),
              f.prep(),
              f.tops(),
              f.inlays()));
    }
    return WorkPlan.of(site, floors, book);
  }

  /** The floors with a second inlay of the same name, its openings a share of the first one's. */
  static List<AreaTakeoff> floorsWithSecondHeron(Site site, double share) {
    List<AreaTakeoff> floors = new ArrayList<>();
    for (AreaTakeoff f : FLOORS) {
      List<InlayTakeoff> inlays = new ArrayList<>(f.inlays());
      f.inlays().stream()
          .filter(i -> i.id().equals("heron"))
          .forEach(i -> inlays.add(second(i, share)));
      FloorArea area = site.area(f.area().id()).orElseThrow();
      floors.add(
          new AreaTakeoff(area, f.floor(), f.cutIn(), f.wayOut(), f.prep(), f.tops(), inlays));
    }
    return floors;
  }

  private static InlayTakeoff second(InlayTakeoff i, double share) {
    List<InlayTakeoff.StencilDye> dyes =
        i.dyes().stream()
            .map(
                d ->
                    new InlayTakeoff.StencilDye(
                        d.colour(),
                        d.product(),
                        d.openings() * share,
                        d.edges(),
                        d.film(),
                        d.paper(),
                        d.name()))
            .toList();
    return new InlayTakeoff("second", i.name(), i.blank(), i.film(), i.edges(), i.skirt(), dyes);
  }

  /** What is prepared of a floor area of the sample. */
  static PrepParameters prep(String areaId) {
    return FLOORS.stream()
        .filter(f -> f.area().id().equals(areaId))
        .findFirst()
        .orElseThrow()
        .prep();
  }

  /** The example book with one entry changed. */
  public static ShopBook bookWith(String kind, String name, String key, String value) {
    ShopBookText text = BookSamples.text().with(kind, name, key, value);
    return ShopBook.of(text);
  }

  private static List<AreaTakeoff> floors(Site site) {
    List<AreaTakeoff> floors = new ArrayList<>();
    for (FloorArea area : site.areas()) {
      List<InlayTakeoff> inlays = area.inlays().stream().map(WorkSamples::inlay).toList();
      floors.add(AreaTakeoff.of(FloorTakeoff.of(area), inlays));
    }
    return floors;
  }

  /** Made-up areas of the size the emblem has, so that no picture has to be read. */
  private static InlayTakeoff inlay(Inlay inlay) {
    List<InlayTakeoff.StencilDye> dyes =
        List.of(
            new InlayTakeoff.StencilDye(
                "#1f3d4d", "", 1.2e6, 40_000, 6.5e6, 9e6, ColourNaming.of("#1f3d4d")),
            new InlayTakeoff.StencilDye(
                "#8a5a2b", "", 0.3e6, 20_000, 6.5e6, 9e6, ColourNaming.of("#8a5a2b")));
    InlayTakeoff.VinylFromRoll film = new InlayTakeoff.VinylFromRoll(15_000, 1219.2);
    return new InlayTakeoff(inlay.id(), inlay.name(), 13e6, film, 60_000, 9e6, dyes);
  }
}
