package slabwright.desk.cards.finish;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.LengthField;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.shell.Controls;
import slabwright.site.Exposure;
import slabwright.site.Finish;
import slabwright.site.FloorArea;
import slabwright.site.edit.AreaEdit;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;

/** The finish system: which products of the shop book go on, in which order, how often. */
public final class FinishCard extends Card {
  private final DeskContext bench;
  private final SiteComputation job;
  private final FieldRows rows;
  private List<Object> shown = List.of();

  public FinishCard(DeskContext bench, SiteComputation job) {
    super(bench, "finish-system", bench.words().say("desk.cards.finish.finish.finish-system"));
    this.bench = bench;
    this.job = job;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    var add =
        Controls.button(words().say("desk.cards.finish.finish.add-a-coat"), "link", this::add);
    add.setId("add-coat");
    beside(add);
  }

  private List<Product> products() {
    return job.done().map(d -> d.work().book().products()).orElse(List.of());
  }

  private List<Finish.Coat> coats() {
    return bench.focus().area().map(a -> a.finish().coats()).orElse(List.of());
  }

  private void set(List<Finish.Coat> coats) {
    Optional<FloorArea> area = bench.focus().areaOf(bench.desk().site());
    area.ifPresent(
        a ->
            bench
                .desk()
                .push(new AreaEdit.SetFinish(a.id(), new Finish(a.finish().exposure(), coats))));
  }

  private void add() {
    products().stream()
        .filter(p -> p.is(ProductKind.SEALER))
        .findFirst()
        .or(() -> products().stream().findFirst())
        .ifPresent(
            p -> {
              List<Finish.Coat> next = new ArrayList<>(coats());
              next.add(coat(p.id(), 1));
              set(next);
            });
  }

  private Finish.Coat coat(String product, int times) {
    boolean inlay =
        products().stream().anyMatch(p -> p.id().equals(product) && p.is(ProductKind.INLAY_DYE));
    return new Finish.Coat(product, times, inlay ? Finish.Target.INLAY : Finish.Target.WHOLE_FLOOR);
  }

  private void replace(int index, Finish.Coat coat) {
    List<Finish.Coat> next = new ArrayList<>(coats());
    next.set(index, coat);
    set(next);
  }

  private void remove(int index) {
    List<Finish.Coat> next = new ArrayList<>(coats());
    next.remove(index);
    set(next);
  }

  private String label(String id) {
    return products().stream()
        .filter(p -> p.id().equals(id))
        .map(Product::label)
        .findFirst()
        .orElse(id);
  }

  private Optional<Exposure> exposure() {
    return bench.focus().area().flatMap(a -> a.finish().exposure());
  }

  private void set(Optional<Exposure> to) {
    Optional<FloorArea> area = bench.focus().areaOf(bench.desk().site());
    area.ifPresent(a -> bench.desk().push(new AreaEdit.SetFinish(a.id(), new Finish(to, coats()))));
  }

  private String word(Optional<Exposure> e) {
    return e.map(
            v ->
                switch (v) {
                  case CREAM -> words().say("desk.cards.finish.finish.cream");
                  case FINE -> words().say("desk.cards.finish.finish.fine-aggregate");
                  case MEDIUM -> words().say("desk.cards.finish.finish.medium-aggregate");
                  case COARSE -> words().say("desk.cards.finish.finish.coarse-aggregate");
                })
        .orElse(words().say("desk.cards.finish.finish.not-chosen"));
  }

  private static List<Optional<Exposure>> exposures() {
    List<Optional<Exposure>> all = new ArrayList<>(List.of(Optional.empty()));
    Arrays.stream(Exposure.values()).map(Optional::of).forEach(all::add);
    return all;
  }

  private void fill() {
    rows.clear();
    rows.choice(
            words().say("desk.cards.finish.finish.ground-to"),
            exposures(),
            this::word,
            this::exposure,
            this::set)
        .setId("finish-exposure");
    List<String> ids = products().stream().map(Product::id).toList();
    for (int i = 0; i < coats().size(); i++) {
      row(i, ids);
    }
    if (coats().isEmpty()) {
      rows.getChildren()
          .add(
              Controls.sentence(
                  words().say("desk.cards.finish.finish.nothing-goes-on-yet-add"), "card-words"));
    }
  }

  private void row(int i, List<String> ids) {
    Finish.Coat now = coats().get(i);
    List<String> all = new ArrayList<>(ids);
    if (!all.contains(now.product())) {
      all.add(now.product());
    }
    ChoiceBox<String> product =
        rows.choice(
            (i + 1) + ".",
            all,
            this::label,
            () -> i < coats().size() ? coats().get(i).product() : now.product(),
            p -> replace(i, coat(p, coats().get(i).coats())));
    product.setMaxWidth(276);
    Tooltip whole = new Tooltip();
    whole.textProperty().bind(product.valueProperty().map(this::label));
    product.setTooltip(whole);
    product.setId("product-" + i);
    LengthField times =
        rows.number(
                words().say("desk.cards.finish.finish.coats"),
                () -> i < coats().size() ? String.valueOf(coats().get(i).coats()) : "",
                new NumberRange(1, 20),
                v -> replace(i, coat(coats().get(i).product(), (int) Math.rint(v))))
            .small()
            .id("coats-" + i);
    var away =
        Controls.button(words().say("desk.cards.finish.finish.leave-out"), "link", () -> remove(i));
    if (times.getParent() instanceof HBox line) {
      line.getChildren().add(away);
    }
  }

  @Override
  protected void refresh() {
    List<Object> now =
        List.of(
            products().stream().map(Product::id).toList(),
            coats().stream().map(Finish.Coat::product).toList());
    if (!now.equals(shown)) {
      shown = now;
      fill();
    }
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().isPresent() && !products().isEmpty();
  }
}
