package slabwright.site.edit;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.site.Refusal;
import slabwright.site.Site;
import slabwright.site.rules.SiteValidator;

/**
 * A change of a site. Applying it gives the next site, or a refusal that says why and where; it
 * never leaves the site with a fault that was not there before.
 */
public sealed interface Edit permits SiteEdit, AreaEdit, Edit.Several {
  /** What undo names, such as "move corner". */
  String name();

  /** The changed site, unchecked; empty when what it is about is not there. */
  Optional<Site> change(Site site);

  /** Changes and checks. */
  default Outcome apply(Site site) {
    Optional<Site> next = change(site);
    if (next.isEmpty()) {
      return new Outcome.Refused(
          Refusal.of("Cannot " + name() + ": it is no longer on the plan; pick it again."));
    }
    Set<String> before = new HashSet<>();
    SiteValidator.validateChanged(next.get(), site).forEach(r -> before.add(r.sentence()));
    return SiteValidator.validateChanged(site, next.get()).stream()
        .filter(r -> !before.contains(r.sentence()))
        .findFirst()
        .<Outcome>map(Outcome.Refused::new)
        .orElseGet(() -> new Outcome.Done(next.get()));
  }

  /** Several edits as one step of undo. */
  record Several(String name, List<Edit> edits) implements Edit {
    public Several {
      edits = List.copyOf(edits);
    }

    @Override
    public Optional<Site> change(Site site) {
      Optional<Site> now = Optional.of(site);
      for (Edit e : edits) {
        now = now.flatMap(e::change);
      }
      return now;
    }
  }
}
