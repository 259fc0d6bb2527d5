package slabwright.site.edit;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.JobDetails;
import slabwright.site.Release;
import slabwright.site.Site;
import slabwright.site.Underlay;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** Edits of the site as a whole. */
public sealed interface SiteEdit extends Edit {
  /** Names the site. */
  record Rename(String to) implements SiteEdit {
    @Override
    public Message name() {
      return Message.of("site.site-edit.rename-site");
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withName(to));
    }
  }

  /** Sets the line under the site's name. */
  record SetNote(String to) implements SiteEdit {
    @Override
    public Message name() {
      return Message.of("site.site-edit.change-note");
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withNote(to));
    }
  }

  /** Chooses how numbers are shown. */
  record SetUnits(UnitSystem to) implements SiteEdit {
    @Override
    public Message name() {
      return Message.of("site.site-edit.change-units");
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withUnits(to));
    }
  }

  /** Says when work begins. */
  record SetStart(Optional<LocalDateTime> to) implements SiteEdit {
    @Override
    public Message name() {
      return Message.of("site.site-edit.change-start-of-work");
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withStart(to));
    }
  }

  /** Adds a floor area after the others. */
  record AddArea(FloorArea area) implements SiteEdit {
    @Override
    public Message name() {
      return Message.of("site.site-edit.add-floor-area");
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withAreas(ListEdits.with(site.areas(), area)));
    }
  }

  /** Takes a floor area away with all that is on it; doorways that led to it lead nowhere. */
  record RemoveArea(String areaId) implements SiteEdit {
    @Override
    public Message name() {
      return Message.of("site.site-edit.remove-floor-area");
    }

    @Override
    public Optional<Site> change(Site site) {
      List<FloorArea> left = site.areas().stream().filter(a -> !a.id().equals(areaId)).toList();
      return left.size() == site.areas().size()
          ? Optional.empty()
          : Optional.of(site.withAreas(left.stream().map(this::unlinked).toList()));
    }

    private FloorArea unlinked(FloorArea area) {
      return area.doorways().stream().noneMatch(this::leadsThere)
          ? area
          : area.withDoorways(
              area.doorways().stream()
                  .map(
                      d ->
                          leadsThere(d)
                              ? d.withPassage(
                                  new Doorway.Passage(Optional.empty(), d.passage().clear()))
                              : d)
                  .toList());
    }

    private boolean leadsThere(Doorway d) {
      return d.passage().leadsTo().filter(l -> l.area().equals(areaId)).isPresent();
    }
  }

  /** Puts a picture under the drawing, or takes it away. */
  record SetUnderlay(Optional<Underlay> to) implements SiteEdit {
    @Override
    public Message name() {
      return to.isEmpty()
          ? Message.of("site.site-edit.take-picture-away")
          : Message.of("site.site-edit.lay-picture");
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withUnderlay(to));
    }
  }

  /**
   * Sets what is known of the job as a whole.
   *
   * @param name what undo names, such as "change client"
   */
  record SetJob(Message name, JobDetails to) implements SiteEdit {
    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withJob(to));
    }
  }

  /** Records a release. */
  record Issue(Release release) implements SiteEdit {
    @Override
    public Message name() {
      return Message.of("site.site-edit.issue-release", release.number());
    }

    @Override
    public Optional<Site> change(Site site) {
      return Optional.of(site.withReleases(ListEdits.with(site.releases(), release)));
    }
  }
}
