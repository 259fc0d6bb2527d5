package slabwright.site.edit;

import java.util.List;
import java.util.Optional;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.AdviceId;
import slabwright.site.AirSpace;
import slabwright.site.AreaDetails;
import slabwright.site.ClientPhoto;
import slabwright.site.Declined;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Inlay;
import slabwright.site.Machine;
import slabwright.site.Move;
import slabwright.site.OutlinePiece;
import slabwright.site.OutlineShape;
import slabwright.site.Setting;
import slabwright.site.Site;
import slabwright.site.Slab;
import slabwright.site.StencilSpec;
import slabwright.units.Message;

/** Edits of one floor area. */
public sealed interface AreaEdit extends Edit permits OutlineEdit, MarkEdit, AreaEdit.Detail {
  String areaId();

  /** The changed area, unchecked; empty when what the edit is about is not there. */
  Optional<FloorArea> change(FloorArea area);

  @Override
  default Optional<Site> change(Site site) {
    return site.area(areaId())
        .flatMap(this::change)
        .map(next -> site.withAreas(ListEdits.put(site.areas(), next, FloorArea::id)));
  }

  /** Edits of what is known of an area beside its outline and marks. */
  sealed interface Detail extends AreaEdit {}

  /** Names the area. */
  record Rename(String areaId, String to) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.rename-floor-area");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withName(to));
    }
  }

  /**
   * Moves or turns the whole area with all that is on it; nothing in it changes its place to
   * another.
   */
  record Shift(String areaId, Move how) implements Detail {
    public Shift(String areaId, Vec by) {
      this(areaId, Move.by(by.x(), by.y()));
    }

    @Override
    public Message name() {
      return Message.of("site.area-edit.move-floor-area");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(
          area.withOutline(
                  area.outline().stream()
                      .map(p -> new OutlinePiece(how.spot(p.from()), p.kind(), p.rise()))
                      .toList())
              .withMarks(area.marks().stream().map(m -> m.withForm(m.form().map(how))).toList())
              .withInlays(
                  area.inlays().stream()
                      .map(i -> i.withMiddle(how.spot(i.middle())).withTurn(turned(i.turn())))
                      .toList())
              .withDetails(area.details().moved(how)));
    }

    /** The client's photo shows the floor that most of its points lie on, and goes with it. */
    @Override
    public Optional<Site> change(Site site) {
      Optional<Site> moved = Detail.super.change(site);
      Optional<ClientPhoto> photo = site.job().clientPhoto();
      if (moved.isEmpty() || photo.isEmpty() || !shows(site, photo.get())) {
        return moved;
      }
      return moved.map(s -> s.withJob(s.job().withClientPhoto(photo.map(p -> p.moved(how)))));
    }

    private boolean shows(Site site, ClientPhoto photo) {
      Region floor =
          site.area(areaId).map(a -> OutlineShape.of(a.outline(), 1).region()).orElseThrow();
      long here = photo.points().stream().filter(p -> floor.contains(p.floor().vec())).count();
      return 2 * here > photo.points().size();
    }

    /** A direction after the move, degrees over -180 up to 180. */
    private double turned(double degrees) {
      return how.turn() == 0 ? degrees : 180 - Move.positive(180 - degrees - how.turn());
    }
  }

  /** Says whether it is indoors. */
  record SetSetting(String areaId, Setting to) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.change-indoor-or-outdoor");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withSetting(to));
    }
  }

  /** Sets the machines. */
  record SetMachines(String areaId, List<Machine> to) implements Detail {
    public SetMachines {
      to = List.copyOf(to);
    }

    @Override
    public Message name() {
      return Message.of("site.area-edit.change-machines");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withMachines(to));
    }
  }

  /** Sets what is known of the slab. */
  record SetSlab(String areaId, Slab to) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.change-slab");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withSlab(to));
    }
  }

  /** Sets the air space. */
  record SetAir(String areaId, AirSpace to) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.change-air");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withAir(to));
    }
  }

  /** Sets the finish system. */
  record SetFinish(String areaId, Finish to) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.change-finish");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withFinish(to));
    }
  }

  /** Answers what goes on on the floor. */
  record SetUse(String areaId, FloorUse to) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.change-use-of-the-floor");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withUse(to));
    }
  }

  /**
   * Sets what else is known of the area.
   *
   * @param name what undo names, such as "clear a stop"
   */
  record SetDetails(String areaId, Message name, AreaDetails to) implements Detail {
    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withDetails(to));
    }
  }

  /** Records that advice was declined, or changes by whom and when. */
  record DeclineAdvice(String areaId, Declined declined) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.decline-advice");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(
          area.withDeclined(ListEdits.put(area.declined(), declined, d -> d.advice().word())));
    }
  }

  /** Lets declined advice stand again. */
  record ReinstateAdvice(String areaId, AdviceId advice) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.take-advice-after-all");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return ListEdits.without(area.declined(), advice.word(), d -> d.advice().word())
          .map(area::withDeclined);
    }
  }

  /** Adds an inlay, or changes the one with its id. */
  record PutInlay(String areaId, Inlay inlay) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.place-inlay");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withInlays(ListEdits.put(area.inlays(), inlay, Inlay::id)));
    }
  }

  /**
   * Changes how an inlay is cut and masked.
   *
   * @param name what undo names, such as "thicken the vinyl"
   */
  record SetStencil(String areaId, String inlayId, Message name, StencilSpec to) implements Detail {
    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return area.inlay(inlayId)
          .map(i -> i.withSpec(to))
          .map(i -> area.withInlays(ListEdits.put(area.inlays(), i, Inlay::id)));
    }
  }

  /** Takes an inlay away. */
  record RemoveInlay(String areaId, String inlayId) implements Detail {
    @Override
    public Message name() {
      return Message.of("site.area-edit.remove-inlay");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return ListEdits.without(area.inlays(), inlayId, Inlay::id).map(area::withInlays);
    }
  }
}
