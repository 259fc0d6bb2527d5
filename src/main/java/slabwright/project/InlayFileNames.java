package slabwright.project;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.units.FileName;

/**
 * What the files of a site's inlays are called. Inlay ids are unique within one floor area and
 * names nowhere, so two floor areas may share both: then the area is told as well, and a number if
 * that is not enough. A name that is the only one of its kind stays plain. Upper and lower case
 * count as one, since some disks do not tell them apart.
 */
public final class InlayFileNames {
  private record Place(String area, String inlay) {}

  private final List<FloorArea> areas;

  public InlayFileNames(Site site) {
    this.areas = site.areas();
  }

  /** What the sign shop calls the inlay; its cut files are named by it. */
  public String title(FloorArea area, Inlay inlay) {
    return apart(
            (a, i) -> i.name(),
            (a, i) -> i.name() + ", " + a.name(),
            name -> FileName.slug(name, "inlay"))
        .get(new Place(area.id(), inlay.id()));
  }

  /** The area's id and the inlay's as a part of a file name, unlike that of any other inlay. */
  public String id(FloorArea area, Inlay inlay) {
    BiFunction<FloorArea, Inlay, String> joined = (a, i) -> FileName.ofId(a.id() + "_" + i.id());
    return apart(joined, joined, id -> id.toLowerCase(Locale.ROOT))
        .get(new Place(area.id(), inlay.id()));
  }

  /** Every inlay's name; {@code key} is what two files must not share. */
  private Map<Place, String> apart(
      BiFunction<FloorArea, Inlay, String> plain,
      BiFunction<FloorArea, Inlay, String> longer,
      UnaryOperator<String> key) {
    Set<String> once = new HashSet<>();
    Set<String> shared = new HashSet<>();
    each(
        (a, i) -> {
          String k = key.apply(plain.apply(a, i));
          if (!once.add(k)) {
            shared.add(k);
          }
        });
    Map<Place, String> names = new HashMap<>();
    Set<String> taken = new HashSet<>(once);
    taken.removeAll(shared);
    each(
        (a, i) -> {
          String own = plain.apply(a, i);
          String name = own;
          if (shared.contains(key.apply(own))) {
            String base = longer.apply(a, i);
            name = base;
            for (int n = 2; !taken.add(key.apply(name)); n++) {
              name = base + "-" + n;
            }
          }
          names.put(new Place(a.id(), i.id()), name);
        });
    return names;
  }

  private void each(BiConsumer<FloorArea, Inlay> action) {
    areas.forEach(a -> a.inlays().forEach(i -> action.accept(a, i)));
  }
}
