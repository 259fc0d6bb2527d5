package slabwright.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.canvas.SlabLayers;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.model.compute.Proofs;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.compute.SelectedAreaRoutes;
import slabwright.desk.model.plan.TapedRooms;
import slabwright.drawing.Ink;
import slabwright.figures.PrepInks;
import slabwright.figures.ProofFaultInks;
import slabwright.figures.TapedRoomInks;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.QuickTakeoff;
import slabwright.shape.Affine;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;

/** What each stage lays over the plan. */
final class StageInks implements SlabLayers {
  private final DeskContext bench;
  private final SelectedAreaResults answers;
  private final Proofs proofs;
  private final SelectedAreaRoutes ways;
  private final TapedRooms rooms;
  private final Supplier<Optional<Path>> plan;
  private final DeskModel parts;
  private Optional<QuickTakeoff> prepOf = Optional.empty();
  private List<Ink> prep = List.of();

  StageInks(DeskModel parts) {
    this.parts = parts;
    plan = parts.keeper()::plan;
    bench = parts.bench();
    answers = parts.answers();
    proofs = parts.proofs();
    ways = parts.ways();
    rooms = parts.rooms();
  }

  @Override
  public Optional<Path> plan() {
    return plan.get();
  }

  @Override
  public List<Ink> onFloor() {
    Stage stage = bench.focus().stage();
    Optional<QuickTakeoff> now = answers.glance();
    if ((stage != Stage.PREP && stage != Stage.INLAY) || now.isEmpty()) {
      return List.of();
    }
    if (now.get().area().machines().isEmpty()) {
      // Without a machine all of it is hand work; a card says so, a red floor would say less.
      return List.of();
    }
    if (!prepOf.equals(now)) {
      prepOf = now;
      prep = List.copyOf(PrepInks.of(now.get().asFound()));
    }
    return prep;
  }

  @Override
  public List<Ink> overWalls() {
    List<Ink> inks = new ArrayList<>(ofStage());
    inks.addAll(PhotoSigns.of(bench, parts.pictures().picture()));
    return inks;
  }

  private List<Ink> ofStage() {
    if (bench.focus().stage() == Stage.MEASURE) {
      return bench.focus().area().map(this::taped).orElse(List.of());
    }
    return bench.focus().stage() == Stage.PREP
        ? answers.glance().map(this::prep).orElse(List.of())
        : List.of();
  }

  /** How well a taped room is known. */
  private List<Ink> taped(FloorArea area) {
    return rooms
        .of(area)
        .map(r -> TapedRoomInks.of(r, area, bench.desk().site().units()))
        .orElse(List.of());
  }

  private List<Ink> prep(QuickTakeoff g) {
    List<Ink> inks = new ArrayList<>(PrepInks.edges(g.edges()));
    Optional<FloorTakeoff> rests = g.isExact() ? answers.takeoff() : Optional.empty();
    rests.ifPresent(t -> inks.addAll(PrepInks.ways(t, ways.ways(), bench.desk().shown().units())));
    return inks;
  }

  @Override
  public List<Ink> trueColours(double mm) {
    Optional<FloorArea> area = bench.focus().area();
    List<Ink> inks = new ArrayList<>();
    area.ifPresent(a -> inks.addAll(PlacedInlayInks.dyed(a, answers, bench.settings().dark())));
    area.filter(a -> bench.focus().stage() == Stage.INLAY)
        .ifPresent(a -> inks.addAll(PlacedInlayInks.film(a, answers, mm)));
    return inks;
  }

  @Override
  public List<Ink> overInlays(double mm) {
    boolean here = bench.focus().stage() == Stage.INLAY;
    Optional<FloorArea> area = here ? bench.focus().area() : Optional.empty();
    List<Ink> inks = new ArrayList<>();
    area.ifPresent(
        a -> {
          inks.addAll(PlacedInlayInks.worked(a, answers, mm));
          a.inlays().forEach(i -> inks.addAll(faults(i)));
        });
    return inks;
  }

  /** Where a returned drawing differs from the plan, on the floor. */
  private List<Ink> faults(Inlay i) {
    Optional<Affine> map = answers.inlay(i.id()).flatMap(a -> a.toSite(i));
    return map.flatMap(m -> proofs.of(i).map(s -> ProofFaultInks.of(s.report(), m)))
        .orElse(List.of());
  }

  @Override
  public boolean namesCorners() {
    return switch (bench.focus().stage()) {
      case MEASURE -> bench.focus().area().flatMap(rooms::of).isEmpty();
      case MARK -> !bench.focus().selected().isEmpty();
      default -> false;
    };
  }

  @Override
  public boolean namesMarks() {
    Stage stage = bench.focus().stage();
    return stage == Stage.MARK || stage == Stage.MEASURE || stage == Stage.FINISH;
  }
}
