package slabwright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import slabwright.desk.canvas.PageView;
import slabwright.desk.canvas.SlabView;
import slabwright.desk.canvas.Tone;
import slabwright.desk.cards.CardColumn;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.DeskSettings;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Selection;
import slabwright.desk.model.Stage;
import slabwright.desk.model.plan.PlanList;
import slabwright.desk.shell.Commands;
import slabwright.desk.shell.EntryBar;
import slabwright.desk.shell.KeyList;
import slabwright.desk.shell.NoticeBar;
import slabwright.desk.shell.OpenQuestion;
import slabwright.desk.shell.PageList;
import slabwright.desk.shell.ProgressStrip;
import slabwright.desk.shell.TallyBar;
import slabwright.desk.start.StartActions;
import slabwright.desk.start.StartEntry;
import slabwright.desk.start.StartScreen;
import slabwright.desk.tool.ActiveTool;
import slabwright.desk.tool.ToolName;
import slabwright.project.SamplePlans;
import slabwright.shape.Bounds;
import slabwright.site.FloorArea;
import slabwright.words.Words;

/** Puts the desk together and says which screen shows. */
final class DeskController implements SlabAccess {
  /** What the window itself can be told: another look, room for thumbs, another language. */
  record WindowSwitches(Runnable look, Runnable roomy, Runnable language) {}

  private final DeskModel parts;
  private final Desk desk;
  private final ActiveTool tools;
  private final EditActions edits;
  private final PlanActions plans;
  private final FileDrops drops;
  private final Commands commands = new Commands();
  private final StackPane node = new StackPane();
  private final PlanScreen workroom;
  private final StartScreen start;
  private final KeyList keyList;
  private final NoticeBar startNotice;
  private final ProgressStrip startProgress;
  private Optional<PlanList.Found> listed = Optional.empty();
  private boolean waiting;

  DeskController(
      DeskSettings settings, UserDataFolder places, WindowSwitches window, SystemServices outside) {
    parts = DeskModel.of(settings, outside.words(), places.data(), outside.home());
    DeskContext bench = parts.bench();
    desk = bench.desk();
    Chooser asks = new FolderMemory(outside.chooser(), settings);
    InlayActions inlays = new InlayActions(parts, asks);
    CurrentPlanLookup shown =
        new CurrentPlanLookup(bench, parts.pictures(), parts.answers(), parts.seams());
    UnderlayActions underlays = new UnderlayActions(parts, this::pictureLaid, this::pictureFlat);
    tools =
        new ActiveTool(
            bench.focus(),
            new ToolFactory(
                bench,
                shown,
                parts.rooms(),
                parts.walks(),
                this::roomDone,
                inlays::choose,
                underlays));
    edits = new EditActions(bench, parts.pictures(), shown, inlays);
    plans = new PlanActions(parts, new SamplePlans(places.data()), asks, tools, this, underlays);
    PhotoActions photos = new PhotoActions(parts, asks);
    drops = new FileDrops(desk, bench.focus(), plans, inlays, photos, this::itemAt);
    DeskCommands menu = new DeskCommands(commands, bench.words());
    menu.fill(desk, this::undo, plans, edits, this, window.look());
    SheetExports exports = new SheetExports(parts, asks, outside.printing());
    menu.fillExports(exports, parts.releases());
    menu.fillLook(parts.look());
    menu.fillTouch(settings, window.roomy(), this::refreshSoon);
    menu.fillArranging(edits);
    menu.fillPhotos(photos::choose);
    menu.fillLanguage(window.language());
    keyList = new KeyList(commands, bench.words(), this::keysBack);
    menu.fillKeys(keyList::turn);
    workroom = makeWorkroom(outside.folders());
    CardSets sets =
        new CardSets(
            parts,
            workroom.slab()::showPlace,
            new CardSets.CardActions(
                inlays::choose, asks::proof, plans, exports, photos::choose, photos::chooseMark));
    workroom.setPages(
        new PageView(parts.pages(), bench.words()), new PageList(parts.pages(), bench.words()));
    workroom.setCards(new CardColumn(bench, sets::of));
    startNotice = new NoticeBar(bench, v -> {}, outside.folders());
    startProgress = new ProgressStrip(parts.waiting(), bench.words());
    start =
        new StartScreen(
            doors(window.language()), bench.words(), new VBox(8, startNotice, startProgress));
    parts.proofs().changed().subscribe(() -> workroom.bring("proof-verdict"));
    parts.subscribe(this::refreshSoon);
    tools.changed().subscribe(this::refreshSoon);
  }

  private Optional<PlanItem> itemAt(double sceneX, double sceneY) {
    Point2D at = slab().sceneToLocal(sceneX, sceneY);
    return parts
        .pictures()
        .picture()
        .filter(p -> slab().isVisible() && slab().contains(at))
        .flatMap(p -> p.at(slab().viewport().toSite(at.getX(), at.getY()), slab().reach()));
  }

