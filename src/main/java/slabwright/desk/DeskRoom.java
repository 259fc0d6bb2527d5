package slabwright.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.StackPane;
import javafx.stage.Window;
import slabwright.desk.canvas.PageView;
import slabwright.desk.canvas.Tone;
import slabwright.desk.cards.CardColumn;
import slabwright.desk.model.Answers;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Focus;
import slabwright.desk.model.Job;
import slabwright.desk.model.Pictures;
import slabwright.desk.model.PlanKeeper;
import slabwright.desk.model.Releases;
import slabwright.desk.model.Samples;
import slabwright.desk.model.Settings;
import slabwright.desk.model.SheetPages;
import slabwright.desk.model.Tally;
import slabwright.desk.model.TallyItem;
import slabwright.desk.model.TapedRooms;
import slabwright.desk.model.WalkKeeper;
import slabwright.desk.shell.Commands;
import slabwright.desk.shell.NoticeBar;
import slabwright.desk.shell.PageList;
import slabwright.desk.start.StartDoors;
import slabwright.desk.start.StartScreen;
import slabwright.desk.tool.ToolBox;
import slabwright.desk.tool.ToolName;
import slabwright.site.FloorArea;
import slabwright.site.Refusal;
import slabwright.site.SiteEdit;
import slabwright.units.UnitSystem;

/** Puts the desk together and says which screen shows. */
final class DeskRoom {
  private final Desk desk = new Desk();
  private final Focus focus = new Focus(desk);
  private final Bench bench;
  private final Pictures pictures;
  private final PlanKeeper keeper;
  private final Samples samples;
  private final Answers answers;
  private final InlayActions inlays;
  private final TapedRooms rooms;
  private final UnderlayActions underlays;
  private final Job job;
  private final SheetPages pages;
  private final Chooser chooser;
  private final ToolBox tools;
  private final EditActions actions;
  private final Commands commands = new Commands();
  private final StackPane node = new StackPane();
  private final Workroom workroom;
  private final StartScreen start;
  private final NoticeBar startNotice;
  private boolean waiting;

  DeskRoom(Settings settings, DeskPlaces places, Runnable switchLook, Window window, Chooser asks) {
    bench = new Bench(desk, focus, settings);
    pictures = new Pictures(desk, focus, Platform::runLater);
    keeper = new PlanKeeper(desk, settings, places.data(), Platform::runLater);
    samples = new Samples(places.data());
    chooser = asks;
    answers = new Answers(desk, focus, keeper::plan, Platform::runLater);
    inlays = new InlayActions(bench, pictures, keeper, chooser);
    rooms = new TapedRooms(desk, keeper::plan);
    WalkKeeper walks = new WalkKeeper(desk, keeper::plan);
    ShownNow shown = new ShownNow(bench, pictures, answers);
    tools =
        new ToolBox(
            focus, new ToolMaker(bench, shown, rooms, walks, this::roomDone, inlays::choose));
    actions = new EditActions(bench, pictures);
    DeskCommands.fill(commands, this, actions, switchLook);
    workroom =
        new Workroom(
            bench, pictures, tools, commands, new StageInks(bench, answers, keeper::plan), rooms);
    underlays = new UnderlayActions(desk, keeper, Platform::runLater, this::pictureLaid);
    job = new Job(desk, keeper::plan, Platform::runLater);
    pages = new SheetPages(desk, focus, job, Platform::runLater);
    Releases releases = new Releases(desk, keeper::plan);
    SheetExports exports = new SheetExports(desk, job, pages, chooser, window);
    CardSets sets =
        new CardSets(
            new CardSets.Sources(bench, pictures, answers, job, pages, releases, rooms),
            workroom.slab()::showPlace,
            inlays::choose,
            exports);
    workroom.setPages(new PageView(pages), new PageList(pages));
    workroom.setCards(new CardColumn(bench, sets::of));
    startNotice = new NoticeBar(desk, v -> {});
    start =
        new StartScreen(
            new StartDoors(
                this::startByTape,
                this::trace,
                this::openSample,
                this::choosePlan,
                this::openPlan,
                p -> opened(() -> keeper.recover(p))),
            startNotice);
    listen();
  }

  private void listen() {
    desk.changed().hear(this::refreshSoon);
    focus.changed().hear(this::refreshSoon);
    tools.changed().hear(this::refreshSoon);
    pictures.changed().hear(this::refreshSoon);
    answers.changed().hear(this::refreshSoon);
    job.changed().hear(this::refreshSoon);
    pages.changed().hear(this::refreshSoon);
  }

  Node node() {
    return node;
  }

  Bench bench() {
    return bench;
  }

  ToolBox tools() {
    return tools;
  }

  Workroom workroom() {
    return workroom;
  }

  Answers answers() {
    return answers;
  }

  Pictures pictures() {
    return pictures;
  }

  void setDark(boolean dark) {
    workroom.setTone(dark);
    start.setTone(dark ? Tone.DARK : Tone.LIGHT);
  }

  /** Opens what was given, else shows the start screen. */
  void begin(List<String> plans) {
    if (plans.isEmpty()) {
      refresh();
    } else {
      openPlan(Path.of(plans.get(0)));
    }
  }

