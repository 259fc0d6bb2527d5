package slabwright.site.edit;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.site.Site;
import slabwright.site.rules.SiteValidator;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/**
 * A change of a site. Applying it gives the next site, or a refusal that says why and where; it
 * never leaves the site with a fault that was not there before.
 */
public sealed interface Edit permits SiteEdit, AreaEdit, Edit.Several {
  /** What undo names, such as "move corner". */
  Message name();

  /** The changed site, unchecked; empty when what it is about is not there. */
  Optional<Site> change(Site site);

  /** Changes and checks. */
  default Result<Site> apply(Site site) {
    Optional<Site> next = change(site);
    if (next.isEmpty()) {
      return Result.refused(Message.of("site.edit.cannot-it-is-no-longer", name()));
    }
    Set<Message> before = new HashSet<>();
    SiteValidator.validateChanged(next.get(), site).forEach(r -> before.add(r.message()));
    List<Refusal> fresh =
        SiteValidator.validateChanged(site, next.get()).stream()
            .filter(r -> !before.contains(r.message()))
            .toList();
    return fresh.isEmpty() ? Result.ok(next.get()) : Result.refused(fresh);
  }

  /** Several edits as one step of undo. */
  record Several(Message name, List<Edit> edits) implements Edit {
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
