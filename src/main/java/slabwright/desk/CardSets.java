package slabwright.desk;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.HintCard;
import slabwright.desk.cards.LookHereCard;
import slabwright.desk.cards.PapersCard;
import slabwright.desk.cards.PlaceNavigator;
import slabwright.desk.cards.finish.ActualsCard;
import slabwright.desk.cards.finish.AirCard;
import slabwright.desk.cards.finish.BookCard;
import slabwright.desk.cards.finish.CautionsCard;
import slabwright.desk.cards.finish.CoatsCard;
import slabwright.desk.cards.finish.DaysCard;
import slabwright.desk.cards.finish.FinishCard;
import slabwright.desk.cards.finish.SealerCard;
import slabwright.desk.cards.finish.SlabCard;
import slabwright.desk.cards.finish.StopsCard;
import slabwright.desk.cards.inlay.ChecksCard;
import slabwright.desk.cards.inlay.ColoursCard;
import slabwright.desk.cards.inlay.CutCard;
import slabwright.desk.cards.inlay.GraphicCard;
import slabwright.desk.cards.inlay.InlayCard;
import slabwright.desk.cards.inlay.OnFloorCard;
import slabwright.desk.cards.inlay.PanelsCard;
import slabwright.desk.cards.inlay.ProofCard;
import slabwright.desk.cards.inlay.SeamsCard;
import slabwright.desk.cards.inlay.StencilCard;
import slabwright.desk.cards.inlay.TraceCard;
import slabwright.desk.cards.mark.MarkCard;
import slabwright.desk.cards.mark.MarksCard;
import slabwright.desk.cards.mark.PhotosCard;
import slabwright.desk.cards.mark.RepeatCard;
import slabwright.desk.cards.measure.AreaCard;
import slabwright.desk.cards.measure.CornerCard;
import slabwright.desk.cards.measure.DoorwayCard;
import slabwright.desk.cards.measure.ReadingsCard;
import slabwright.desk.cards.measure.SiteCard;
import slabwright.desk.cards.measure.TapeCard;
import slabwright.desk.cards.measure.UnderlayCard;
import slabwright.desk.cards.measure.WallCard;
import slabwright.desk.cards.prep.EdgesCard;
import slabwright.desk.cards.prep.HandWorkCard;
import slabwright.desk.cards.prep.MachinesCard;
import slabwright.desk.cards.prep.ReachCard;
import slabwright.desk.cards.sheets.PaperCard;
import slabwright.desk.cards.sheets.ReleaseCard;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.model.compute.SelectedAreaResults;

/** Which cards each stage shows, in order. */
final class CardSets {
  private final Map<Stage, List<Card>> sets = new EnumMap<>(Stage.class);

  /**
   * What cards can ask for beyond edits.
   *
   * @param graphic asks for a graphic and places it
   * @param proof asks for a drawing that came back
   * @param photo asks for a photo of what is picked
   * @param mark asks for the picture of the contractor's mark
   */
  record CardActions(
      Runnable graphic,
      Supplier<Optional<Path>> proof,
      UnderlayCard.Actions picture,
      SheetExports exports,
      Runnable photo,
      Runnable mark) {}

  CardSets(DeskModel s, PlaceNavigator places, CardActions doors) {
    DeskContext bench = s.bench();
    sets.put(Stage.MEASURE, measure(s, places, doors));
    sets.put(Stage.MARK, mark(s, places, doors.photo()));
    sets.put(Stage.PREP, prep(s, places));
    sets.put(Stage.INLAY, inlay(s, places, doors));
    sets.put(Stage.FINISH, finish(s, places));
    sets.put(
        Stage.SHEETS,
        List.of(
            noFloor(bench),
            new PaperCard(bench, s.pages(), doors.exports()),
            new CutCard(bench, doors.exports()),
            new PapersCard(bench, doors.mark()),
            new ReleaseCard(bench, s.releases())));
  }

  private static List<Card> measure(DeskModel s, PlaceNavigator places, CardActions doors) {
    DeskContext bench = s.bench();
    return List.of(
        noFloor(bench),
        new CornerCard(bench),
        new WallCard(bench),
        new DoorwayCard(bench),
        new MarkCard(bench),
        new PhotosCard(bench, s.keeper()::plan, doors.photo()),
        new AreaCard(bench, s.pictures()),
        new UnderlayCard(bench, doors.picture()),
        new TapeCard(bench, s.rooms(), places),
        new ReadingsCard(bench, s.rooms()),
        new SiteCard(bench),
        new PapersCard(bench, doors.mark()));
  }

