package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.units.BareUnit;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** Draws a room corner by corner with the pointer; a typed length sets the leg being drawn. */
public final class DrawTool implements Tool {
  private final PolylineDraft chain;
  private final DeskContext bench;
  private final Runnable done;

  public DrawTool(DeskContext bench, Runnable done) {
    this.bench = bench;
    chain = new PolylineDraft(() -> bench.desk().site().units());
    this.done = done;
  }

  @Override
  public Message prompt() {
    return chain.isEmpty()
        ? Message.of("desk.tool.draw.first-corner")
        : chain.size() < 3
            ? Message.of("desk.tool.draw.next-corner")
            : Message.of("desk.tool.draw.close");
  }

  @Override
  public void hover(Touch t) {
    chain.hover(t.at());
  }

  @Override
  public void press(Touch t) {
    boolean onFirst = chain.size() >= 3 && chain.first().distanceTo(t.at()) <= t.reach();
    if (onFirst) {
      close();
    } else {
      chain.add(t.at());
    }
  }

  @Override
  public Optional<Message> entry() {
    return Optional.of(
        chain.isEmpty()
            ? Message.of("desk.tool.place")
            : Message.of("desk.tool.wall", chain.size()));
  }

  @Override
  public boolean takesPlaces() {
    return true;
  }

  @Override
  public Message example() {
    return chain.isEmpty() ? Message.of("desk.tool.example.place") : Tool.super.example();
  }

  @Override
  public boolean steer(int right, int up) {
    return chain.steer(right, up);
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(chain.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return chain.meaning(line);
  }

  @Override
  public Optional<Message> type(String line) {
    return line.isBlank() ? close() : chain.typed(line);
  }

  private Optional<Message> close() {
    if (chain.size() < 3) {
      return Optional.of(Message.of("desk.tool.draw.at-least-three-corners"));
    }
    if (NewFloorArea.make(bench, chain.points())) {
      chain.clear();
      done.run();
      return Optional.empty();
    }
    return bench.desk().refusal().map(Refusal::message);
  }

  @Override
  public Optional<Message> standing() {
    return chain.size() < 2
        ? Optional.empty()
        : Optional.of(
            Message.of(
                "desk.tool.to-closing",
                LengthFormat.show(
                    chain.last().distanceTo(chain.first()), bench.desk().site().units())));
  }

  @Override
  public boolean stepBack() {
    return chain.removeLast();
  }

  @Override
  public Optional<Message> lastStep() {
    return chain.isEmpty()
        ? Optional.empty()
        : Optional.of(Message.of("desk.tool.corner", chain.size()));
  }

  @Override
  public Optional<Vec> from() {
    return chain.isEmpty() ? Optional.empty() : Optional.of(chain.last());
  }

  @Override
  public List<Vec> ownCorners() {
    return chain.points();
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>(OverlayInks.zero(paper));
    inks.addAll(chain.over(paper));
    if (chain.size() >= 2) {
      inks.add(OverlayInks.guide(chain.tip(), chain.first()));
    }
    return inks;
  }
}
