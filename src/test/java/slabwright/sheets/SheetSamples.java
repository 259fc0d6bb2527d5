package slabwright.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slabwright.project.AreaCache;
import slabwright.sheets.packet.Packet;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.PrintedPacket;
import slabwright.sheets.page.PaperSize;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetOptions;
import slabwright.site.Site;
import slabwright.store.PlanFile;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.AreaResult;
import slabwright.work.AreaTakeoff;
import slabwright.work.InlayTakeoff;
import slabwright.work.WorkPlan;
import slabwright.work.book.BookSamples;

/** The pages of the invented tram hall, made once for all tests of a class. */
public final class SheetSamples {
  public static final LocalDate DAY = LocalDate.of(2026, 11, 25);

  private static final Map<String, SheetSamples> KNOWN = new HashMap<>();

  private final Site site;
  private final List<AreaResult> results;
  private final Map<PaperSize, List<PrintedPage>> pages = new EnumMap<>(PaperSize.class);
  private final Map<UnitSystem, WorkPlan> works = new EnumMap<>(UnitSystem.class);
  private final Map<String, PacketContents> jobs = new HashMap<>();
  private final Map<String, PrintedPacket> packets = new HashMap<>();

  private SheetSamples(Site site, List<AreaResult> results) {
    this.site = site;
    this.results = results;
  }

  static SheetSamples tramHall() {
    return sample("tram-hall");
  }

  /** A sample plan by its name, worked out once for all tests of a run. */
  static synchronized SheetSamples sample(String name) {
    return KNOWN.computeIfAbsent(name, SheetSamples::read);
  }

  private static SheetSamples read(String name) {
    Path plan = Path.of("sample-plans", name + ".site.json");
    try {
      Site site = PlanFile.read(plan).orThrow();
      return new SheetSamples(site, new AreaCache().of(site, plan.getParent(), () -> false));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A job of one of its floor areas alone. */
  SheetSamples only(String areaId) {
    return new SheetSamples(
        site.withAreas(site.areas().stream().filter(a -> a.id().equals(areaId)).toList()),
        results.stream().filter(r -> r.takeoff().area().id().equals(areaId)).toList());
  }

  Site site() {
    return site;
  }

  List<AreaResult> results() {
    return results;
  }

  /** The sheets on the paper, in the units that go with it. */
  List<PrintedPage> on(PaperSize paper) {
    return pages.computeIfAbsent(
        paper,
        p -> {
          UnitSystem units = p.inches() ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
          return make(site.withUnits(units), p);
        });
  }

  /** The same made anew. */
  List<PrintedPage> make(Site shown, PaperSize paper) {
    return SheetSet.of(
        shown, results, Optional.of(work(shown)), new SheetOptions(paper, DAY, Words.english()));
  }

  /** The sample in the units that go with the paper. */
  synchronized PacketContents job(PaperSize paper, Words words) {
    return jobs.computeIfAbsent(
        paper + words.language(),
        k -> {
          UnitSystem units = paper.inches() ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
          Site shown = site.withUnits(units);
          WorkPlan plan = works.computeIfAbsent(units, u -> work(shown));
          return new PacketContents(shown, results, plan, paper, DAY, words);
        });
  }

  PacketContents job(PaperSize paper) {
    return job(paper, Words.english());
  }

  /** Whether it is one of the jobs given out as they are. */
  synchronized boolean isJob(PacketContents job) {
    return jobs.containsValue(job);
  }

  synchronized PrintedPacket packet(Packet packet, PaperSize paper, Words words) {
    return packets.computeIfAbsent(
        packet + " " + paper + words.language(), k -> PacketSet.of(packet, job(paper, words)));
  }

  PrintedPacket packet(Packet packet, PaperSize paper) {
    return packet(packet, paper, Words.english());
  }

  /** The work by the example book. */
  WorkPlan work(Site shown) {
    List<AreaTakeoff> floors =
        results.stream()
            .map(
                r ->
                    AreaTakeoff.of(
                        r.takeoff(),
                        r.inlays().stream()
                            .map(i -> InlayTakeoff.of(i.inlay(), i.plan()))
                            .toList()))
            .toList();
    return WorkPlan.of(shown, floors, BookSamples.book());
  }
}