  private static HintCard noMachine(DeskContext bench) {
    return new HintCard(
        bench,
        "no-machine",
        bench.words().say("desk.app.cards.no-machine"),
        bench.words().say("desk.app.cards.what-no-machine-means"),
        () -> bench.focus().area().filter(a -> a.machines().isEmpty()).isPresent());
  }

  private static HintCard noFloor(DeskContext bench) {
    return new HintCard(
        bench,
        "no-floor-yet",
        bench.words().say("desk.app.cards.no-floor-yet"),
        bench.words().say("desk.app.cards.how-a-floor-begins"),
        () -> bench.focus().area().isEmpty());
  }

  private static Card look(DeskModel s, PlaceNavigator places) {
    return new LookHereCard(s.bench(), s.warnings(), places)
        .dimmedUnless(() -> s.answers().isTakenOff() && !s.warnings().isWorking());
  }

  private static List<Card> mark(DeskModel s, PlaceNavigator places, Runnable photo) {
    DeskContext bench = s.bench();
    return List.of(
        new MarkCard(bench),
        new PhotosCard(bench, s.keeper()::plan, photo),
        new RepeatCard(bench),
        look(s, places),
        new HintCard(
            bench,
            "mark-what-is-there",
            bench.words().say("desk.app.cards.mark-what-is-there"),
            bench.words().say("desk.app.cards.how-marks-are-drawn"),
            () -> bench.focus().selected().isEmpty()),
        new MarksCard(bench));
  }

  private static List<Card> prep(DeskModel s, PlaceNavigator places) {
    DeskContext bench = s.bench();
    return List.of(
        new DoorwayCard(bench),
        new MarkCard(bench),
        noMachine(bench),
        new MachinesCard(bench, s.ways()),
        look(s, places),
        new HandWorkCard(bench, s.answers(), s.warnings(), places)
            .dimmedUnless(() -> s.answers().isTakenOff() && !s.warnings().isWorking()),
        new ReachCard(bench, s.answers(), s.ways(), places).dimmedUnless(s.answers()::isTakenOff),
        new EdgesCard(bench, s.answers()).dimmedUnless(s.answers()::isTakenOff));
  }

  /** Short steps, one open at a time, in the order in which they are answered. */
  private static List<Card> finish(DeskModel s, PlaceNavigator places) {
    BooleanSupplier current = () -> s.job().current().isPresent();
    return List.of(
        new MarkCard(s.bench()),
        new FinishCard(s.bench(), s.job()).step(),
        new SlabCard(s.bench()).step(),
        new SealerCard(s.bench()).step(),
        new CoatsCard(s.bench(), s.job()).dimmedUnless(current).step(),
        new AirCard(s.bench(), s.job()).dimmedUnless(current).step(),
        new StopsCard(s.bench(), s.job()).step(),
        new DaysCard(s.bench(), s.job()).dimmedUnless(current).step(),
        new CautionsCard(s.bench(), s.job(), places).dimmedUnless(current).step(),
        new BookCard(s.bench(), s.book()).step(),
        new ActualsCard(s.bench(), s.job(), s.book()).step());
  }

  private static List<Card> inlay(DeskModel s, PlaceNavigator places, CardActions doors) {
    DeskContext bench = s.bench();
    SelectedAreaResults answers = s.answers();
    return List.of(
        new GraphicCard(bench, doors.graphic()),
        new InlayCard(bench, doors.graphic()),
        new TraceCard(bench, answers, s.keeper()::plan),
        look(s, places),
        new PanelsCard(bench, answers).dimmedUnless(answers::isUpToDate),
        new ChecksCard(bench, answers, places, s.releases()).dimmedUnless(answers::isUpToDate),
        new SeamsCard(bench, answers, s.seams()),
        new ColoursCard(bench, answers),
        new CutCard(bench, doors.exports()),
        new ProofCard(bench, answers, s.proofs(), places, doors.proof()),
        new OnFloorCard(bench, answers).dimmedUnless(answers::isUpToDate),
        new StencilCard(bench));
  }

  List<Card> of(Stage stage) {
    return sets.getOrDefault(stage, List.of());
  }
}