  void startByTape() {
    opened(() -> keeper.begin("New site", UnitSystem.FEET_INCHES));
    tools.take(ToolName.TAPE);
    Platform.runLater(workroom.entry()::focusField);
  }

  void addArea() {
    focus.go(slabwright.desk.model.Stage.MEASURE);
    tools.take(ToolName.TAPE);
    Platform.runLater(workroom.entry()::focusField);
  }

  private void trace() {
    chooser
        .picture()
        .ifPresent(
            p -> {
              opened(() -> keeper.begin("New site", UnitSystem.FEET_INCHES));
              underlays.add(p);
            });
  }

  void choosePicture() {
    chooser.picture().ifPresent(underlays::add);
  }

  void removePicture() {
    desk.push(new SiteEdit.SetUnderlay(Optional.empty()));
  }

  void removeArea() {
    focus.area().ifPresent(a -> desk.push(new SiteEdit.RemoveArea(a.id())));
  }

  private void pictureLaid() {
    focus.go(slabwright.desk.model.Stage.MEASURE);
    tools.take(ToolName.SCALE);
  }

  void openSample() {
    try {
      Optional<Path> copy = samples.tramHall();
      copy.ifPresentOrElse(
          this::openPlan,
          () -> desk.refuse(Refusal.of("This copy of the program came without samples.")));
    } catch (IOException e) {
      desk.refuse(Refusal.of("The sample could not be copied: " + e.getMessage()));
    }
  }

  void choosePlan() {
    chooser.plan().ifPresent(this::openPlan);
  }

  void openPlan(Path plan) {
    opened(() -> keeper.open(plan));
  }

  private void opened(Runnable how) {
    tools.take(ToolName.PICK);
    workroom.slab().lookAfresh();
    how.run();
    rooms.load();
    if (desk.isOpen()) {
      workroom.slab().requestFocus();
    }
  }

  void save() {
    if (!keeper.save()) {
      saveAs();
    }
  }

  void saveAs() {
    String name = desk.site().name().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    chooser.planToSave(name).ifPresent(keeper::saveAs);
  }

  void closePlan() {
    desk.close();
    refresh();
  }

  void switchUnits() {
    UnitSystem now = desk.site().units();
    UnitSystem other = now == UnitSystem.METRIC ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
    desk.push(new SiteEdit.SetUnits(other));
  }

  /** Whether everything shown has been worked out. */
  boolean isUpToDate() {
    return !waiting && pictures.isUpToDate() && answers.isUpToDate() && !underlays.isWorking();
  }

  /** Whether the whole job and its pages have been worked out too. */
  boolean isAllWorkedOut() {
    return isUpToDate() && !job.isWorking() && !pages.isWorking();
  }

  private void roomDone() {
    tools.take(ToolName.PICK);
    workroom.slab().lookAfresh();
    workroom.slab().requestFocus();
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
        start.show(keeper.recoverable(), bench.settings().recent());
      }
    }
  }

  private List<TallyItem> figures() {
    return Tally.of(answers, job.done(), focus.area().map(FloorArea::id), desk.shown().units());
  }

  void keyPressed(KeyEvent e) {
    if (!desk.isOpen()) {
      if (e.isShortcutDown() ? commands.handle(e) : start.key(e.getCode())) {
        e.consume();
      }
      return;
    }
    if (!(e.getTarget() instanceof TextInputControl)) {
      if (workroom.keyed(e, actions, commands)) {
        e.consume();
      }
    }
  }

  void keyTyped(KeyEvent e) {
    if (desk.isOpen() && !(e.getTarget() instanceof TextInputControl) && workroom.typed(e)) {
      e.consume();
    }
  }

  /** Plans can be dropped anywhere. */
  void dropsOn(Scene scene) {
    scene.setOnDragOver(
        e -> {
          if (e.getDragboard().hasFiles()) {
            e.acceptTransferModes(TransferMode.COPY);
          }
        });
    scene.setOnDragDropped(this::dropped);
  }

  private void dropped(DragEvent e) {
    e.getDragboard().getFiles().stream().findFirst().ifPresent(f -> take(f.toPath()));
    e.setDropCompleted(true);
    e.consume();
  }

  /** Takes a file that was dropped, by what it is. */
  void take(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".json")) {
      openPlan(file);
    } else if (name.endsWith(".svg") && desk.isOpen()) {
      inlays.add(file);
    } else if (name.matches(".*\\.(png|jpe?g|pdf)")) {
      if (!desk.isOpen()) {
        opened(() -> keeper.begin("New site", UnitSystem.FEET_INCHES));
      }
      underlays.add(file);
    } else if (name.endsWith(".svg")) {
      desk.refuse(
          Refusal.of("Start or open a plan first; the graphic is then laid into its floor."));
    } else {
      desk.refuse(
          Refusal.of("\"" + file.getFileName() + "\" is neither a plan nor an SVG nor a picture."));
    }
  }

  void close() {
    keeper.close();
    pictures.close();
    answers.close();
    job.close();
    pages.close();
    underlays.close();
  }
}
