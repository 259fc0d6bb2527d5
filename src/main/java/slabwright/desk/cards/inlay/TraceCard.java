package slabwright.desk.cards.inlay;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.PictureRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.shell.Controls;
import slabwright.drawing.Colour;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.GraphicSource;
import slabwright.site.GraphicSource.Traced;
import slabwright.site.Inlay;
import slabwright.units.ColourNaming;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.UnitPair;

/**
 * How a picture is traced: the picture beside its outlines, and what can be set in words. Nothing
 * is set until a person sets something; what was told from the picture is where the sliders stand.
 */
public final class TraceCard extends Card {
  private static final double HALF = 150;
  private static final double MOST_SPECK_MM = 30;
  private static final int MOST_COLOURS = 16;
  private static final double ROUND_STEPS = 4;

  private final DeskContext bench;
  private final SelectedAreaResults answers;
  private final SelectedInlay inlay;
  private final Supplier<Optional<Path>> plan;
  private final FieldRows rows;
  private final HBox sides = new HBox(6);
  private final ImageView picture = new ImageView();
  private final Label doubt = Controls.sentence("", "card-hint");
  private final List<Runnable> follow = new ArrayList<>();
  private final SignCorners corners;
  private final Button square;
  private final Button flat;
  private String shown = "";
  private Optional<Artwork> drawn = Optional.empty();
  private List<String> papers = List.of();

  /**
   * A card.
   *
   * @param plan the file that graphics are relative to
   */
  public TraceCard(DeskContext bench, SelectedAreaResults answers, Supplier<Optional<Path>> plan) {
    super(
        bench, "traced-from-a-picture", bench.words().say("desk.cards.inlay.trace.from-a-picture"));
    this.bench = bench;
    this.answers = answers;
    this.inlay = new SelectedInlay(bench);
    this.plan = plan;
    rows = new FieldRows(bench);
    corners = new SignCorners(bench.words(), at -> put(t -> squared(t, at)));
    square =
        Controls.button(
            bench.words().say("desk.cards.inlay.trace.square"),
            "soft-button",
            () -> picture().ifPresent(corners::open));
    flat =
        Controls.button(
            bench.words().say("desk.cards.inlay.trace.not-slanted"),
            "soft-button",
            () -> put(t -> squared(t, List.of())));
    picture.setPreserveRatio(true);
    picture.setSmooth(true);
    picture.setFitWidth(HALF);
    picture.setFitHeight(HALF);
    doubt.setId("trace-doubt");
    body().getChildren().addAll(sides, doubt);
    body().getChildren().addAll(sliders());
    body().getChildren().addAll(rows, corners, square, flat);
    square.setId("trace-square");
    flat.setId("trace-flat");
  }

  private List<VBox> sliders() {
    return List.of(
        slider(
            "trace-colours",
            new Slider(2, MOST_COLOURS, 2),
            () -> set().colours(),
            v -> words().say("desk.cards.inlay.trace.colours", Math.round(v)),
            v -> t -> with(t, (int) Math.round(v), t.speck(), t.roundness())),
        slider(
            "trace-speck",
            new Slider(0, MOST_SPECK_MM, 0),
            () -> set().speck().mm(),
            v -> words().say("desk.cards.inlay.trace.speck", length(Math.rint(v))),
            v -> t -> with(t, t.colours(), Length.mm(Math.rint(v)), t.roundness())),
        slider(
            "trace-round",
            new Slider(0, 1, 0),
            () -> set().roundness(),
            v -> words().say("desk.cards.inlay.trace.corners", Math.round(v * ROUND_STEPS)),
            v -> t -> with(t, t.colours(), t.speck(), Math.round(v * ROUND_STEPS) / ROUND_STEPS)));
  }

  private String length(double mm) {
    return LengthFormat.show(Length.mm(mm), rows.units());
  }

  private static Traced with(Traced t, int colours, Length speck, double round) {
    return new Traced(t.file(), colours, speck, round, t.background(), t.square());
  }

  private static Traced squared(Traced t, List<Vec> corners) {
    return new Traced(t.file(), t.colours(), t.speck(), t.roundness(), t.background(), corners);
  }

