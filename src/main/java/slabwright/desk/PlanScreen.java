package slabwright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.event.ActionEvent;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import slabwright.desk.canvas.DimensionField;
import slabwright.desk.canvas.PageView;
import slabwright.desk.canvas.PhotoHover;
import slabwright.desk.canvas.SlabInput;
import slabwright.desk.canvas.SlabLayers;
import slabwright.desk.canvas.SlabView;
import slabwright.desk.canvas.Tone;
import slabwright.desk.cards.CardColumn;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.Stage;
import slabwright.desk.model.scene.Pictures;
import slabwright.desk.shell.Commands;
import slabwright.desk.shell.Controls;
import slabwright.desk.shell.EntryBar;
import slabwright.desk.shell.LookSwitch;
import slabwright.desk.shell.NoticeBar;
import slabwright.desk.shell.NumberPad;
import slabwright.desk.shell.OpenList;
import slabwright.desk.shell.OpenQuestion;
import slabwright.desk.shell.PageList;
import slabwright.desk.shell.ProgressStrip;
import slabwright.desk.shell.SlabMenu;
import slabwright.desk.shell.TallyBar;
import slabwright.desk.shell.ToolPalette;
import slabwright.desk.shell.TopBar;
import slabwright.desk.shell.ZoomButtons;
import slabwright.desk.tool.ActiveTool;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** The screen while a site is open: bar above, slab and cards, tally below. */
final class PlanScreen extends BorderPane {
  /** What stands at both sides of the line at the foot. */
  private static final double BESIDE = 250;

  /** Below this width everything stands closer. */
  private static final double NARROW = 1200;

  /** The width of the panel in a narrow window, as its style says. */
  private static final double OVER = 352;

  private final TopBar top;
  private final SlabView slab;
  private final ToolPalette palette;
  private final EntryBar entry;
  private final NoticeBar notice;
  private final ProgressStrip progress;
  private final VBox messages = new VBox();
  private final VBox foot = new VBox();
  private final SidePanel panel;
  private CardColumn cards;
  private final TallyBar tally;
  private final SlabKeys keys;
  private final StackPane pane = new StackPane();
  private final ZoomButtons zoom;
  private final LookSwitch look;
  private final DeskContext bench;
  private final ActiveTool tools;
  private final SlabLayers layers;
  private final NumberPad pad;
  private final OpenList open;
  private String wanted = "";
  private String brought = "";
  private boolean listed;
  private final SlabMenu menu;
  private final Pictures lookup;
  private Optional<TextField> left = Optional.empty();
  private PageView page;
  private PageList pageList;

  PlanScreen(
      DeskModel parts,
      ActiveTool tools,
      Commands commands,
      SlabLayers layers,
      Consumer<Path> folders) {
    getStyleClass().add("plan-screen");
    this.layers = layers;
    this.bench = parts.bench();
    this.tools = tools;
    Pictures pictures = parts.pictures();
    top = new TopBar(bench, parts.releases(), tools, commands);
    slab = new SlabView(bench, pictures, tools, layers, parts.look());
    menu = new SlabMenu(commands, bench.focus(), bench.words());
    lookup = pictures;
    look = new LookSwitch(parts.look(), bench.words(), () -> commands.run("save-look"));
    palette = new ToolPalette(bench, tools);
    entry = new EntryBar(tools, bench.words(), this::acted, this::home);
    notice = new NoticeBar(bench, v -> slab.showPlace(Bounds.EMPTY.including(v)), folders);
    progress = new ProgressStrip(parts.waiting(), bench.words());
    DimensionField field = new DimensionField(bench, parts.rooms(), this::home);
    SlabInput input = new SlabInput(slab, tools, pictures, field, this::acted, this::menu);
    input.listen();
    tally = new TallyBar(bench.words(), this::figure);
    keys = new SlabKeys(bench, tools, entry, slab, this::home, () -> cards.refused());
    setTop(top);
    zoom = new ZoomButtons(commands, bench.words());
    pad = new NumberPad(bench.desk(), bench.words(), entry::focusField);
    panel = new SidePanel(pad);
    open = new OpenList(bench.words(), this::lead);
    setCenter(slabWith(field, zoom));
    foot.getChildren().setAll(tally);
    pane.widthProperty().addListener((o, was, is) -> Platform.runLater(this::panel));
    widthProperty().addListener((o, was, is) -> fit(is.doubleValue()));
    addEventHandler(ActionEvent.ACTION, this::done);
    addEventHandler(KeyEvent.KEY_PRESSED, this::escaped);
    slab.addEventFilter(KeyEvent.KEY_PRESSED, this::tabbed);
  }

