package slabwright.desk;

import java.nio.file.Path;
import java.util.List;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import slabwright.desk.canvas.PageView;
import slabwright.desk.canvas.SlabView;
import slabwright.desk.canvas.Tone;
import slabwright.desk.cards.CardColumn;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskParts;
import slabwright.desk.model.Samples;
import slabwright.desk.model.Settings;
import slabwright.desk.model.Stage;
import slabwright.desk.model.Tally;
import slabwright.desk.model.TallyItem;
import slabwright.desk.shell.Commands;
import slabwright.desk.shell.EntryBar;
import slabwright.desk.shell.NoticeBar;
import slabwright.desk.shell.PageList;
import slabwright.desk.start.StartDoors;
import slabwright.desk.start.StartScreen;
import slabwright.desk.tool.ToolBox;
import slabwright.desk.tool.ToolName;
import slabwright.shape.Bounds;
import slabwright.site.FloorArea;

/** Puts the desk together and says which screen shows. */
final class DeskRoom implements Screen {
  private final DeskParts parts;
  private final Desk desk;
  private final ToolBox tools;
  private final EditActions edits;
  private final PlanActions plans;
  private final FileDrops drops;
  private final Commands commands = new Commands();
  private final StackPane node = new StackPane();
  private final Workroom workroom;
  private final StartScreen start;
  private final NoticeBar startNotice;
  private boolean waiting;

  DeskRoom(Settings settings, DeskPlaces places, Runnable look, Outside outside) {
    parts = DeskParts.of(settings, places.data(), outside.home());
    Bench bench = parts.bench();
    desk = bench.desk();
    Chooser asks = outside.chooser();
    InlayActions inlays = new InlayActions(parts, asks);
    ShownNow shown = new ShownNow(bench, parts.pictures(), parts.answers(), parts.seams());
    UnderlayActions underlays = new UnderlayActions(parts, this::pictureLaid, this::pictureFlat);
    tools =
        new ToolBox(
            bench.focus(),
            new ToolMaker(
                bench,
                shown,
                parts.rooms(),
                parts.walks(),
                this::roomDone,
                inlays::choose,
                underlays));
    edits = new EditActions(bench, parts.pictures(), shown);
    plans = new PlanActions(parts, new Samples(places.data()), asks, tools, this, underlays);
    drops = new FileDrops(desk, plans, inlays);
    DeskCommands.fill(commands, desk, plans, edits, this, look);
    SheetExports exports = new SheetExports(parts, asks, outside.printing());
    DeskCommands.fillExports(commands, exports, parts.releases());
    workroom = makeWorkroom();
    CardSets sets =
        new CardSets(
            parts,
            workroom.slab()::showPlace,
            new CardSets.Doors(inlays::choose, asks::proof, plans, exports));
    workroom.setPages(new PageView(parts.pages()), new PageList(parts.pages()));
    workroom.setCards(new CardColumn(bench, sets::of));
    startNotice = new NoticeBar(desk, v -> {});
    start = new StartScreen(doors(), startNotice);
    parts.hear(this::refreshSoon);
    tools.changed().hear(this::refreshSoon);
  }

  private Workroom makeWorkroom() {
    StageInks inks = new StageInks(parts);
    return new Workroom(parts, tools, commands, inks);
  }

  private StartDoors doors() {
    return new StartDoors(
        plans::startByTape,
        plans::trace,
        plans::openSample,
        plans::choosePlan,
        plans::openPlan,
        plans::recover);
  }

  Node node() {
    return node;
  }

  Bench bench() {
    return parts.bench();
  }

  DeskParts parts() {
    return parts;
  }

  PlanActions plans() {
    return plans;
  }

  FileDrops drops() {
    return drops;
  }

  ToolBox tools() {
    return tools;
  }

  Workroom workroom() {
    return workroom;
  }

  @Override
  public SlabView slab() {
    return workroom.slab();
  }

  @Override
  public EntryBar entry() {
    return workroom.entry();
  }

  void setDark(boolean dark) {
    workroom.setTone(dark);
    start.setTone(dark ? Tone.DARK : Tone.LIGHT);
  }

  /** Looks at files again, as after another program had the screen. */
  void lookAgain() {
    if (desk.isOpen()) {
      parts.releases().lookAgain();
    }
  }

  /** Opens what was given, else shows the start screen. */
  void begin(List<String> given) {
    if (given.isEmpty()) {
      refresh();
    } else {
      plans.openPlan(Path.of(given.get(0)));
    }
  }

  private void pictureLaid(Bounds where) {
    parts.bench().focus().go(Stage.MEASURE);
    tools.take(ToolName.SCALE);
    workroom.slab().showAll(where);
  }

  private void pictureFlat(Bounds where) {
    tools.take(ToolName.PICK);
    workroom.slab().showAll(where);
  }

  private void roomDone() {
    tools.take(ToolName.PICK);
    workroom.slab().lookAfresh();
    workroom.slab().requestFocus();
  }

  /** Whether everything shown has been worked out. */
  boolean isUpToDate() {
    return !waiting && parts.isUpToDate();
  }

  /** Whether the whole job and its pages have been worked out too. */
  boolean isAllWorkedOut() {
    return !waiting && parts.isAllWorkedOut();
  }

  private void refreshSoon() {
    if (!waiting) {
      waiting = true;
      Platform.runLater(this::refresh);
    }
  }

  private void refresh() {
    waiting = false;
    if (desk.isOpen()) {
      if (!node.getChildren().contains(workroom)) {
        node.getChildren().setAll(workroom);
        workroom.slab().requestFocus();
      }
      workroom.refresh(figures());
    } else {
      startNotice.refresh();
      if (!node.getChildren().contains(start)) {
        node.getChildren().setAll(start);
        start.show(parts.keeper().recoverable(), parts.bench().settings().recent());
      }
    }
  }

  private List<TallyItem> figures() {
    return Tally.of(
        parts.answers(),
        parts.job().done(),
        parts.bench().focus().area().map(FloorArea::id),
        desk.shown().units());
  }

  void keyPressed(KeyEvent e) {
    if (!desk.isOpen()) {
      if (e.isShortcutDown() ? commands.handle(e) : start.key(e.getCode())) {
        e.consume();
      }
      return;
    }
    if (!(e.getTarget() instanceof TextInputControl)) {
      if (workroom.keyed(e, edits, commands)) {
        e.consume();
      }
    }
  }

  void keyTyped(KeyEvent e) {
    if (desk.isOpen() && !(e.getTarget() instanceof TextInputControl) && workroom.typed(e)) {
      e.consume();
    }
  }

  void close() {
    parts.close();
  }
}
