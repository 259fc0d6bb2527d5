package slabwright.inlay.cutfile;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.Stencil;
import slabwright.inlay.stencil.StencilSet;
import slabwright.units.ColourNaming;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** The order as plain text. */
final class OrderText {
  private static final String END = "\r\n";

  private final UnitSystem units;
  private final Function<Message, String> words;
  private final StringBuilder out = new StringBuilder();

  OrderText(UnitSystem units, Function<Message, String> words) {
    this.units = units;
    this.words = words;
  }

  String write(
      CutFileParameters job,
      StencilSet set,
      PanelPlan plan,
      StayingPieces pieces,
      FilmOrder order,
      List<CutFile> files) {
    line(Message.of("inlay.order-text.title", job.inlay(), job.issue()));
    out.append(END);
    line(Message.of("inlay.order-text.film-width", show(order.rollWidth())));
    line(Message.of("inlay.order-text.film-kind", FilmOrder.film()));
    line(Message.of("inlay.order-text.film-colour", FilmOrder.colour()));
    double film = plan.rollLength(set.stencils()) * order.quantity();
    line(Message.of("inlay.order-text.film-length", show(film)));
    String tape = show(FilmOrder.tapeLength(plan, set) * order.quantity());
    line(Message.of("inlay.order-text.transfer-tape", FilmOrder.tape(), tape));
    line(Message.of("inlay.order-text.quantity", order.quantity()));
    line(Message.of("inlay.order-text.test-piece", FilmOrder.testPiece(units)));
    line(Message.of("inlay.order-text.packing", FilmOrder.packing()));
    line(
        Message.of(
            "inlay.order-text.finished-size",
            show(set.blank().width()),
            show(set.blank().height())));
    set.stencils().stream().filter(plan::isLocal).forEach(s -> localBlanks(s, plan));
    double cut = set.cutLength() * order.quantity();
    line(Message.of("inlay.order-text.length-of-cut", show(cut)));
    int staying = set.stencils().stream().mapToInt(s -> pieces.of(s).size()).sum();
    line(Message.of("inlay.order-text.loose-pieces", staying));
    out.append(END);
    line(Message.of("inlay.order-text.what-to-weed"));
    line(Message.of("inlay.order-text.witness-crosses"));
    line(Message.of("inlay.order-text.send-a-proof"));
    out.append(END);
    set.stencils().forEach(x -> panels(x, set, plan));
    line(Message.of("inlay.order-text.which-way-up"));
    out.append(END);
    line(FilmOrder.files());
    files.forEach(this::line);
    return out.toString();
  }

  /** Whose panels are whose: film of one colour is weeded and packed together. */
  private void panels(Stencil s, StencilSet set, PanelPlan plan) {
    List<Panel> panels = plan.cut(s);
    line(
        Message.of(
            "inlay.order-text.stencil",
            s.layer(),
            set.stencils().size(),
            named(s.colour()),
            panels.size(),
            panels.stream().map(Panel::name).collect(Collectors.joining(", "))));
  }

  /** A colour by code has its name too; one that is a name has no other. */
  static Message named(String colour) {
    return colour.matches("#[0-9a-fA-F]{6}")
        ? Message.of("inlay.order-text.colour", ColourNaming.of(colour), colour)
        : Message.of("inlay.pen-label.colour", colour);
  }

  /** Vinyl no bigger than its colour: how large, and how many pieces. */
  private void localBlanks(Stencil s, PanelPlan plan) {
    String sizes =
        plan.of(s).blanks().stream()
            .map(b -> show(b.width()) + " × " + show(b.height()))
            .collect(Collectors.joining("; "));
    line(Message.of("inlay.order-text.local-blanks", s.layer(), s.colour(), sizes));
  }

  private void line(CutFile f) {
    line(Message.of("inlay.order-text.file", f.name() + ".svg", show(f.width()), show(f.height())));
  }

  /** In the person's units, and in millimetres as the files are. */
  private String show(double mm) {
    return LengthFormat.fine(mm, units);
  }

  private void line(Message message) {
    out.append(words.apply(message)).append(END);
  }
}
