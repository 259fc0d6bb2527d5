package slabwright.desk.cards.inlay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.control.ChoiceBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.input.LengthUse;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.DyeNames;
import slabwright.inlay.PlacedInlay;
import slabwright.site.ColourChoice.Use;
import slabwright.site.Inlay;
import slabwright.site.StencilChanges;
import slabwright.site.StencilSpec;
import slabwright.units.ColourNaming;
import slabwright.units.Length;
import slabwright.units.Message;

/** What happens with each colour of the graphic, the base dye under it, and ties. */
public final class ColoursCard extends Card {
  private final SelectedAreaResults answers;
  private final SelectedInlay inlay;
  private final FieldRows rows;
  private List<String> colours = List.of();
  private boolean filled;

  public ColoursCard(DeskContext bench, SelectedAreaResults answers) {
    super(
        bench, "colours-and-ties", bench.words().say("desk.cards.inlay.colours.colours-and-ties"));
    this.answers = answers;
    this.inlay = new SelectedInlay(bench);
    this.rows = new FieldRows(bench);
    body().getChildren().add(rows);
  }

  private StencilSpec spec() {
    return inlay.now().map(Inlay::spec).orElse(StencilSpec.forRoll(Length.inches(48)));
  }

  private StencilChanges changes() {
    return spec().changes();
  }

  private List<String> all() {
    Optional<ComputedInlay> a = inlay.now().flatMap(i -> answers.inlay(i.id()));
    return ColourUse.all(a.flatMap(ComputedInlay::placed).map(PlacedInlay::artwork), spec());
  }

  private void fill() {
    rows.clear();
    colours.forEach(this::colour);
    rows.choice(
            words().say("desk.cards.inlay.colours.base-under-it"),
            List.of(BaseLook.values()),
            this::word,
            () -> BaseLook.of(changes().baseLightness()),
            b -> setLightness(b.lightness()))
        .setId("base-look");
    rows.tick(
            words().say("desk.cards.inlay.colours.tie-loose-pieces-in-for"),
            () -> spec().ties(),
            v ->
                inlay.cut(
                    v
                        ? Message.of("desk.cards.inlay.colours.tie-loose-pieces")
                        : Message.of("desk.cards.inlay.colours.leave-ties-out"),
                    s -> s.withTies(v)))
        .setId("ties");
    rows.maybe(
            words().say("desk.cards.inlay.colours.tie-width"),
            LengthUse.MARGIN,
            () -> changes().tieWidth(),
            v ->
                inlay.cut(
                    Message.of("desk.cards.inlay.colours.change-tie-width"),
                    s -> s.withChanges(s.changes().withTieWidth(v))))
        .id("tie-width");
  }

  private void colour(String hex) {
    ChoiceBox<Use> box =
        rows.choice(
            name(hex),
            List.of(Use.values()),
            this::word,
            () -> ColourUse.of(spec(), hex),
            u -> inlay.cut(step(u, hex), s -> ColourUse.with(s, colours, hex, u)));
    box.setId("colour-" + hex.substring(1));
    Region swatch = new Region();
    swatch.setStyle("-fx-background-color: " + hex);
    swatch.setMinSize(14, 14);
    swatch.setMaxSize(14, 14);
    if (box.getParent() instanceof HBox row) {
      row.getChildren().add(0, swatch);
      row.setSpacing(8);
    }
  }

  private String name(String hex) {
    return inlay
        .now()
        .map(i -> words().say(DyeNames.of(i, colours).get(hex)))
        .orElseGet(() -> words().say(ColourNaming.of(hex)));
  }

  private String word(Use u) {
    return switch (u) {
      case DYE -> words().say("desk.cards.inlay.colours.dye");
      case LEAVE -> words().say("desk.cards.inlay.colours.leave-as-floor");
      case IGNORE -> words().say("desk.cards.inlay.colours.ignore");
    };
  }

  private static Message step(Use u, String hex) {
    return switch (u) {
      case DYE -> Message.of("desk.cards.inlay.colours.dye-step", ColourNaming.of(hex));
      case LEAVE -> Message.of("desk.cards.inlay.colours.leave-step", ColourNaming.of(hex));
      case IGNORE -> Message.of("desk.cards.inlay.colours.ignore-step", ColourNaming.of(hex));
    };
  }

  private String word(BaseLook b) {
    return switch (b) {
      case NOT_KNOWN -> words().say("desk.cards.inlay.colours.base-not-known");
      case VERY_LIGHT -> words().say("desk.cards.inlay.colours.base-very-light");
      case LIGHT -> words().say("desk.cards.inlay.colours.base-light");
      case MEDIUM -> words().say("desk.cards.inlay.colours.base-medium");
      case DARK -> words().say("desk.cards.inlay.colours.base-dark");
      case VERY_DARK -> words().say("desk.cards.inlay.colours.base-very-dark");
    };
  }

  private void setLightness(OptionalDouble v) {
    inlay.cut(
        Message.of("desk.cards.inlay.colours.change-base-dye"),
        s -> s.withChanges(s.changes().withBaseLightness(v)));
  }

  @Override
  protected void refresh() {
    List<String> now = all();
    if (!filled || !now.equals(colours)) {
      filled = true;
      colours = now;
      fill();
    }
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return inlay.now().isPresent();
  }
}
