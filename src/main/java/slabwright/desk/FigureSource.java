package slabwright.desk;

import slabwright.desk.model.Stage;
import slabwright.desk.shell.TallyBar;

/**
 * Where a figure of the tally comes from.
 *
 * @param field the heading of its card; empty for what is still open, which has a list of its own
 */
record FigureSource(Stage stage, String field) {
  static FigureSource of(TallyBar.Item item) {
    String key = item.what().key();
    return switch (key.substring(key.lastIndexOf('.') + 1)) {
      case "still-open" -> new FigureSource(Stage.MEASURE, "");
      case "net-floor" -> new FigureSource(Stage.MEASURE, "fold-floor-area");
      case "machine" -> new FigureSource(Stage.PREP, "fold-machines");
      case "by-hand" -> new FigureSource(Stage.PREP, "fold-machine-and-hand");
      case "edges", "cut-in" -> new FigureSource(Stage.PREP, "fold-edges");
      case "inlay" -> new FigureSource(Stage.INLAY, "fold-on-the-floor");
      case "price" -> new FigureSource(Stage.FINISH, "fold-shop-book");
      case "air-fan-off" -> new FigureSource(Stage.FINISH, "fold-air-while-coating");
      default -> new FigureSource(Stage.FINISH, "fold-days-whole-site");
    };
  }
}