  /** What lies under the pointer is picked, unless it is already; then the menu opens. */
  private void menu(Vec at, double reach, double screenX, double screenY) {
    if (!tools.tool().crosshair()) {
      lookup
          .picture()
          .flatMap(p -> p.at(at, reach))
          .filter(hit -> !bench.focus().selected().contains(hit))
          .ifPresent(bench.focus()::select);
    }
    menu.open(slab, screenX, screenY);
  }

  private void fit(double wide) {
    pseudoClassStateChanged(PseudoClass.getPseudoClass("narrow"), wide < NARROW);
    Platform.runLater(this::panel);
  }

  /**
   * Beside the slab where there is room; over it in a narrow window, so that the plan neither
   * shrinks nor moves when the panel is folded. Of a folded one the number pad is left, over the
   * slab. What floats on the slab keeps clear of it, and the plan is fitted beside it.
   */
  private void panel() {
    boolean folded = bench.settings().isOn("panel-folded");
    boolean over = folded || getWidth() < NARROW;
    Node beside = over ? null : panel;
    if (getRight() != beside) {
      pane.getChildren().remove(panel);
      OverSlab.beside(this, beside, foot);
    }
    if (over && !pane.getChildren().contains(panel)) {
      pane.getChildren().add(panel);
      StackPane.setAlignment(panel, Pos.BOTTOM_RIGHT);
    }
    panel.fold(folded);
    clear(over && (!folded || pad.isVisible()) ? OVER : 0);
  }

  /** Keeps what lies over the slab clear of so much at its right. */
  private void clear(double right) {
    boolean sheets = bench.focus().stage() == Stage.SHEETS;
    slab.setCovered(right);
    entry.setWidest(pane.getWidth() - BESIDE - right);
    StackPane.setMargin(entry, new Insets(0, 66 + right, 20, 172));
    StackPane.setMargin(messages, new Insets(16, 16 + right, 0, sheets ? 288 : 190));
    StackPane.setMargin(look, new Insets(16, 18 + right, 0, 0));
    StackPane.setMargin(open, new Insets(16, 70 + right, 12, 16));
    StackPane.setMargin(zoom, new Insets(0, 18 + right, 20, 0));
    StackPane.setMargin(page, new Insets(0, right, 0, 272));
  }

  /** To where a figure of the tally comes from. */
  private void figure(TallyBar.Item item) {
    FigureSource from = FigureSource.of(item);
    if (from.field().isEmpty()) {
      listed = !listed;
      bench.focus().changed().fire();
    } else {
      leadTo(from.stage(), from.field());
    }
  }

  void leadTo(Stage stage, String field) {
    wanted = field;
    bench.settings().setOn("panel-folded", false);
    bench.focus().goTo(stage);
  }

  /** Scrolls what is about to be made on a card into view. */
  void bring(String id) {
    brought = id;
  }

  /** To the field of an open question. */
  private void lead(OpenQuestion q) {
    q.area().ifPresent(bench.focus()::selectArea);
    q.item().ifPresent(bench.focus()::select);
    leadTo(q.stage(), q.field());
  }

  /** The keys are the slab's again, or the page's that lies over it. */
  void home() {
    (slab.isVisible() ? slab : page).requestFocus();
  }

  /**
   * A field that was taken and a button outside the cards give the keys back to the slab; Tab then
   * goes on from the field.
   */
  private void done(ActionEvent e) {
    if (e.getTarget() instanceof TextField field) {
      if (cards.refused().filter(field::equals).isEmpty()) {
        left = Optional.of(field).filter(f -> isIn(cards, f));
        home();
      }
    } else if (e.getTarget() instanceof ButtonBase button && !isIn(cards, button)) {
      home();
    }
  }

  private static boolean isIn(Node column, Node node) {
    return node != null && (node == column || isIn(column, node.getParent()));
  }

  private void escaped(KeyEvent e) {
    // The target is no sign: a text field hands Esc on as if it had been pressed on its parent.
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    if (e.getCode() == KeyCode.ESCAPE && owner instanceof TextInputControl) {
      boolean line = entry.isTyping();
      home();
      if (line) {
        keys.putAway();
        acted();
      }
      e.consume();
    }
  }

  private void tabbed(KeyEvent e) {
    Optional<TextField> field = left.flatMap(this::now);
    left = Optional.empty();
    if (e.getCode() == KeyCode.TAB && field.isPresent()) {
      field.get().requestFocus();
      field.get().fireEvent(e.copyFor(field.get(), field.get()));
      e.consume();
    }
  }

  /** A field as it stands on its card now; cards may have been made anew since it was left. */
  private Optional<TextField> now(TextField field) {
    if (isIn(cards, field) || field.getId() == null) {
      return Optional.of(field).filter(f -> isIn(cards, f));
    }
    Node same = cards.lookup("#" + field.getId());
    return Optional.ofNullable(same).map(TextField.class::cast);
  }

