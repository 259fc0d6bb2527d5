package slabwright.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.css.Stylesheet;

/**
 * Makes the window's two sheets from those of the theme: all its rules but those for controls that
 * the window does not have. Every node is matched against every rule that may be meant for it.
 */
final class ThemeSheets {
  static final List<String> LOOKS = List.of("light", "dark");

  /** Style classes of controls that the window does not have. */
  static final List<String> LEFT_OUT =
      List.of(
          ("accordion area-legend-symbol bar-chart bar-legend-symbol bb-code"
                  + " breadcrumbs bubble-legend-symbol calendar caption-menu-item chart"
                  + " chart-area-symbol chart-bar chart-bubble chart-line-symbol chart-pie"
                  + " chart-pie-label chart-pie-label-line chart-series-area-fill"
                  + " chart-series-area-line chart-series-line chart-symbol choice-dialog"
                  + " color-palette color-palette-region color-picker combo-box combo-box-base"
                  + " combo-box-popup custom-color-dialog custom-text-field date-picker"
                  + " date-picker-popup deck-pane default-color0 default-color1 default-color2"
                  + " default-color3 default-color4 default-color5 default-color6"
                  + " default-color7 dialog-pane html-editor html-editor-align-center"
                  + " html-editor-align-justify html-editor-align-left html-editor-align-right"
                  + " html-editor-background html-editor-bold html-editor-bullets"
                  + " html-editor-copy html-editor-cut html-editor-foreground html-editor-hr"
                  + " html-editor-indent html-editor-italic html-editor-numbers"
                  + " html-editor-outdent html-editor-paste html-editor-strike"
                  + " html-editor-underline hyperlink list-cell list-view menu-bar message"
                  + " modal-box modal-pane notification pagination password-field"
                  + " pie-legend-symbol popover radio-button ring-progress-indicator spinner"
                  + " split-menu-button split-pane stacked-bar-chart tab-pane table-view"
                  + " text-input-dialog tile-base titled-pane toggle-switch tool-bar tree-cell"
                  + " tree-table-row-cell tree-table-view tree-view")
              .split(" ", -1));

  private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)\\}");
  private static final Pattern STYLE_CLASS = Pattern.compile("\\.([\\w-]+)");

  private ThemeSheets() {}

  /** Writes both sheets into a folder. */
  public static void main(String[] folder) throws IOException {
    for (String look : LOOKS) {
      write(look, Path.of(folder[0]));
    }
  }

  /** The name of a look's sheet. */
  static String name(String look) {
    return "theme-" + look + ".bss";
  }

  /** Writes the sheet of a look into a folder and says where it is. */
  static Path write(String look, Path folder) throws IOException {
    Path text = Files.createTempFile(folder, "theme", ".css");
    Path sheet = folder.resolve(name(look));
    Files.writeString(text, lean(theme(look)));
    Stylesheet.convertToBinary(text.toFile(), sheet.toFile());
    Files.delete(text);
    return sheet;
  }

  private static String theme(String look) throws IOException {
    String at = "/atlantafx/base/theme/primer-" + look + ".css";
    try (InputStream in = ThemeSheets.class.getResourceAsStream(at)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** The rules of a sheet that may be meant for something in the window. */
  static String lean(String css) {
    StringBuilder out = new StringBuilder();
    Matcher rule = RULE.matcher(css.replaceAll("(?s)/\\*.*?\\*/", ""));
    while (rule.find()) {
      List<String> kept =
          Arrays.stream(rule.group(1).split(",", -1))
              .map(String::strip)
              .filter(ThemeSheets::isWanted)
              .toList();
      if (!kept.isEmpty()) {
        out.append(String.join(", ", kept)).append(" {").append(rule.group(2)).append("}\n");
      }
    }
    return out.toString();
  }

  private static boolean isWanted(String selector) {
    return STYLE_CLASS.matcher(selector).results().noneMatch(c -> LEFT_OUT.contains(c.group(1)));
  }
}
