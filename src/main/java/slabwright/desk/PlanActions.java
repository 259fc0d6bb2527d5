package slabwright.desk;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import slabwright.desk.cards.measure.UnderlayCard;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Stage;
import slabwright.desk.model.plan.PlanStorage;
import slabwright.desk.tool.ActiveTool;
import slabwright.desk.tool.ToolName;
import slabwright.project.SamplePlans;
import slabwright.project.plan.PlanFiles;
import slabwright.site.FloorArea;
import slabwright.site.edit.SiteEdit;
import slabwright.units.FileName;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/** Beginning, opening, saving and putting away of plans, and what concerns a plan as a whole. */
final class PlanActions implements UnderlayCard.Actions {
  private final DeskModel parts;
  private final Desk desk;
  private final PlanStorage keeper;
  private final SamplePlans samples;
  private final Chooser chooser;
  private final ActiveTool tools;
  private final SlabAccess screen;
  private final UnderlayActions underlays;

  PlanActions(
      DeskModel parts,
      SamplePlans samples,
      Chooser chooser,
      ActiveTool tools,
      SlabAccess screen,
      UnderlayActions underlays) {
    this.parts = parts;
    this.desk = parts.bench().desk();
    this.keeper = parts.keeper();
    this.samples = samples;
    this.chooser = chooser;
    this.tools = tools;
    this.screen = screen;
    this.underlays = underlays;
    keeper.onAskElsewhere(this::saveAs);
  }

  void startByTape() {
    begin();
    takeTape();
  }

  private void begin() {
    opened(
        () ->
            keeper.begin(
                parts.bench().words().say("desk.app.plan.new-site"), UnitSystem.FEET_INCHES));
  }

  private void takeTape() {
    tools.activate(ToolName.TAPE);
    Platform.runLater(() -> screen.entry().focusField());
  }

  void addArea() {
    parts.bench().focus().goTo(Stage.MEASURE);
    takeTape();
  }

  void trace() {
    chooser.picture().ifPresent(this::trace);
  }

  /** Lays a picture under the plan; begins one when none is open. */
  void trace(Path picture) {
    if (!desk.isOpen()) {
      begin();
    }
    underlays.add(picture);
  }

  void choosePicture() {
    chooser.picture().ifPresent(underlays::add);
  }

  @Override
  public void scalePicture() {
    tools.activate(ToolName.SCALE);
  }

  @Override
  public void flattenPicture() {
    tools.activate(ToolName.FLAT);
  }

  @Override
  public Optional<UnderlayCard.Pages> pages() {
    return underlays.pages();
  }

  @Override
  public void turnTo(int page) {
    underlays.turnTo(page);
  }

  @Override
  public void removePicture() {
    desk.push(new SiteEdit.SetUnderlay(Optional.empty()));
  }

  /** Looks at the floor area after the one looked at; after the last comes the first. */
  void nextArea() {
    List<FloorArea> all = desk.site().areas();
    parts
        .bench()
        .focus()
        .area()
        .map(a -> (all.stream().map(FloorArea::id).toList().indexOf(a.id()) + 1) % all.size())
        .ifPresent(i -> parts.bench().focus().selectArea(all.get(i).id()));
  }

  void removeArea() {
    parts.bench().focus().area().ifPresent(a -> desk.push(new SiteEdit.RemoveArea(a.id())));
  }

  void openSample() {
    parts
        .errands()
        .run(
            new BackgroundTasks.BackgroundTask<>(
                Message.of("desk.app.plan.copying-sample"),
                why -> Message.of("desk.app.plan.sample-not-copied", why),
                steps ->
                    samples
                        .tramHall()
                        .map(Result::ok)
                        .orElseGet(() -> Result.refused(Message.of("desk.app.plan.no-samples"))),
                this::openPlan));
  }

  void choosePlan() {
    chooser.plan().ifPresent(this::openPlan);
  }

  /** Opens a plan once it has been read; until then, and when it is given up, all stays. */
  void openPlan(Path plan) {
    read(plan, keeper::read, read -> keeper.open(plan, read));
  }

  /** Goes on with an untitled plan in its folder, or with a plan whose journal was left. */
  void recover(Path what) {
    if (Files.isDirectory(what)) {
      read(what, PlanFiles::recover, left -> keeper.recover(what, left));
    } else {
      openPlan(what);
    }
  }

  private <T> void read(Path what, Function<Path, Result<T>> reader, Consumer<T> open) {
    String name = String.valueOf(what.getFileName());
    parts
        .errands()
        .run(
            new BackgroundTasks.BackgroundTask<>(
                Message.of("desk.app.plan.opening", name),
                why -> Message.of("desk.app.plan.not-opened", name, why),
                steps -> {
                  steps.report(-1);
                  return reader.apply(what);
                },
                read -> opened(() -> open.accept(read))));
  }

  private void opened(Runnable how) {
    tools.activate(ToolName.PICK);
    screen.slab().resetView();
    how.run();
    parts.rooms().load();
    if (desk.isOpen()) {
      screen.slab().requestFocus();
    }
  }

  void save() {
    if (!keeper.save()) {
      saveAs();
    }
  }

  void saveAs() {
    chooser.planToSave(FileName.slug(desk.site().name(), "site")).ifPresent(keeper::saveAs);
  }

  void closePlan() {
    desk.close();
  }

  void switchUnits() {
    UnitSystem now = desk.site().units();
    UnitSystem other = now == UnitSystem.METRIC ? UnitSystem.FEET_INCHES : UnitSystem.METRIC;
    desk.push(new SiteEdit.SetUnits(other));
  }
}