  private StackPane slabWith(DimensionField field, Node zoom) {
    PhotoHover photos = new PhotoHover(bench, slab, lookup, layers::plan);
    pane.getChildren().setAll(palette, entry, messages, zoom, look, open, field, photos, slab);
    // Below all others, and yet the last that Tab comes to: the cards are next.
    slab.setViewOrder(1);
    slab.setUnderfoot(() -> entry.getHeight() + 20);
    messages.getChildren().setAll(notice, progress);
    messages.setSpacing(8);
    messages.setAlignment(Pos.TOP_CENTER);
    messages.setPickOnBounds(false);
    messages.setMaxHeight(Region.USE_PREF_SIZE);
    OverSlab.place(palette, Pos.TOP_LEFT, new Insets(18, 0, 14, 18));
    OverSlab.place(entry, Pos.BOTTOM_CENTER, new Insets(0, 66, 20, 172));
    OverSlab.place(messages, Pos.TOP_CENTER, new Insets(16, 16, 0, 190));
    OverSlab.place(look, Pos.TOP_RIGHT, new Insets(16, 18, 0, 0));
    OverSlab.place(open, Pos.BOTTOM_RIGHT, new Insets(16, 70, 12, 16));
    OverSlab.place(zoom, Pos.BOTTOM_RIGHT, new Insets(0, 18, 20, 0));
    pane.setMinSize(0, 0);
    return pane;
  }

  /** The pages lie over the slab while the Sheets stage is looked at. */
  void setPages(PageView view, PageList list) {
    page = view;
    pageList = list;
    page.setViewOrder(1);
    pane.getChildren().addAll(List.of(pageList, page));
    OverSlab.place(pageList, Pos.TOP_LEFT, new Insets(18, 0, 18, 18));
    StackPane.setMargin(page, new Insets(0, 0, 0, 272));
  }

  /** The cards come later: they show places on the slab. */
  void setCards(CardColumn column) {
    cards = column;
    panel.setCards(column);
    OverSlab.beside(this, panel, foot);
  }

  /** What the stage lays over the plan. */
  SlabLayers layers() {
    return layers;
  }

  SlabView slab() {
    return slab;
  }

  EntryBar entry() {
    return entry;
  }

  void setTone(boolean dark) {
    slab.setTone(dark ? Tone.DARK : Tone.LIGHT);
  }

  void acted() {
    entry.refresh();
    slab.keepInView(tools.tool().keptInView());
    slab.repaintOver();
  }

  void refresh(List<TallyBar.Item> figures, List<OpenQuestion> questions) {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    boolean onCard = cards.shows(owner);
    open.show(questions);
    Controls.show(open, listed);
    top.refresh(questions);
    palette.refresh();
    look.refresh();
    entry.refresh();
    notice.refresh();
    progress.refresh();
    cards.refresh(questions);
    if (!brought.isEmpty()) {
      cards.bring(brought);
      brought = "";
    }
    tally.show(figures);
    boolean sheets = bench.focus().stage() == Stage.SHEETS;
    Controls.show(pad, !sheets && bench.settings().isOn("number-pad"));
    pad.refresh();
    panel();
    for (Node n : List.of(slab, palette, entry, zoom, look)) {
      Controls.show(n, !sheets);
    }
    Controls.show(page, sheets);
    pageList.refresh();
    Controls.show(pageList, sheets);
    if (sheets) {
      page.refresh();
    } else {
      slab.repaint();
    }
    Node other = sheets ? slab : page;
    if (owner == other || (onCard && !cards.shows(owner))) {
      // Only one of the two is there; a button may have gone with what it did. Who has the keys
      // is not given them again: that wipes the rim which says that Tab led there.
      home();
    }
    if (!wanted.isEmpty()) {
      Node tool = palette.lookup("#" + wanted);
      if (!cards.lead(wanted) && tool != null) {
        tool.requestFocus();
      }
      wanted = "";
    }
  }

  /** Typing on the slab goes into the entry line when the tool takes lengths. */
  boolean typed(KeyEvent e) {
    String c = e.getCharacter();
    if (c.length() != 1 || e.isShortcutDown()) {
      return false;
    }
    Optional<TextField> refused = cards.refused().filter(f -> Character.isDigit(c.charAt(0)));
    if (refused.isPresent()) {
      refused.get().requestFocus();
      refused.get().setText(c);
      refused.get().end();
      return true;
    }
    return tools.tool().begins(c.charAt(0)) && entry.begin(c);
  }

  /** A key pressed outside a text field. */
  boolean keyed(KeyEvent e, EditActions edit, Commands commands) {
    boolean used = keys.pressed(e, edit, commands);
    if (used) {
      acted();
    }
    return used;
  }
}