  /** A slider under words that follow it; taken when it is let go. */
  private VBox slider(
      String id,
      Slider s,
      Supplier<? extends Number> get,
      Function<Double, String> word,
      Function<Double, UnaryOperator<Traced>> set) {
    Label label = Controls.label("", "row-name");
    s.setId(id);
    s.setMaxWidth(Double.MAX_VALUE);
    s.valueProperty()
        .addListener(
            (o, was, is) -> {
              label.setText(word.apply(s.getValue()));
              s.setAccessibleText(label.getText());
              if (!s.isValueChanging() && s.isFocused()) {
                put(set.apply(s.getValue()));
              }
            });
    s.valueChangingProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                put(set.apply(s.getValue()));
              }
            });
    follow.add(
        () -> {
          if (!s.isValueChanging() && !s.isFocused()) {
            s.setValue(get.get().doubleValue());
          }
          label.setText(word.apply(s.getValue()));
        });
    return new VBox(2, label, s);
  }

  private Optional<Artwork> artwork() {
    return inlay
        .now()
        .flatMap(i -> answers.inlay(i.id()))
        .flatMap(ComputedInlay::placed)
        .map(PlacedInlay::artwork)
        .filter(a -> a.doubtMm().isPresent());
  }

  /** The settings as stated, else as they were told from the picture. */
  private Traced set() {
    return inlay.now().flatMap(i -> i.source().picture()).orElseGet(this::told);
  }

  private Traced told() {
    Optional<Artwork> art = artwork();
    int colours = art.map(a -> a.colours().size() + (a.background().isPresent() ? 1 : 0)).orElse(2);
    return new Traced(
        inlay.now().map(Inlay::graphic).orElse(""),
        Math.max(2, colours),
        Length.mm(2),
        0,
        art.flatMap(Artwork::background).map(ColourRegion::hex).orElse(""),
        List.of());
  }

  private void put(UnaryOperator<Traced> how) {
    Traced now = set();
    Traced then = how.apply(now);
    if (!then.equals(now)) {
      inlay.change(i -> i.withSource(new GraphicSource(i.source().page(), Optional.of(then))));
    }
  }

  private void fillPapers(List<String> now) {
    papers = now;
    rows.clear();
    rows.choice(
            words().say("desk.cards.inlay.trace.paper"),
            now,
            this::paperName,
            () -> set().background(),
            hex ->
                put(
                    t ->
                        new Traced(
                            t.file(), t.colours(), t.speck(), t.roundness(), hex, t.square())))
        .setId("trace-paper");
  }

  private String paperName(String hex) {
    return hex.isEmpty()
        ? words().say("desk.cards.inlay.trace.no-paper")
        : words().say(ColourNaming.of(hex));
  }

  private List<String> paperChoices() {
    List<String> all = new ArrayList<>();
    artwork().flatMap(Artwork::background).ifPresent(c -> all.add(c.hex()));
    artwork().ifPresent(a -> a.colours().forEach(c -> all.add(c.hex())));
    all.add("");
    if (!all.contains(set().background())) {
      all.add(set().background());
    }
    return all;
  }

  /** The outlines in their colours, as large as the picture beside them. */
  private Canvas outlines(Artwork art) {
    Bounds all = art.background().map(c -> c.region().bounds()).orElse(art.painted());
    double k = HALF / FxPainter.SCREEN / Math.max(all.width(), all.height());
    Affine place = Affine.move(-all.minX(), -all.minY()).then(Affine.scale(k, k));
    List<Ink> inks = new ArrayList<>();
    inks.add(Fill.of(Palette.WHITE, new Bounds(0, 0, k * all.width(), k * all.height())));
    for (ColourRegion c : art.colours()) {
      Colour colour = Colour.hex(c.hex().substring(1));
      inks.add(new Fill(c.region().rings().stream().map(r -> r.map(place)).toList(), colour));
    }
    Drawing drawing = Drawing.paper(k * all.width(), k * all.height(), inks);
    return PictureRow.of(drawing, HALF, bench, words().say("desk.cards.inlay.trace.outlines"));
  }

  private Optional<Path> picture() {
    return plan.get()
        .flatMap(p -> Optional.ofNullable(p.getParent()))
        .flatMap(d -> inlay.now().map(i -> d.resolve(i.graphic())));
  }

  private void showSides(Artwork art) {
    drawn = Optional.of(art);
    String file = picture().map(p -> p.toUri().toString()).orElse("");
    if (!file.equals(shown)) {
      shown = file;
      corners.close();
      picture.setImage(new Image(file, 2 * HALF, 2 * HALF, true, true, true));
      picture.setAccessibleText(words().say("desk.cards.inlay.trace.picture"));
    }
    sides.getChildren().setAll(picture, outlines(art));
    doubt.setText(
        art.warnings().stream()
            .filter(w -> w.kind() == ArtworkWarning.Kind.TRACED)
            .map(w -> UnitPair.only(words().say(w.message()), rows.units()))
            .findFirst()
            .orElse(""));
  }

  @Override
  protected void refresh() {
    artwork().filter(a -> !drawn.equals(Optional.of(a))).ifPresent(this::showSides);
    List<String> now = paperChoices();
    if (!now.equals(papers)) {
      fillPapers(now);
    }
    rows.refresh();
    Controls.show(square, !corners.isOpen());
    Controls.show(flat, !set().square().isEmpty());
    follow.forEach(Runnable::run);
  }

  @Override
  public boolean isWanted() {
    return artwork().isPresent() || inlay.now().flatMap(i -> i.source().picture()).isPresent();
  }
}
