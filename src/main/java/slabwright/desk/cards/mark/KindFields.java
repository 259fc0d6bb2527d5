package slabwright.desk.cards.mark;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.input.LengthUse;
import slabwright.site.MarkKind;
import slabwright.site.ResidueStuff;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;

/** The fields of what a mark is. */
final class KindFields {
  private final FieldRows rows;
  private final Supplier<MarkKind> now;
  private final Consumer<MarkKind> set;

  private KindFields(FieldRows rows, Supplier<MarkKind> now, Consumer<MarkKind> set) {
    this.rows = rows;
    this.now = now;
    this.set = set;
  }

  static void add(FieldRows rows, Supplier<MarkKind> now, Consumer<MarkKind> set) {
    KindFields f = new KindFields(rows, now, set);
    switch (now.get().type()) {
      case TRENCH -> f.trench();
      case RESIDUE -> f.residue();
      case TOP_OR_STEP -> f.top();
      case JOINT, CRACK -> f.filler();
      case SPALL ->
          f.length(
              "depth",
              rows.words().say("desk.cards.mark.kind-fields.depth"),
              k -> ((MarkKind.Spall) k).depth(),
              v -> new MarkKind.Spall(v));
      case LEVEL_CHANGE ->
          f.length(
              "height",
              rows.words().say("desk.cards.mark.kind-fields.height"),
              k -> ((MarkKind.LevelChange) k).height(),
              v -> new MarkKind.LevelChange(v));
      case MASKED_TRIM ->
          f.length(
              "masked-up-to",
              rows.words().say("desk.cards.mark.kind-fields.masked-up-to"),
              k -> ((MarkKind.MaskedTrim) k).height(),
              v -> new MarkKind.MaskedTrim(v));
      case POWER_POINT ->
          f.text(
              "gives",
              rows.words().say("desk.cards.mark.kind-fields.gives"),
              k -> ((MarkKind.PowerPoint) k).rating(),
              v -> new MarkKind.PowerPoint(v));
      case IGNITION_SOURCE ->
          f.text(
              "what",
              rows.words().say("desk.cards.mark.kind-fields.what"),
              k -> ((MarkKind.IgnitionSource) k).what(),
              v -> new MarkKind.IgnitionSource(v));
      default -> {}
    }
  }

  /** Reads one thing of a kind. */
  private interface Get<T> {
    T of(MarkKind kind);
  }

  /** Makes a kind of one thing. */
  private interface Make<T> {
    MarkKind of(T value);
  }

  private void length(String id, String name, Get<Length> get, Make<Length> make) {
    rows.length(name, LengthUse.MARGIN, () -> get.of(now.get()), v -> set.accept(make.of(v)))
        .id("kind-" + id);
  }

  private void text(String id, String name, Get<String> get, Make<String> make) {
    rows.freeText(name, () -> get.of(now.get()), v -> set.accept(make.of(v))).id("kind-" + id);
  }

  private void trench() {
    rows.choice(
            rows.words().say("desk.cards.mark.kind-fields.lies"),
            List.of(TrenchLevel.values()),
            this::lie,
            () -> trench(now.get()).lie(),
            l -> set.accept(trench(now.get()).withLie(l)))
        .setId("trench-lie");
    rows.tick(
            rows.words().say("desk.cards.mark.kind-fields.levelled-already"),
            () -> trench(now.get()).levelled(),
            v -> set.accept(trench(now.get()).withLevelled(v)))
        .setId("trench-levelled");
    if (trench(now.get()).lie() != TrenchLevel.FLUSH) {
      rows.maybe(
              trench(now.get()).lie() == TrenchLevel.LOW
                  ? rows.words().say("desk.cards.mark.kind-fields.depth")
                  : rows.words().say("desk.cards.mark.kind-fields.height"),
              LengthUse.MARGIN,
              () -> trench(now.get()).off(),
              v -> set.accept(trench(now.get()).withOff(v)))
          .id("trench-off");
    }
    rows.sentence(
        () ->
            trench(now.get()).stopsMachine()
                ? rows.words().say("desk.cards.mark.kind-fields.the-machine-stays-off-until")
                : "",
        "card-hint");
  }

  private String lie(TrenchLevel l) {
    return switch (l) {
      case FLUSH -> rows.words().say("desk.cards.mark.kind-fields.flush");
      case PROUD -> rows.words().say("desk.cards.mark.kind-fields.proud");
      case LOW -> rows.words().say("desk.cards.mark.kind-fields.low");
    };
  }

  private String stuff(ResidueStuff s) {
    return switch (s) {
      case PAINT -> rows.words().say("desk.cards.mark.kind-fields.paint");
      case MASTIC -> rows.words().say("desk.cards.mark.kind-fields.mastic");
      case ADHESIVE -> rows.words().say("desk.cards.mark.kind-fields.adhesive");
      case THINSET -> rows.words().say("desk.cards.mark.kind-fields.thinset");
      case GROUT -> rows.words().say("desk.cards.mark.kind-fields.grout");
      case UNKNOWN -> rows.words().say("desk.cards.mark.kind-fields.not-known");
    };
  }

  private static MarkKind.Trench trench(MarkKind k) {
    return (MarkKind.Trench) k;
  }

  private void residue() {
    rows.choice(
            rows.words().say("desk.cards.mark.kind-fields.residue"),
            List.of(ResidueStuff.values()),
            this::stuff,
            () -> ResidueStuff.said(((MarkKind.Residue) now.get()).what()),
            s -> set.accept(new MarkKind.Residue(s.word())))
        .setId("kind-residue");
    text(
        "of-what",
        rows.words().say("desk.cards.mark.kind-fields.of-what"),
        k -> ((MarkKind.Residue) k).what(),
        MarkKind.Residue::new);
  }

  private static MarkKind.TopOrStep top(MarkKind k) {
    return (MarkKind.TopOrStep) k;
  }

  private void top() {
    length(
        "edge",
        rows.words().say("desk.cards.mark.kind-fields.edge"),
        k -> top(k).thickness(),
        v -> new MarkKind.TopOrStep(v, top(now.get()).steps()));
    rows.number(
            rows.words().say("desk.cards.mark.kind-fields.treads"),
            () -> String.valueOf(top(now.get()).steps()),
            new NumberRange(1, 60),
            v ->
                set.accept(new MarkKind.TopOrStep(top(now.get()).thickness(), (int) Math.round(v))))
        .id("kind-treads");
  }

  private static Length width(MarkKind k) {
    return k instanceof MarkKind.Joint j ? j.width() : ((MarkKind.Crack) k).width();
  }

  private static Length depth(MarkKind k) {
    return k instanceof MarkKind.Joint j ? j.depth() : ((MarkKind.Crack) k).depth();
  }

  private void filler() {
    boolean joint = now.get() instanceof MarkKind.Joint;
    length(
        "width",
        rows.words().say("desk.cards.mark.kind-fields.width"),
        KindFields::width,
        v ->
            joint
                ? new MarkKind.Joint(v, depth(now.get()))
                : new MarkKind.Crack(v, depth(now.get())));
    length(
        "depth",
        rows.words().say("desk.cards.mark.kind-fields.depth"),
        KindFields::depth,
        v ->
            joint
                ? new MarkKind.Joint(width(now.get()), v)
                : new MarkKind.Crack(width(now.get()), v));
  }
}
