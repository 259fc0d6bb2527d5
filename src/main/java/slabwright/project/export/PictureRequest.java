package slabwright.project.export;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.pdfin.picture.Photo;
import slabwright.picture.FloorRendering;
import slabwright.picture.FloorScene;
import slabwright.project.SiteResult;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.ClientPhoto;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.work.AreaResult;

/**
 * A picture of one floor as it should look; every door asks for it here.
 *
 * @param area id of the floor area; without one the photo's, else the first
 * @param longestSide pixels; a photo keeps its own size
 */
public record PictureRequest(SiteResult done, Optional<String> area, View view, int longestSide) {
  /** Stands beside every picture, and in its file. */
  public static final Message CAPTION = Message.of("project.picture.what-to-expect");

  /** Colour around the floor in a plan. */
  public static final String BACKDROP = "#efece6";

  /** A view is wider than high, as rooms are. */
  private static final double SHAPE = 0.625;

  /** From where it is seen. */
  public sealed interface View {}

  /** From straight above. */
  public record FromAbove() implements View {}

  /** From the way in, at eye height. */
  public record FromDoor() implements View {}

  /** On a photo, by the four points that the plan holds. */
  public record OnPhoto(Path file) implements View {}

  /**
   * What is shown.
   *
   * @param notes what must be said of it beside the caption
   */
  public record FloorShown(String areaName, FloorRendering rendering, List<Message> notes) {
    public FloorShown {
      notes = List.copyOf(notes);
    }
  }

  /** The picture, not painted yet; refused when the plan has no such floor or photo. */
  public Result<FloorShown> shown() {
    Optional<AreaResult> floor = floor();
    if (floor.isEmpty()) {
      return Result.refused(
          area.isPresent()
              ? Message.of("project.picture.no-such-floor", area.get(), ids())
              : Message.of("project.picture.no-floor"));
    }
    AreaResult f = floor.get();
    FloorScene scene = FloorScene.of(f.takeoff(), f.inlays(), done.work().book());
    List<Message> notes =
        scene.uncoloured().stream()
            .map(label -> Message.of("project.picture.no-colour", label))
            .toList();
    return rendering(scene).map(r -> new FloorShown(f.takeoff().area().name(), r, notes));
  }

  private String ids() {
    return String.join(", ", done.areas().stream().map(a -> a.takeoff().area().id()).toList());
  }

  private Optional<AreaResult> floor() {
    if (area.isPresent()) {
      return done.areas().stream()
          .filter(a -> a.takeoff().area().id().equals(area.get()))
          .findFirst();
    }
    // Of floors with as many of the photo's points the first.
    return done.areas().stream().min(Comparator.comparingLong((AreaResult a) -> -pointsOn(a)));
  }

  private long pointsOn(AreaResult a) {
    return view instanceof OnPhoto
        ? done.site().job().clientPhoto().map(ClientPhoto::points).orElse(List.of()).stream()
            .filter(p -> a.takeoff().gross().contains(p.floor().vec()))
            .count()
        : 0;
  }

  private Result<FloorRendering> rendering(FloorScene scene) {
    if (view instanceof OnPhoto photo) {
      return onPhoto(scene, photo.file());
    }
    if (view instanceof FromDoor) {
      int high = (int) Math.round(longestSide * SHAPE);
      return Result.ok(FloorRendering.fromDoor(scene, longestSide, high));
    }
    Bounds b = scene.bounds();
    double scale = longestSide / (Math.max(b.width(), b.height()) + 2 * FloorRendering.AROUND);
    return Result.ok(FloorRendering.plan(scene, scale, BACKDROP));
  }

  private Result<FloorRendering> onPhoto(FloorScene scene, Path file) {
    Optional<ClientPhoto> known = done.site().job().clientPhoto();
    if (known.isEmpty()) {
      return Result.refused(Message.of("project.picture.no-points"));
    }
    if (!Files.isRegularFile(file)) {
      return Result.refused(Message.of("project.picture.no-photo", file.toString()));
    }
    return Photo.read(file).flatMap(p -> onPhoto(scene, p, known.get()));
  }

  private static Result<FloorRendering> onPhoto(FloorScene scene, Photo photo, ClientPhoto known) {
    List<Vec> pixels = known.points().stream().map(p -> p.picture().times(photo.scale())).toList();
    List<Vec> floor = known.points().stream().map(p -> p.floor().vec()).toList();
    List<Vec> mask = known.mask().stream().map(p -> p.times(photo.scale())).toList();
    return FloorRendering.onPhoto(scene, photo.picture().image(), floor, pixels, mask)
        .<Result<FloorRendering>>map(Result::ok)
        .orElseGet(() -> Result.refused(Message.of("project.picture.points-do-not-fit")));
  }
}
