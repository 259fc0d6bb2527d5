package slabwright.desk;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.cards.ActualsCard;
import slabwright.desk.cards.AirCard;
import slabwright.desk.cards.AreaCard;
import slabwright.desk.cards.BookCard;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.CautionsCard;
import slabwright.desk.cards.ChecksCard;
import slabwright.desk.cards.CoatsCard;
import slabwright.desk.cards.ColoursCard;
import slabwright.desk.cards.CornerCard;
import slabwright.desk.cards.CutCard;
import slabwright.desk.cards.DaysCard;
import slabwright.desk.cards.DoorwayCard;
import slabwright.desk.cards.EdgesCard;
import slabwright.desk.cards.FinishCard;
import slabwright.desk.cards.GraphicCard;
import slabwright.desk.cards.HandWorkCard;
import slabwright.desk.cards.HintCard;
import slabwright.desk.cards.InlayCard;
import slabwright.desk.cards.MachinesCard;
import slabwright.desk.cards.MarkCard;
import slabwright.desk.cards.MarksCard;
import slabwright.desk.cards.OnFloorCard;
import slabwright.desk.cards.PanelsCard;
import slabwright.desk.cards.PaperCard;
import slabwright.desk.cards.PictureCard;
import slabwright.desk.cards.Places;
import slabwright.desk.cards.ProofCard;
import slabwright.desk.cards.ReachCard;
import slabwright.desk.cards.ReleaseCard;
import slabwright.desk.cards.SealerCard;
import slabwright.desk.cards.SeamsCard;
import slabwright.desk.cards.SiteCard;
import slabwright.desk.cards.SlabCard;
import slabwright.desk.cards.StencilCard;
import slabwright.desk.cards.TapeCard;
import slabwright.desk.cards.WallCard;
import slabwright.desk.model.Answers;
import slabwright.desk.model.Bench;
import slabwright.desk.model.DeskParts;
import slabwright.desk.model.Stage;

/** Which cards each stage shows, in order. */
final class CardSets {
  private final Map<Stage, List<Card>> sets = new EnumMap<>(Stage.class);

  /**
   * What cards can ask for beyond edits.
   *
   * @param graphic asks for a graphic and places it
   * @param proof asks for a drawing that came back
   */
  record Doors(
      Runnable graphic,
      Supplier<Optional<Path>> proof,
      PictureCard.Actions picture,
      SheetExports exports) {}

  CardSets(DeskParts s, Places places, Doors doors) {
    Bench bench = s.bench();
    sets.put(Stage.MEASURE, measure(s, places, doors.picture()));
    sets.put(Stage.MARK, mark(bench));
    sets.put(Stage.PREP, prep(s, places));
    sets.put(Stage.INLAY, inlay(s, places, doors));
    sets.put(Stage.FINISH, finish(s, places));
    sets.put(
        Stage.SHEETS,
        List.of(
            noFloor(bench),
            new PaperCard(bench, s.pages(), doors.exports()),
            new CutCard(bench, doors.exports()),
            new ReleaseCard(bench, s.releases())));
  }

  private static List<Card> measure(DeskParts s, Places places, PictureCard.Actions picture) {
    Bench bench = s.bench();
    return List.of(
        noFloor(bench),
        new CornerCard(bench),
        new WallCard(bench),
        new DoorwayCard(bench),
        new MarkCard(bench),
        new AreaCard(bench, s.pictures()),
        new PictureCard(bench, picture),
        new TapeCard(bench, s.rooms(), places),
        new SiteCard(bench));
  }

  private static HintCard noFloor(Bench bench) {
    return new HintCard(
        "No floor yet",
        "Take up Tape and type the walls as you measured them, or Draw and click the corners."
            + " The room closes when you come back to the first corner.",
        () -> bench.focus().area().isEmpty());
  }

  private static List<Card> mark(Bench bench) {
    return List.of(
        new MarkCard(bench),
        new HintCard(
            "Mark what is there",
            "Take up a tool and draw what lies or stands on the slab. Sizes can be typed while"
                + " drawing; a picked mark shows its fields here.",
            () -> bench.focus().picked().isEmpty()),
        new MarksCard(bench));
  }

  private static List<Card> prep(DeskParts s, Places places) {
    Bench bench = s.bench();
    return List.of(
        new DoorwayCard(bench),
        new MarkCard(bench),
        new MachinesCard(bench),
        new HandWorkCard(bench, s.answers(), places),
        new ReachCard(bench, s.answers(), s.ways(), places),
        new EdgesCard(bench, s.answers()));
  }

  private static List<Card> finish(DeskParts s, Places places) {
    return List.of(
        new MarkCard(s.bench()),
        new FinishCard(s.bench(), s.job()),
        new SealerCard(s.bench()),
        new CoatsCard(s.bench(), s.job()),
        new AirCard(s.bench(), s.job()),
        new DaysCard(s.bench(), s.job()),
        new CautionsCard(s.bench(), s.job(), places),
        new SlabCard(s.bench()),
        new BookCard(s.bench(), s.book()),
        new ActualsCard(s.bench(), s.job(), s.book()));
  }

  private static List<Card> inlay(DeskParts s, Places places, Doors doors) {
    Bench bench = s.bench();
    Answers answers = s.answers();
    return List.of(
        new GraphicCard(bench, doors.graphic()),
        new InlayCard(bench, doors.graphic()),
        new PanelsCard(bench, answers),
        new ChecksCard(bench, answers, places, s.releases()),
        new SeamsCard(bench, answers, s.seams()),
        new ColoursCard(bench, answers),
        new CutCard(bench, doors.exports()),
        new ProofCard(bench, answers, s.proofs(), places, doors.proof()),
        new OnFloorCard(bench, answers),
        new StencilCard(bench));
  }

  List<Card> of(Stage stage) {
    return sets.getOrDefault(stage, List.of());
  }
}
