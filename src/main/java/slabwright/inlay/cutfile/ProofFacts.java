package slabwright.inlay.cutfile;

import java.util.List;
import java.util.stream.Collectors;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.shape.Bounds;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/**
 * What the proof page has to say.
 *
 * @param staying how many pieces of vinyl are cut all round and stay
 * @param denominator the picture's scale is one to this
 */
record ProofFacts(
    StencilSet set,
    Stencil stencil,
    PanelPlan plan,
    int staying,
    UnitSystem units,
    double denominator) {
  private static final int MOST_LISTED = 12;

  /** One line of the table. */
  record Row(Message label, Message words) {}

  List<Row> rows() {
    return List.of(
        new Row(
            Message.of("inlay.proof-facts.finished-size"),
            plan.isApart()
                ? Message.of("inlay.proof-facts.pieces-apart", plan.blanks().size(), sizes())
                : Message.of("inlay.proof-facts.all-panels-together", size(plan.blank()))),
        new Row(Message.of("inlay.proof-facts.panels"), panels()),
        new Row(
            Message.of("inlay.proof-facts.reads"),
            Message.of("inlay.proof-facts.reads-as-in-the-picture")),
        new Row(
            Message.of("inlay.proof-facts.mirror-image"),
            Message.of("inlay.proof-facts.never-mirror")),
        new Row(
            Message.of("inlay.proof-facts.check-with-a-ruler"),
            Message.of(
                "inlay.proof-facts.panel-is-wide", plan.panels().get(0).name(), checkWords())),
        new Row(Message.of("inlay.proof-facts.loose-pieces"), loose()),
        new Row(
            Message.of("inlay.proof-facts.length-of-cut"),
            Message.of(
                "inlay.proof-facts.outlines-not-counted",
                LengthFormat.show(stencil.cutLength(), units))),
        new Row(Message.of("inlay.proof-facts.changed"), changes()),
        new Row(
            Message.of("inlay.proof-facts.picture"),
            Message.of("inlay.proof-facts.scale", LengthFormat.plain(denominator))));
  }

  private String sizes() {
    return plan.blanks().stream().map(this::size).collect(Collectors.joining("; "));
  }

  /** The one length to check: the width of the first panel. */
  String checkWords() {
    return show(plan.panels().get(0).box().width());
  }

  private Message panels() {
    if (plan.panels().size() > MOST_LISTED) {
      return Message.of(
          "inlay.proof-facts.panels-on-strips",
          plan.panels().size(),
          plan.panels().get(0).name(),
          plan.panels().get(plan.panels().size() - 1).name(),
          plan.seams().size() + 1);
    }
    String each =
        plan.panels().stream()
            .map((Panel p) -> p.name() + " " + size(p.box()))
            .collect(Collectors.joining("; "));
    return plan.laps().isEmpty()
        ? Message.of("inlay.proof-facts.panel-list", each)
        : Message.of("inlay.proof-facts.panel-list-with-overlap", each);
  }

  private Message loose() {
    return switch (staying) {
      case 0 -> Message.of("inlay.proof-facts.no-loose-piece");
      case 1 -> Message.of("inlay.proof-facts.one-loose-piece");
      default -> Message.of("inlay.proof-facts.marked-with-rings", staying);
    };
  }

  private Message changes() {
    return set.changes().stream()
        .filter(c -> c.layer() == stencil.layer())
        .map(c -> c.said(units))
        .reduce((first, next) -> Message.of("inlay.proof-facts.two-sentences", first, next))
        .orElse(Message.of("inlay.proof-facts.as-the-graphic"));
  }

  private String size(Bounds b) {
    return show(b.width()) + " × " + show(b.height());
  }

  private String show(double mm) {
    return units == UnitSystem.METRIC
        ? LengthFormat.plain(Math.rint(mm * 10) / 10) + " mm"
        : LengthFormat.show(mm, units);
  }
}
