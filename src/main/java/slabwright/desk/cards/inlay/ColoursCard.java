package slabwright.desk.cards.inlay;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.control.ChoiceBox;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.edit.ColourUse;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.PlacedInlay;
import slabwright.site.ColourChoice.Use;
import slabwright.site.Inlay;
import slabwright.site.StencilChanges;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.Result;

/** What happens with each colour of the graphic, the base dye under it, and ties. */
public final class ColoursCard extends Card {
  private static final NumberRange LIGHTNESS = new NumberRange(0, 100);

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
    rows.text(
            words().say("desk.cards.inlay.colours.base-dye-lightness-l"),
            this::lightness,
            this::takeLightness)
        .id("base-lightness");
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
            hex,
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

  private String word(Use u) {
    return switch (u) {
      case DYE -> words().say("desk.cards.inlay.colours.dye");
      case LEAVE -> words().say("desk.cards.inlay.colours.leave-as-floor");
      case IGNORE -> words().say("desk.cards.inlay.colours.ignore");
    };
  }

  private static Message step(Use u, String hex) {
    return switch (u) {
      case DYE -> Message.of("desk.cards.inlay.colours.dye-step", hex);
      case LEAVE -> Message.of("desk.cards.inlay.colours.leave-step", hex);
      case IGNORE -> Message.of("desk.cards.inlay.colours.ignore-step", hex);
    };
  }

  private String lightness() {
    OptionalDouble l = changes().baseLightness();
    return l.isPresent() ? QuantityFormat.number(l.getAsDouble(), 0) : "";
  }

  private Result<?> takeLightness(String text) {
    if (text.isBlank()) {
      setLightness(OptionalDouble.empty());
      return Result.ok(0.0);
    }
    return LIGHTNESS.read(text).map(v -> rows.taken(v, x -> setLightness(OptionalDouble.of(x))));
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
