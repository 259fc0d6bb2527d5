package slabwright.project.plan;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import slabwright.floor.FloorTakeoff;
import slabwright.project.SiteResult;
import slabwright.sheets.packet.AgreedBefore;
import slabwright.site.Site;
import slabwright.store.ReleaseArchive;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.work.AreaResult;
import slabwright.work.Presence;
import slabwright.work.book.ShopBook;
import slabwright.work.book.ShopBookFile;
import slabwright.work.days.DayPlan;
import slabwright.work.handover.Cost;

/**
 * A plan beside one of its releases: what changed, and what that did to areas, edges, hours and
 * cost. Both are computed by the shop book of today, so that only the plan makes the difference.
 *
 * @param release number compared with
 * @param changes as {@link ReleaseFiles#since} tells them
 * @param before the release, worked out
 * @param after the plan, worked out
 */
public record PlanComparison(
    int release,
    List<Message> changes,
    List<FigureChange> figures,
    SiteResult before,
    SiteResult after) {
  private static final List<FigureChange.Kind> OF_SITE =
      List.of(FigureChange.Kind.CREW, FigureChange.Kind.PRESENCE, FigureChange.Kind.COST);

  public PlanComparison {
    changes = List.copyOf(changes);
    figures = List.copyOf(figures);
  }

  /**
   * Compares a plan with a release of it; refused when there is none, when its frozen copy is not
   * beside the plan, or when the shop book can't be read as one.
   *
   * @param since number of the release; the last one when absent
   * @throws IOException when a file breaks while it is read
   * @throws java.util.concurrent.CancellationException when {@code cancelled} turned true
   */
  public static Result<PlanComparison> of(
      Site now, Path plan, OptionalInt since, BooleanSupplier cancelled) throws IOException {
    ReleaseArchive archive = new ReleaseArchive(plan);
    int release = since.orElse(now.releaseNumber());
    if (release == 0) {
      return Result.refused(Message.of("project.plan-comparison.no-release"));
    }
    Optional<Site> then = archive.read(release);
    Optional<List<Message>> changes = new ReleaseFiles(plan).since(release, now);
    if (then.isEmpty() || changes.isEmpty()) {
      return Result.refused(
          Message.of(
              "project.plan-comparison.no-copy",
              release,
              archive.folder(release).getFileName().toString()));
    }
    Path folder = plan.toAbsolutePath().getParent();
    Result<ShopBookFile> book = SiteResult.bookFile(folder);
    if (book instanceof Result.Refused<ShopBookFile> bad) {
      return Result.refused(bad.refusals());
    }
    ShopBook shop = ShopBook.of(book.orThrow().text());
    SiteResult before = SiteResult.compute(then.get(), archive.folder(release), shop, cancelled);
    SiteResult after = SiteResult.compute(now, folder, shop, cancelled);
    return Result.ok(
        new PlanComparison(release, changes.get(), figures(before, after), before, after));
  }

  /** What the release agreed, for a change order; empty when nothing changed. */
  public Optional<AgreedBefore> agreed() {
    return changes.isEmpty()
        ? Optional.empty()
        : Optional.of(new AgreedBefore(release, before.areas(), before.work(), changes));
  }

  /**
   * What the last release agreed that a plan no longer says; empty where there is no release, its
   * copy is gone, or the plan still is what was issued.
   *
   * @param done the plan worked out
   * @throws IOException when a file breaks while it is read
   */
  public static Optional<AgreedBefore> agreed(SiteResult done, Path plan) throws IOException {
    int last = new ReleaseArchive(plan).highest();
    if (last == 0 || done.site().releaseNumber() > 0) {
      return Optional.empty();
    }
    return of(done.site(), plan, OptionalInt.of(last), () -> false)
            instanceof Result.Ok<PlanComparison> ok
        ? ok.value().agreed()
        : Optional.empty();
  }

  private static List<FigureChange> figures(SiteResult before, SiteResult after) {
    Map<String, AreaResult> then = byId(before);
    Map<String, AreaResult> now = byId(after);
    Map<String, AreaResult> all = new LinkedHashMap<>(now);
    then.forEach(all::putIfAbsent);
    List<FigureChange> rows = new ArrayList<>();
    all.forEach(
        (id, named) -> {
          Optional<String> name = Optional.of(named.takeoff().area().name());
          for (FigureChange.Kind kind : FigureChange.Kind.values()) {
            if (!isOfSite(kind)) {
              rows.add(
                  new FigureChange(
                      name,
                      kind,
                      of(kind, Optional.ofNullable(then.get(id))),
                      of(kind, Optional.ofNullable(now.get(id)))));
            }
          }
        });
    for (FigureChange.Kind kind : OF_SITE) {
      rows.add(new FigureChange(Optional.empty(), kind, of(kind, before), of(kind, after)));
    }
    return rows;
  }

  private static Map<String, AreaResult> byId(SiteResult site) {
    Map<String, AreaResult> areas = new LinkedHashMap<>();
    site.areas().forEach(a -> areas.put(a.takeoff().area().id(), a));
    return areas;
  }

  private static boolean isOfSite(FigureChange.Kind kind) {
    return OF_SITE.contains(kind);
  }

  private static OptionalDouble of(FigureChange.Kind kind, SiteResult site) {
    return switch (kind) {
      case CREW -> hours(site, DayPlan::personTime);
      case PRESENCE -> hours(site, d -> Presence.of(d, site.work().book()).present());
      case COST -> OptionalDouble.of(Cost.of(site.work()).known().doubleValue());
      case NET_FLOOR, MACHINE, HAND, EDGES, CUT_IN, INLAY -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble hours(SiteResult site, Function<DayPlan, Duration> what) {
    return site.work()
        .days()
        .maybe()
        .map(d -> OptionalDouble.of(what.apply(d).toMinutes() / 60.0))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble of(FigureChange.Kind kind, Optional<AreaResult> area) {
    return area.map(a -> of(kind, a)).orElse(OptionalDouble.empty());
  }

  private static OptionalDouble of(FigureChange.Kind kind, AreaResult area) {
    FloorTakeoff t = area.takeoff();
    return switch (kind) {
      case NET_FLOOR -> OptionalDouble.of(t.net().area());
      case MACHINE -> OptionalDouble.of(t.asFound().machine().area());
      case HAND -> OptionalDouble.of(t.asFound().hand().area());
      case EDGES -> OptionalDouble.of(t.edgeLength());
      case CUT_IN -> OptionalDouble.of(t.cutIn());
      case INLAY ->
          area.refused().isEmpty()
              ? OptionalDouble.of(
                  area.inlays().stream().mapToDouble(i -> i.plan().openingArea()).sum())
              : OptionalDouble.empty();
      case CREW, PRESENCE, COST -> OptionalDouble.empty();
    };
  }
}
