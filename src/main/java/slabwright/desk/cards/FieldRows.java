package slabwright.desk.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.shell.Controls;
import slabwright.site.edit.Edit;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.units.QuantityReader;
import slabwright.units.RateFormat;
import slabwright.units.Result;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** Rows of a card: a name at the left, a field or a figure at the right. */
public final class FieldRows extends VBox {
  private final Desk desk;
  private final Words words;
  private final List<Runnable> refreshers = new ArrayList<>();

  public FieldRows(DeskContext bench) {
    desk = bench.desk();
    words = bench.words();
    getStyleClass().add("field-rows");
  }

  public void clear() {
    getChildren().clear();
    refreshers.clear();
  }

  public Words words() {
    return words.showing(units());
  }

  public UnitSystem units() {
    return desk.shown().units();
  }

  public void refresh() {
    List.copyOf(refreshers).forEach(Runnable::run);
  }

  /**
   * A length that can be typed.
   *
   * @param use what it is for, which says what a number without a unit is
   */
  public LengthField length(
      String name, LengthUse use, Supplier<Length> get, Consumer<Length> set) {
    TypedLength typed = typed(use);
    LengthField field =
        text(
            name,
            () -> LengthFormat.show(get.get(), units()),
            s -> typed.read(s).map(v -> taken(v, set)));
    return states(field, typed);
  }

  /** Reads lengths in the site's units. */
  public TypedLength typed(LengthUse use) {
    return new TypedLength(use, this::units);
  }

  private LengthField states(LengthField field, TypedLength typed) {
    return field.states(() -> words.say(typed.bare().word()), typed::meaning);
  }

  /** A temperature in °C, shown and typed in the site's system; empty where nobody measured. */
  public LengthField temperature(
      String name,
      Supplier<OptionalDouble> get,
      NumberRange celsius,
      Consumer<OptionalDouble> set) {
    Function<String, Result<Double>> read =
        s ->
            QuantityReader.temperature(s, units())
                .flatMap(v -> celsius.checked(v, d -> QuantityFormat.temperature(d, units())));
    LengthField field =
        text(
            name,
            () -> get.get().isPresent() ? degrees(get.get().getAsDouble()) : "",
            s ->
                (s.isBlank()
                        ? Result.ok(OptionalDouble.empty())
                        : read.apply(s).map(OptionalDouble::of))
                    .map(v -> taken(v, set)));
    return field.states(
        () -> units() == UnitSystem.METRIC ? "°C" : "°F",
        s ->
            read.apply(s) instanceof Result.Ok<Double> ok
                ? Optional.of(degrees(ok.value()))
                : Optional.empty());
  }

  /** To a tenth of a degree where it is not a whole one. */
  private String degrees(double celsius) {
    boolean metric = units() == UnitSystem.METRIC;
    double v = Math.rint((metric ? celsius : celsius * 9 / 5 + 32) * 10) / 10;
    return QuantityFormat.number(v, v % 1 == 0 ? 0 : 1) + (metric ? " °C" : " °F");
  }

  /** An airflow in m³/h, shown and typed in the site's system. */
  public LengthField airflow(String name, Supplier<Double> get, Consumer<Double> set) {
    LengthField field =
        text(
            name,
            () -> RateFormat.airflow(get.get() / 60, units()),
            s -> QuantityReader.airflow(s, units()).map(v -> taken(v, set)));
    return field.states(
        () -> units() == UnitSystem.METRIC ? "m³/h" : "cfm",
        s ->
            QuantityReader.airflow(s, units()) instanceof Result.Ok<Double> ok
                ? Optional.of(RateFormat.airflow(ok.value() / 60, units()))
                : Optional.empty());
  }

  /** Keeps a field up to date that stands in a row of its own. */
  public void follow(LengthField field) {
    refreshers.add(field::refresh);
    field.refresh();
  }

  public <T> T taken(T v, Consumer<T> set) {
    set.accept(v);
    return v;
  }

  /** A length that may be unknown; an empty line says so. */
  public LengthField maybe(
      String name, LengthUse use, Supplier<Optional<Length>> get, Consumer<Optional<Length>> set) {
    TypedLength typed = typed(use);
    LengthField field =
        text(
            name,
            () -> get.get().map(v -> LengthFormat.show(v, units())).orElse(""),
            s ->
                (s.isBlank()
                        ? Result.ok(Optional.<Length>empty())
                        : typed.read(s).map(Optional::of))
                    .map(v -> taken(v, set)));
    return states(field, typed);
  }

