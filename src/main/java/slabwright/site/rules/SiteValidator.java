package slabwright.site.rules;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Refusal;

/** What must hold of a site. A list of small rules, used by edits and by the plan file alike. */
public final class SiteValidator {
  /** One thing that must hold of an area; {@code path} is the area's place in the plan. */
  interface AreaRule {
    void check(FloorArea area, String path, List<Refusal> out);
  }

  private static final List<AreaRule> AREA_RULES =
      List.of(
          OutlineRules::corners,
          OutlineRules::extent,
          OutlineRules::crossing,
          OutlineRules::doorways,
          MarkRules::sizes,
          MarkRules::inside,
          MarkRules::ids,
          MarkRules::trenches,
          DetailRules::machines,
          DetailRules::slab,
          DetailRules::air,
          DetailRules::declined,
          AreaDetailsRules::taped,
          AreaDetailsRules::built,
          AreaDetailsRules::divisions,
          AreaDetailsRules::stops,
          AreaDetailsRules::holds,
          InlaySpecRules::size,
          InlaySpecRules::roll,
          InlaySpecRules::graphicPath,
          InlaySpecRules::source);

  private SiteValidator() {}

  /** Every fault of the site, with its place. */
  public static List<Refusal> validate(Site site) {
    return validateChanged(Site.empty("", site.units()), site);
  }

  /**
   * The faults of the site as a whole, and of the areas that differ from those of {@code known}.
   */
  public static List<Refusal> validateChanged(Site known, Site site) {
    List<Refusal> out = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    Set<FloorArea> same = Collections.newSetFromMap(new IdentityHashMap<>());
    same.addAll(known.areas());
    for (int i = 0; i < site.areas().size(); i++) {
      FloorArea area = site.areas().get(i);
      String path = "areas[" + i + "]";
      IdRules.check(area.id(), path + ".id", ids, out);
      if (!same.contains(area)) {
        for (AreaRule rule : AREA_RULES) {
          rule.check(area, path, out);
        }
      }
    }
    JobRules.check(site, out);
    return out;
  }
}
