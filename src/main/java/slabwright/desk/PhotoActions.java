package slabwright.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.PinnedTo;
import slabwright.project.FirmMarks;
import slabwright.project.PinnedPhotos;
import slabwright.site.FloorArea;
import slabwright.site.JobDetails;
import slabwright.site.Site;
import slabwright.site.edit.SiteEdit;
import slabwright.site.job.FirmMark;
import slabwright.site.job.Party;
import slabwright.site.job.PinnedPhoto;
import slabwright.units.Message;

/** Pins photos to marks and corners: a small upright copy that tells no place, beside the plan. */
final class PhotoActions {
  private final DeskModel parts;
  private final Chooser chooser;

  PhotoActions(DeskModel parts, Chooser chooser) {
    this.parts = parts;
    this.chooser = chooser;
  }

  /** Asks for a photo of what is picked. */
  void choose() {
    Optional<PlanItem> on = parts.bench().focus().single();
    if (on.flatMap(PinnedTo::of).isEmpty()) {
      parts.bench().desk().refuse(Message.of("desk.app.photo.pick-first"));
    } else {
      chooser.photo().ifPresent(p -> pin(p, on.get()));
    }
  }

  /** Pins a photo to a mark or a corner of the floor area looked at. */
  void pin(Path photo, PlanItem on) {
    Optional<String> area = parts.bench().focus().area().map(FloorArea::id);
    Optional<PinnedPhoto.Pin> pin = PinnedTo.of(on);
    if (area.isEmpty() || pin.isEmpty()) {
      return;
    }
    parts
        .errands()
        .run(
            new BackgroundTasks.BackgroundTask<>(
                Message.of("desk.app.photo.keeping"),
                why -> Message.of("desk.app.photo.not-kept", why),
                steps -> PinnedPhotos.keep(photo, parts.keeper().folder()),
                kept -> put(kept, area.get(), pin.get())));
  }

  private void put(PinnedPhotos.Kept kept, String area, PinnedPhoto.Pin pin) {
    Site site = parts.bench().desk().site();
    List<PinnedPhoto> all = new ArrayList<>(site.job().photos());
    all.add(new PinnedPhoto(kept.file(), area, pin, kept.taken(), "", Optional.empty()));
    Message step = Message.of("desk.app.photo.pin");
    if (parts.bench().desk().push(new SiteEdit.SetJob(step, site.job().withPhotos(all))).isOk()) {
      parts.bench().desk().announce(Message.of("desk.app.photo.pinned", kept.file()));
    }
  }

  /** Asks for the picture of the contractor's mark, which is kept in the plan and for new ones. */
  void chooseMark() {
    chooser
        .photo()
        .ifPresent(
            file ->
                parts
                    .errands()
                    .run(
                        new BackgroundTasks.BackgroundTask<>(
                            Message.of("desk.app.mark.reading"),
                            why -> Message.of("desk.app.mark.not-read", why),
                            steps -> FirmMarks.read(file),
                            this::putMark)));
  }

  private void putMark(FirmMark mark) {
    JobDetails job = parts.bench().desk().site().job();
    Party firm = job.contractor().withMark(Optional.of(mark));
    Message step = Message.of("desk.app.mark.set");
    if (parts.bench().desk().push(new SiteEdit.SetJob(step, job.withContractor(firm))).isOk()) {
      parts.bench().settings().setContractor(firm);
      parts.bench().desk().announce(Message.of("desk.app.mark.stands"));
    }
  }
}