  private PlanScreen makeWorkroom(Consumer<Path> folders) {
    StageInks inks = new StageInks(parts);
    return new PlanScreen(parts, tools, commands, inks, folders);
  }

  private StartActions doors(Runnable language) {
    return new StartActions(
        plans::startByTape,
        plans::trace,
        plans::openSample,
        plans::choosePlan,
        plans::openPlan,
        plans::recover,
        language);
  }

  StackPane node() {
    return node;
  }

  DeskContext bench() {
    return parts.bench();
  }

  DeskModel parts() {
    return parts;
  }

  PlanActions plans() {
    return plans;
  }

  FileDrops drops() {
    return drops;
  }

  ActiveTool tools() {
    return tools;
  }

  Commands commands() {
    return commands;
  }

  PlanScreen workroom() {
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

  /** Goes on where another desk was closed: its plan, its past, and what was looked at. */
  void goOn(DeskController before) {
    Selection was = before.bench().focus();
    parts.keeper().goOn(before.parts.keeper());
    if (desk.isOpen()) {
      parts.rooms().load();
      was.area().ifPresent(a -> bench().focus().selectArea(a.id()));
      bench().focus().goTo(was.stage());
      bench().focus().select(was.selected());
    }
    refresh();
  }

  /** Looks at files again, as after another program had the screen. */
  void recheckFiles() {
    if (desk.isOpen()) {
      parts.releases().recheckGraphics();
      parts.keeper().recheck();
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

  /** Takes back the last wall or corner of what is being drawn, else the plan's last edit. */
  private void undo() {
    if (tools.tool().lastStep().isEmpty() || !tools.tool().stepBack()) {
      desk.undo();
    } else {
      workroom.acted();
      refreshSoon();
    }
  }

  private void pictureLaid(Bounds where) {
    parts.bench().focus().goTo(Stage.MEASURE);
    tools.activate(ToolName.SCALE);
    workroom.slab().showAll(where);
  }

  private void pictureFlat(Bounds where) {
    tools.activate(ToolName.PICK);
    workroom.slab().showAll(where);
  }

  private void roomDone() {
    tools.activate(ToolName.PICK);
    workroom.slab().resetView();
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

  /** Shows all as it is now. */
  void refreshNow() {
    refresh();
  }

  private void refresh() {
    waiting = false;
    if (desk.isOpen()) {
      if (!node.getChildren().contains(workroom)) {
        node.getChildren().setAll(workroom, keyList);
        workroom.slab().requestFocus();
      }
      List<OpenQuestion> open = PlanQuestions.of(desk.site(), parts.job().current());
      workroom.refresh(figures(open.size()), open);
    } else if (!node.getChildren().isEmpty() || !isOpeningQuickly()) {
      // While a plan is being opened: nothing for a moment rather than a screen that goes at once.
      startNotice.refresh();
      startProgress.refresh();
      if (!node.getChildren().contains(start)) {
        node.getChildren().setAll(start, keyList);
        parts.plans().look();
      }
      showEntries();
    }
  }

  /** None until it is known again what lies on disk: another plan may have been open meanwhile. */
  private void showEntries() {
    Optional<PlanList.Found> found = parts.plans().found();
    if (!found.equals(listed)) {
      listed = found;
      found.ifPresentOrElse(this::list, start::forget);
    }
    start.draw(parts.sketches().known());
  }

  private void list(PlanList.Found found) {
    Words words = bench().words();
    start.show(
        found.left().stream().map(p -> StartEntry.left(p, words)).toList(),
        found.saved().stream().map(p -> StartEntry.recent(p, words)).toList());
  }

  private boolean isOpeningQuickly() {
    return parts.errands().isBusy() && parts.waiting().shown().isEmpty();
  }

  private List<TallyBar.Item> figures(int open) {
    return Tally.of(
        open,
        parts.answers(),
        parts.job(),
        parts.bench().focus().area().map(FloorArea::id),
        desk.shown().units(),
        parts.bench().words());
  }

  private void keysBack() {
    if (desk.isOpen()) {
      workroom.home();
    }
  }

  void keyPressed(KeyEvent e) {
    if (e.getCode() == KeyCode.F1) {
      commands.run("keys");
      e.consume();
      return;
    }
    if (keyList.isVisible()) {
      return;
    }
    if (!desk.isOpen()) {
      if (e.isShortcutDown() ? commands.handle(e) : start.key(e.getCode())) {
        e.consume();
      }
      return;
    }
    boolean used =
        e.getTarget() instanceof TextInputControl text
            ? e.isShortcutDown() && text instanceof TextField && commands.handleWhileTyping(e)
            : workroom.keyed(e, edits, commands);
    if (used) {
      e.consume();
    }
  }

  void keyTyped(KeyEvent e) {
    if (!keyList.isVisible()
        && desk.isOpen()
        && !(e.getTarget() instanceof TextInputControl)
        && workroom.typed(e)) {
      e.consume();
    }
  }

  void close() {
    parts.close();
  }
}