  /** Anything that can be typed. */
  public LengthField text(String name, Supplier<String> get, Function<String, Result<?>> take) {
    LengthField field = new LengthField(name, get, take, words);
    row(name, field);
    follow(field);
    return field;
  }

  /** A name; any text will do. */
  public LengthField freeText(String name, Supplier<String> get, Consumer<String> set) {
    return text(name, get, s -> Result.ok(taken(s.strip(), set))).wide();
  }

  /** A plain number with a range. */
  public LengthField number(
      String name, Supplier<String> get, NumberRange range, Consumer<Double> set) {
    return text(name, get, s -> range.read(s).map(v -> taken(v, set)));
  }

  /** A figure that is only shown. */
  public Label figure(String name, Supplier<String> get) {
    Label value = Controls.label(get.get(), "figure");
    row(name, value);
    refreshers.add(() -> value.setText(get.get()));
    return value;
  }

  /** One of a few. */
  public <T> ChoiceBox<T> choice(
      String name, List<T> all, Function<T, String> word, Supplier<T> get, Consumer<T> set) {
    ChoiceBox<T> box = new ChoiceBox<>();
    box.getItems().setAll(all);
    box.setConverter(
        new StringConverter<T>() {
          @Override
          public String toString(T v) {
            return v == null ? "" : word.apply(v);
          }

          @Override
          public T fromString(String s) {
            throw new UnsupportedOperationException("a choice is never typed");
          }
        });
    box.setValue(get.get());
    box.setAccessibleText(name);
    box.setOnAction(
        e -> {
          if (box.getValue() != null && !box.getValue().equals(get.get())) {
            set.accept(box.getValue());
          }
        });
    row(name, box);
    refreshers.add(() -> box.setValue(get.get()));
    return box;
  }

  /** Yes or no. */
  public CheckBox tick(String name, Supplier<Boolean> get, Consumer<Boolean> set) {
    CheckBox box = new CheckBox(name);
    box.setSelected(get.get());
    box.setOnAction(e -> set.accept(box.isSelected()));
    getChildren().add(box);
    refreshers.add(() -> box.setSelected(get.get()));
    return box;
  }

  /**
   * A slider under a length: shown while it moves, kept when it is let go.
   *
   * @param edit what the site becomes with a length
   */
  public void slider(
      Slider s, Supplier<Length> get, Function<Length, Optional<? extends Edit>> edit) {
    s.setValue(get.get().mm());
    s.setMaxWidth(Double.MAX_VALUE);
    boolean[] follow = {false};
    s.valueProperty()
        .addListener(
            (o, was, is) -> {
              if (!follow[0]) {
                Length v = Length.mm(Math.rint(is.doubleValue()));
                if (s.isValueChanging()) {
                  edit.apply(v).ifPresent(desk::preview);
                } else if (Math.abs(v.mm() - get.get().mm()) > 0.5) {
                  edit.apply(v).ifPresent(desk::push);
                }
              }
            });
    s.valueChangingProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                edit.apply(Length.mm(Math.rint(s.getValue()))).ifPresent(desk::push);
              }
            });
    getChildren().add(s);
    refreshers.add(
        () -> {
          if (!s.isValueChanging()) {
            follow[0] = true;
            s.setValue(get.get().mm());
            follow[0] = false;
          }
        });
  }

  /** Any node at the right of a name. */
  void row(String name, Node node) {
    Label label = Controls.label(name, "row-name");
    label.setMinWidth(name.length() < 4 ? 24 : 100);
    HBox row = new HBox(label, Controls.spring());
    if (node instanceof LengthField field) {
      row.getChildren().add(field.meaning());
    }
    row.getChildren().add(node);
    row.setAlignment(node instanceof ChoiceBox ? Pos.CENTER_LEFT : Pos.BASELINE_LEFT);
    row.getStyleClass().add("field-row");
    HBox.setHgrow(node, Priority.SOMETIMES);
    getChildren().add(row);
  }

  public void sentence(Supplier<String> get, String... styles) {
    Label l = Controls.sentence(get.get(), styles);
    getChildren().add(l);
    refreshers.add(
        () -> {
          l.setText(Controls.unbroken(get.get()));
          Controls.show(l, !l.getText().isEmpty());
        });
  }
}
