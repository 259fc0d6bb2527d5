package slabwright.desk.cards.inlay;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import slabwright.desk.canvas.FxPainter;
import slabwright.desk.canvas.Tone;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PlaceNavigator;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.Proofs;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.shell.Controls;
import slabwright.figures.ProofFaultInks;
import slabwright.inlay.proof.ProofFault;
import slabwright.inlay.proof.ShadingMeaning;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.Inlay;
import slabwright.units.UnitSystem;

/** The drawing that came back from the sign shop: what is wrong with it, and where. */
public final class ProofCard extends Card {
  private static final double WIDE = 306;

  /** So high at most that the verdict above it and all of it are in view together. */
  private static final double HIGH = 300;

  private static final int MOST = 10;

  private final DeskContext bench;
  private final SelectedAreaResults answers;
  private final Proofs proofs;
  private final PlaceNavigator places;
  private final SelectedInlay inlay;
  private final VBox result = new VBox(8);
  private List<Object> shown = List.of();

  /**
   * A card.
   *
   * @param choose asks for the file that came back
   */
  public ProofCard(
      DeskContext bench,
      SelectedAreaResults answers,
      Proofs proofs,
      PlaceNavigator places,
      Supplier<Optional<Path>> choose) {
    super(bench, "proof-from-the-sign-shop", bench.words().say("desk.cards.inlay.proof.title"));
    this.bench = bench;
    this.answers = answers;
    this.proofs = proofs;
    this.places = places;
    inlay = new SelectedInlay(bench);
    result.setId("proof-result");
    var button =
        Controls.button(
            bench.words().say("desk.cards.inlay.proof.check"),
            "soft-button",
            () -> choose.get().ifPresent(this::check));
    button.setId("choose-proof");
    button.setMaxWidth(Double.MAX_VALUE);
    body()
        .getChildren()
        .addAll(
            Controls.sentence(
                bench.words().say("desk.cards.inlay.proof.before-anything-is-cut"), "card-words"),
            button,
            result);
    takesDrops();
  }

  private void takesDrops() {
    setOnDragOver(
        e -> {
          if (e.getDragboard().hasFiles()) {
            e.acceptTransferModes(TransferMode.COPY);
          }
          e.consume();
        });
    setOnDragDropped(
        e -> {
          check(e.getDragboard().getFiles().stream().map(File::toPath).toList());
          e.setDropCompleted(true);
          e.consume();
        });
  }

  /** Checks a file against the inlay looked at. */
  public void check(Path file) {
    check(List.of(file));
  }

  private void check(List<Path> files) {
    inlay.now().filter(i -> !files.isEmpty()).ifPresent(i -> proofs.check(i, files));
  }

  private void fill(Proofs.CheckedProof seen, Inlay now) {
    List<Node> nodes = new ArrayList<>();
    seen.asked()
        .files()
        .forEach(f -> nodes.add(Controls.label(String.valueOf(f.getFileName()), "figure")));
    if (seen.pages() > 1) {
      nodes.add(
          numbers(
              words().say("desk.cards.inlay.proof.page"),
              seen.pages(),
              seen.asked().page(),
              n -> proofs.page(seen, n)));
    }
    if (seen.colours().size() > 1) {
      nodes.add(
          numbers(
              words().say("desk.cards.inlay.proof.stencil"),
              seen.colours().size(),
              seen.stencil(),
              n -> proofs.stencil(seen, n)));
    }
    if (seen.asksForShading()) {
      nodes.add(shading(seen));
    }
    VBox verdict = new VBox(8, verdict(seen).row(words()), picture(seen));
    verdict.setId("proof-verdict");
    nodes.add(verdict);
    findings(seen, now).stream().limit(MOST).forEach(f -> nodes.add(f.row(words())));
    nodes.add(
        Controls.sentence(
            words().say("desk.cards.inlay.proof.red-and-blue", seen.report().limits().message()),
            "card-hint"));
    result.getChildren().setAll(nodes);
  }

  private interface Chosen {
    void take(int number);
  }

