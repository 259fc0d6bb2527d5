package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;

/** Draws a room corner by corner with the pointer; a typed length sets the leg being drawn. */
public final class DrawTool implements Tool {
  private final PolylineDraft chain = new PolylineDraft();
  private final DeskContext bench;
  private final Runnable done;

  public DrawTool(DeskContext bench, Runnable done) {
    this.bench = bench;
    this.done = done;
  }

  @Override
  public String prompt() {
    return chain.isEmpty()
        ? "Click the first corner of the room, or type its place from 0."
        : chain.size() < 3
            ? "Click the next corner, or press an arrow key and type the wall's length."
            : "Click the first corner again, or press Enter, to close.";
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
  public Optional<String> entry() {
    return Optional.of(chain.isEmpty() ? "Place" : "Wall " + chain.size());
  }

  @Override
  public String example() {
    return chain.isEmpty() ? "12', 5' 6\"" : Tool.super.example();
  }

  @Override
  public boolean steer(int right, int up) {
    return chain.steer(right, up);
  }

  @Override
  public Optional<String> type(String line) {
    return line.isBlank() ? close() : chain.typed(line);
  }

  private Optional<String> close() {
    if (chain.size() < 3) {
      return Optional.of("A room needs at least three corners.");
    }
    if (NewFloorArea.make(bench, chain.points())) {
      chain.clear();
      done.run();
      return Optional.empty();
    }
    return bench.desk().refusal().map(r -> r.sentence());
  }

  @Override
  public String standing() {
    return chain.size() < 2
        ? ""
        : "to closing: "
            + slabwright.units.LengthFormat.show(
                chain.last().distanceTo(chain.first()), bench.desk().site().units());
  }

  @Override
  public boolean stepBack() {
    return chain.removeLast();
  }

  @Override
  public boolean escape() {
    return chain.clear();
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
