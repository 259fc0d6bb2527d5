package slabwright.inlay.settingout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/**
 * The setting out of an inlay as it is done on the floor: two snapped lines that cross in its
 * middle, the panel on the cross first, its neighbours to its marks, one diagonal of the whole as
 * check, and two corners checked once more with swung tapes.
 *
 * @param lines empty where neither a doorway nor a wall can be measured from
 * @param panels in the order of laying: stencil by stencil, those of the whole blank from the cross
 *     outwards
 * @param blank how far the whole blank reaches from the cross
 * @param diagonal of the whole blank, mm; both must have it
 * @param checks at most two corners of the blank
 */
public record SettingOut(
    Optional<SnappedLines> lines,
    List<PanelPlace> panels,
    BlankReach blank,
    double diagonal,
    List<TieCheck> checks) {
  /** From the cross to each side of the whole blank as the graphic is read, mm. */
  public record BlankReach(double left, double right, double above, double below) {}

  public SettingOut {
    panels = List.copyOf(panels);
    checks = List.copyOf(checks);
  }

  /**
   * Sets a placed blank out.
   *
   * @param middle of the graphic on the site
   * @param toSite from the blank's frame to the site's
   */
  public static SettingOut of(
      PanelPlan plan,
      Vec middle,
      Affine toSite,
      SettingOutFloor floor,
      SettingOutParameters rules) {
    Vec cross = toSite.inverse().apply(middle);
    Bounds blank = plan.blank();
    return new SettingOut(
        new SnappedLinesSearch(floor, rules).to(middle, toSite, blank),
        places(plan, cross),
        new BlankReach(
            cross.x() - blank.minX(),
            blank.maxX() - cross.x(),
            cross.y() - blank.minY(),
            blank.maxY() - cross.y()),
        Math.hypot(blank.width(), blank.height()),
        checks(blank, toSite, floor, rules));
  }

  private static List<PanelPlace> places(PanelPlan plan, Vec cross) {
    List<Panel> order =
        plan.panels().stream().sorted(Comparator.comparingDouble(p -> off(p, cross))).toList();
    TreeMap<Integer, List<PanelPlace>> byStencil = new TreeMap<>();
    plan.local().forEach((layer, own) -> byStencil.put(layer, apart(own, layer, cross)));
    int whole = 1;
    while (byStencil.containsKey(whole)) {
      whole++;
    }
    byStencil.put(
        whole, order.stream().map(p -> place(p, cross, 0, lap(plan, order.get(0), p))).toList());
    return byStencil.values().stream().flatMap(List::stream).toList();
  }

  /** Panels of local blanks: each blank's first one by itself, the others over what lies. */
  private static List<PanelPlace> apart(PanelPlan own, int layer, Vec cross) {
    List<PanelPlace> places = new ArrayList<>();
    List<String> lie = new ArrayList<>();
    for (String name : own.layingOrder()) {
      boolean over =
          own.laps().stream()
              .anyMatch(
                  s ->
                      (s.first().equals(name) && lie.contains(s.second()))
                          || (s.second().equals(name) && lie.contains(s.first())));
      lie.add(name);
      own.panels().stream()
          .filter(p -> p.name().equals(name))
          .map(p -> place(p, cross, layer, over ? PanelPlace.Lap.OVER : PanelPlace.Lap.APART))
          .forEach(places::add);
    }
    return places;
  }

  private static PanelPlace place(Panel p, Vec cross, int stencil, PanelPlace.Lap lap) {
    Bounds b = p.box();
    return new PanelPlace(
        p.name(),
        cross.x() - b.minX(),
        b.maxX() - cross.x(),
        cross.y() - b.minY(),
        b.maxY() - cross.y(),
        stencil,
        lap);
  }

  /** Panels lie like shingles: one that would have been laid earlier goes under. */
  private static PanelPlace.Lap lap(PanelPlan plan, Panel first, Panel p) {
    if (p.equals(first)) {
      return PanelPlace.Lap.FIRST;
    }
    List<String> shingles = plan.layingOrder();
    return shingles.indexOf(p.name()) < shingles.indexOf(first.name())
        ? PanelPlace.Lap.UNDER
        : PanelPlace.Lap.OVER;
  }

  /** How far a panel's middle lies from the cross; less than nothing where the cross lies on it. */
  private static double off(Panel p, Vec cross) {
    double far = p.box().middle().distanceTo(cross);
    return p.box().contains(cross) ? far - 1e9 : far;
  }

  /** The pair of opposite corners whose worse one is surer; else any corner that is in sight. */
  private static List<TieCheck> checks(
      Bounds blank, Affine toSite, SettingOutFloor floor, SettingOutParameters rules) {
    SwingTieSearch search =
        new SwingTieSearch(floor.free(), KnownCorner.of(floor.outline()), rules);
    List<TieCheck> seen = new ArrayList<>();
    for (BlankCorner c : BlankCorner.values()) {
      search.to(toSite.apply(c.of(blank))).ifPresent(t -> seen.add(new TieCheck(c, t)));
    }
    return opposite(seen, BlankCorner.TOP_LEFT, BlankCorner.BOTTOM_RIGHT).stream()
        .flatMap(
            a ->
                opposite(seen, BlankCorner.TOP_RIGHT, BlankCorner.BOTTOM_LEFT).stream()
                    .map(b -> worst(a) <= worst(b) ? a : b))
        .findFirst()
        .or(() -> opposite(seen, BlankCorner.TOP_LEFT, BlankCorner.BOTTOM_RIGHT))
        .or(() -> opposite(seen, BlankCorner.TOP_RIGHT, BlankCorner.BOTTOM_LEFT))
        .orElseGet(() -> seen.stream().limit(2).toList());
  }

  private static Optional<List<TieCheck>> opposite(
      List<TieCheck> seen, BlankCorner one, BlankCorner other) {
    List<TieCheck> pair =
        seen.stream().filter(c -> c.corner() == one || c.corner() == other).toList();
    return pair.size() == 2 ? Optional.of(pair) : Optional.empty();
  }

  private static double worst(List<TieCheck> pair) {
    return pair.stream().mapToDouble(c -> c.ties().error()).max().orElse(0);
  }
}
