package slabwright.site.edit;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import slabwright.site.FloorArea;
import slabwright.site.Release;
import slabwright.site.Site;
import slabwright.site.Underlay;
import slabwright.units.UnitSystem;

/** Edits of the site as a whole. */
public sealed interface SiteEdit extends Edit {
  /** Names the site. */
  record Rename(String to) implements SiteEdit {
    @Override
    public String name() {
      return "rename site";
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withName(to));
    }
  }

  /** Sets the line under the site's name. */
  record SetNote(String to) implements SiteEdit {
    @Override
    public String name() {
      return "change note";
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withNote(to));
    }
  }

  /** Chooses how numbers are shown. */
  record SetUnits(UnitSystem to) implements SiteEdit {
    @Override
    public String name() {
      return "change units";
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withUnits(to));
    }
  }

  /** Says when work begins. */
  record SetStart(Optional<LocalDateTime> to) implements SiteEdit {
    @Override
    public String name() {
      return "change start of work";
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withStart(to));
    }
  }

  /** Adds a floor area after the others. */
  record AddArea(FloorArea area) implements SiteEdit {
    @Override
    public String name() {
      return "add floor area";
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withAreas(ListEdits.with(site.areas(), area)));
    }
  }

  /** Takes a floor area away with all that is on it. */
  record RemoveArea(String areaId) implements SiteEdit {
    @Override
    public String name() {
      return "remove floor area";
    }

    @Override
    public Optional<Site> change(Site site) {
      List<FloorArea> left = site.areas().stream().filter(a -> !a.id().equals(areaId)).toList();
      return left.size() == site.areas().size()
          ? Optional.empty()
          : Optional.of(site.withAreas(left));
    }
  }

  /** Puts a picture under the drawing, or takes it away. */
  record SetUnderlay(Optional<Underlay> to) implements SiteEdit {
    @Override
    public String name() {
      return to.isEmpty() ? "take picture away" : "lay picture";
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withUnderlay(to));
    }
  }

  /** Records a release. */
  record Issue(Release release) implements SiteEdit {
    @Override
    public String name() {
      return "issue release " + release.number();
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withReleases(ListEdits.with(site.releases(), release)));
    }
  }
}