  private static HBox numbers(String word, int count, int chosen, Chosen take) {
    HBox row = new HBox(6, Controls.label(word, "row-name"));
    row.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    IntStream.rangeClosed(1, Math.min(count, 6))
        .mapToObj(
            n ->
                chip(
                    String.valueOf(n),
                    word + " " + n,
                    n == chosen,
                    () -> take.take(n == chosen ? 0 : n)))
        .forEach(row.getChildren()::add);
    return row;
  }

  private static ToggleButton chip(String words, String name, boolean on, Runnable does) {
    ToggleButton b = new ToggleButton(words);
    b.getStyleClass().addAll("plain-button", "option-chip");
    b.setSelected(on);
    b.setOnAction(e -> does.run());
    return Controls.named(b, name, "");
  }

  private VBox shading(Proofs.CheckedProof seen) {
    ShadingMeaning now = seen.asked().shading();
    ToggleButton out =
        chip(
            words().say("desk.cards.inlay.proof.is-pulled-out"),
            words().say("desk.cards.inlay.proof.shading-is-pulled-out"),
            now == ShadingMeaning.PULLED_OUT,
            () -> proofs.shading(seen, ShadingMeaning.PULLED_OUT));
    out.setId("shading-out");
    ToggleButton stays =
        chip(
            words().say("desk.cards.inlay.proof.stays"),
            words().say("desk.cards.inlay.proof.shading-stays"),
            now == ShadingMeaning.STAYS,
            () -> proofs.shading(seen, ShadingMeaning.STAYS));
    stays.setId("shading-stays");
    return new VBox(
        4,
        Controls.sentence(words().say("desk.cards.inlay.proof.what-is-shaded"), "row-name"),
        new HBox(6, out, stays));
  }

  private Canvas picture(Proofs.CheckedProof seen) {
    double k = FxPainter.SCREEN;
    var drawing = ProofFaultInks.picture(seen.plan(), seen.report(), WIDE / k - 1);
    double high = drawing.bounds().height() * k;
    if (high > HIGH) {
      drawing = ProofFaultInks.picture(seen.plan(), seen.report(), (WIDE / k - 1) * HIGH / high);
    }
    Canvas canvas = new Canvas(WIDE, drawing.bounds().height() * k + 2);
    GraphicsContext g = canvas.getGraphicsContext2D();
    Tone tone = bench.settings().dark() ? Tone.DARK : Tone.LIGHT;
    drawing.paintOn(new FxPainter(g, k, tone), drawing.bounds().grown(1));
    return canvas;
  }

  private FindingRow verdict(Proofs.CheckedProof seen) {
    String verdict = bench.words().say(seen.report().message());
    return switch (seen.report().verdict()) {
      case CUT -> FindingRow.fine(verdict);
      case DO_NOT_CUT -> new FindingRow(FindingRow.Sign.CANT, verdict, Optional.empty());
      case CANNOT_TELL -> FindingRow.look(verdict);
    };
  }

  private List<FindingRow> findings(Proofs.CheckedProof seen, Inlay now) {
    List<FindingRow> all = new ArrayList<>();
    UnitSystem units = bench.desk().shown().units();
    Optional<Affine> map = answers.inlay(now.id()).flatMap(a -> a.toSite(now));
    for (ProofFault f : seen.report().faults()) {
      Optional<Runnable> show =
          map.flatMap(m -> f.place().map(p -> () -> places.show(around(m.apply(p)))));
      all.add(new FindingRow(FindingRow.Sign.CANT, bench.words().say(f.message(units)), show));
    }
    seen.report()
        .notes()
        .forEach(n -> all.add(FindingRow.look(bench.words().say(n.message(units)))));
    return all;
  }

  private static Bounds around(Vec at) {
    return Bounds.EMPTY.including(at);
  }

  @Override
  protected void refresh() {
    Optional<Inlay> now = inlay.now();
    Optional<Proofs.CheckedProof> seen = now.flatMap(proofs::of);
    List<Object> key =
        List.of(
            now.map(Inlay::id).orElse(""),
            now.map(Inlay::middle),
            now.map(Inlay::turn),
            seen.map(System::identityHashCode),
            bench.settings().dark(),
            bench.desk().shown().units());
    if (!key.equals(shown)) {
      shown = key;
      result.getChildren().clear();
      seen.ifPresent(s -> fill(s, now.orElseThrow()));
    }
  }

  @Override
  public boolean isWanted() {
    return inlay.now().isPresent();
  }
}
