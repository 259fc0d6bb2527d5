package slabwright.desk.model;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.site.FloorArea;
import slabwright.site.Site;

/** What the person looks at: the stage, the floor area, what is picked. */
public final class Selection {
  private final Desk desk;
  private final Signal changed = new Signal();
  private Stage stage = Stage.MEASURE;
  private String areaId = "";
  private boolean kept;
  private Set<PlanItem> picked = Set.of();

  public Selection(Desk desk) {
    this.desk = desk;
    desk.siteChanged().subscribe(this::dropMissing);
  }

  public Signal changed() {
    return changed;
  }

  public Stage stage() {
    return stage;
  }

  /** Goes to a stage. */
  public void goTo(Stage to) {
    stage = to;
    desk.clearAnnouncement();
    changed.fire();
  }

  /** The floor area looked at, as shown; empty while the site has none. */
  public Optional<FloorArea> area() {
    return areaOf(desk.shown());
  }

  /** The floor area looked at in a given state of the site. */
  public Optional<FloorArea> areaOf(Site site) {
    return site.area(areaId).or(() -> site.areas().stream().findFirst());
  }

  public void selectArea(String floorAreaId) {
    kept = false;
    look(floorAreaId);
  }

  /** Looks at a floor area that is in view already: the view stays as it is. */
  public void selectAreaInView(String floorAreaId) {
    kept = true;
    look(floorAreaId);
  }

  /** Whether the view stays although another floor area was picked. */
  public boolean keepsView() {
    return kept;
  }

  private void look(String floorAreaId) {
    areaId = floorAreaId;
    picked = Set.of();
    changed.fire();
  }

  public Set<PlanItem> selected() {
    return picked;
  }

  /** The one thing picked; empty when there are none or several. */
  public Optional<PlanItem> single() {
    return picked.size() == 1 ? Optional.of(picked.iterator().next()) : Optional.empty();
  }

  /** Ids of the picked marks. */
  public Set<String> selectedMarks() {
    return picked.stream()
        .filter(PlanItem.OfMark.class::isInstance)
        .map(p -> ((PlanItem.OfMark) p).id())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  public void select(PlanItem... these) {
    select(List.of(these));
  }

  /** Picks these instead of what was picked. */
  public void select(Iterable<? extends PlanItem> these) {
    Set<PlanItem> next = new LinkedHashSet<>();
    these.forEach(next::add);
    picked = next;
    changed.fire();
  }

  /** Picks one more, or lets it go when it was picked. */
  public void toggle(PlanItem one) {
    Set<PlanItem> next = new LinkedHashSet<>(picked);
    if (!next.remove(one)) {
      next.add(one);
    }
    picked = next;
    changed.fire();
  }

  /** Lets go of what is no longer on the plan. */
  private void dropMissing() {
    Optional<FloorArea> area = areaOf(desk.site());
    picked =
        picked.stream()
            .filter(p -> area.map(p::isIn).orElse(false))
            .collect(Collectors.toCollection(LinkedHashSet::new));
  }
}
