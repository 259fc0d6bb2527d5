package slabwright.desk.shell;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import org.kordamp.ikonli.feather.Feather;
import slabwright.desk.model.DeskContext;
import slabwright.site.FloorArea;
import slabwright.site.Setting;
import slabwright.words.Words;

/** One chip a floor area; indoor and outdoor are two jobs on one site. */
final class AreaChips extends HBox {
  private static final double MOST_KEPT = 330;

  private final DeskContext bench;
  private final Commands commands;
  private List<String> shown = List.of();

  AreaChips(DeskContext bench, Commands commands) {
    this.bench = bench;
    this.commands = commands;
    getStyleClass().add("chips");
    setAlignment(Pos.CENTER_LEFT);
  }

  /** A few chips keep their names; many give way. */
  @Override
  protected double computeMinWidth(double height) {
    return Math.min(MOST_KEPT, computePrefWidth(height));
  }

  void refresh() {
    List<String> now = new ArrayList<>();
    String looked = bench.focus().area().map(FloorArea::id).orElse("");
    now.add(looked);
    bench.desk().site().areas().forEach(a -> now.add(a.id() + a.name() + a.setting()));
    if (now.equals(shown)) {
      return;
    }
    shown = now;
    getChildren().clear();
    bench.desk().site().areas().forEach(a -> getChildren().add(chip(a, a.id().equals(looked))));
    if (bench.desk().site().areas().size() > 1) {
      getChildren().add(all());
    }
    var add =
        Controls.icon(
            Icons.of(Feather.PLUS, 15),
            bench.words().say("desk.shell.area-chips.add-a-floor-area-by"),
            "",
            () -> commands.run("add-area"));
    add.setId("add-area");
    add.getStyleClass().add("add-chip");
    getChildren().add(add);
  }

  private Button all() {
    Button b =
        Controls.icon(
            Icons.of(Feather.LAYERS, 15),
            bench.words().say("desk.shell.area-chips.all"),
            bench.words().say("desk.shell.key-list.fit-site-key"),
            () -> commands.run("fit-site"));
    b.setId("all-areas");
    return b;
  }

  private ToggleButton chip(FloorArea area, boolean on) {
    ToggleButton b = new ToggleButton(area.name());
    b.getStyleClass().addAll("plain-button", "chip");
    b.setSelected(on);
    b.setId("area-" + area.id());
    b.setOnAction(
        e -> {
          b.setSelected(true);
          bench.focus().selectArea(area.id());
        });
    Words words = bench.words();
    String said =
        area.setting() == Setting.INDOOR
            ? words.say("desk.shell.area-chips.look-at-indoors", area.name())
            : words.say("desk.shell.area-chips.look-at-outdoors", area.name());
    return Controls.named(b, said, "");
  }
}
