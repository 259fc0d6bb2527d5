package slabwright.desk.model;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.site.FloorArea;
import slabwright.site.Site;

/** What the person looks at: the stage, the floor area, what is picked. */
public final class Focus {
  private final Desk desk;
  private final Signal changed = new Signal();
  private Stage stage = Stage.MEASURE;
  private String areaId = "";
  private Set<Pick> picked = Set.of();

  public Focus(Desk desk) {
    this.desk = desk;
    desk.walked().hear(this::heal);
  }

  public Signal changed() {
    return changed;
  }

  public Stage stage() {
    return stage;
  }

  /** Goes to a stage. */
  public void go(Stage to) {
    stage = to;
    desk.forgetNews();
    changed.give();
  }

  /** The floor area looked at, as shown; empty while the site has none. */
  public Optional<FloorArea> area() {
    return areaOf(desk.shown());
  }

  /** The floor area looked at in a given state of the site. */
  public Optional<FloorArea> areaOf(Site site) {
    return site.area(areaId).or(() -> site.areas().stream().findFirst());
  }

  public void look(String floorAreaId) {
    areaId = floorAreaId;
    picked = Set.of();
    changed.give();
  }

  public Set<Pick> picked() {
    return picked;
  }

  /** The one thing picked; empty when there are none or several. */
  public Optional<Pick> single() {
    return picked.size() == 1 ? Optional.of(picked.iterator().next()) : Optional.empty();
  }

  /** Ids of the picked marks. */
  public Set<String> marks() {
    return picked.stream()
        .filter(Pick.OfMark.class::isInstance)
        .map(p -> ((Pick.OfMark) p).id())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  public void pick(Pick... these) {
    pick(List.of(these));
  }

  /** Picks these instead of what was picked. */
  public void pick(Iterable<? extends Pick> these) {
    Set<Pick> next = new LinkedHashSet<>();
    these.forEach(next::add);
    picked = next;
    changed.give();
  }

  /** Picks one more, or lets it go when it was picked. */
  public void toggle(Pick one) {
    Set<Pick> next = new LinkedHashSet<>(picked);
    if (!next.remove(one)) {
      next.add(one);
    }
    picked = next;
    changed.give();
  }

  /** Lets go of what is no longer on the plan. */
  private void heal() {
    Optional<FloorArea> area = areaOf(desk.site());
    picked =
        picked.stream()
            .filter(p -> area.map(p::isIn).orElse(false))
            .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
