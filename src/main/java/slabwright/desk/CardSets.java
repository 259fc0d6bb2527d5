package slabwright.desk;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import slabwright.desk.cards.AreaCard;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.DoorwayCard;
import slabwright.desk.cards.HintCard;
import slabwright.desk.cards.WallCard;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Pictures;
import slabwright.desk.model.Stage;

/** Which cards each stage shows, in order. */
final class CardSets {
  private final Map<Stage, List<Card>> sets = new EnumMap<>(Stage.class);

  CardSets(Bench bench, Pictures pictures) {
    sets.put(Stage.MEASURE, measure(bench, pictures));
  }

  private static List<Card> measure(Bench bench, Pictures pictures) {
    return List.of(
        new HintCard(
            "No floor yet",
            "Take up Tape and type the walls as you measured them, or Draw and click the corners."
                + " The room closes when you come back to the first corner.",
            () -> bench.focus().area().isEmpty()),
        new WallCard(bench),
        new DoorwayCard(bench),
        new AreaCard(bench, pictures));
  }

  List<Card> of(Stage stage) {
    return sets.getOrDefault(stage, List.of());
  }
}
