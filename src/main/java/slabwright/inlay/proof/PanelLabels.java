package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.inlay.panel.Panel;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;

/** What the drawing's words call each panel, and which other words stand inside the film. */
final class PanelLabels {
  private static final Pattern PANEL =
      Pattern.compile("(?i)\\bpanel[ -]+([A-Z]{1,2}[0-9]{0,3})\\b");
  private static final double REACH = 0.06;
  private static final int MOST_SHOWN = 6;

  private final ProofPlan plan;
  private final List<SheetJudgement> found;
  private final boolean lettersCount;
  private final Map<String, String> wrong = new TreeMap<>();
  private final List<String> inside = new ArrayList<>();

  PanelLabels(ProofPlan plan, List<SheetJudgement> found, ShopDrawing drawing) {
    this.plan = plan;
    this.found = found;
    this.lettersCount = drawing.has(ShopDrawing.Role.LETTER);
    drawing.words().forEach(this::read);
  }

  private void read(ShopDrawing.Words words) {
    for (SheetJudgement sheet : found) {
      Vec at = sheet.toDrawing().inverse().apply(words.at());
      Bounds b = sheet.sheet.bounds;
      Optional<String> label = label(words.text());
      if (label.isPresent()) {
        double reach = REACH * Math.max(b.width(), b.height());
        if (b.grown(reach).contains(at) && !isNearerToAnother(sheet, words.at())) {
          compare(sheet.sheet.panel, at, label.get());
        }
      } else if (b.contains(at) && !lettersCount && !inside.contains(words.text())) {
        inside.add(words.text());
      }
    }
  }

  /** Of pieces that lie apart a label is that of the nearest. */
  private boolean isNearerToAnother(SheetJudgement sheet, Vec drawn) {
    double own = away(sheet, drawn);
    return plan.apart() && found.stream().anyMatch(o -> away(o, drawn) < own);
  }

  private static double away(SheetJudgement sheet, Vec drawn) {
    return away(sheet.sheet.bounds, sheet.toDrawing().inverse().apply(drawn));
  }

  /** The panel that a text names: its letter alone, or "panel B" anywhere in it. */
  private Optional<String> label(String text) {
    if (plan.panels().size() < 2) {
      return Optional.empty();
    }
    Matcher m = PANEL.matcher(text);
    String said = m.find() ? m.group(1).toUpperCase(Locale.ROOT) : text.strip();
    boolean letterOfGraphic = lettersCount && said.equals(text.strip());
    return plan.panels().stream()
        .map(Panel::name)
        .filter(n -> n.equals(said) && !letterOfGraphic)
        .findFirst();
  }

  private void compare(String panel, Vec at, String label) {
    if (!panel.isEmpty()) {
      if (!panel.equals(label) && !plan.twins(panel).contains(label)) {
        wrong.put(panel, label);
      }
      return;
    }
    double near = plan.panels().stream().mapToDouble(p -> away(p.box(), at)).min().orElse(0);
    List<String> here =
        plan.panels().stream().filter(p -> away(p.box(), at) <= near + 1).map(Panel::name).toList();
    if (!here.contains(label)) {
      wrong.put(here.get(0), label);
    }
  }

  private static double away(Bounds b, Vec p) {
    double dx = Math.max(0, Math.max(b.minX() - p.x(), p.x() - b.maxX()));
    double dy = Math.max(0, Math.max(b.minY() - p.y(), p.y() - b.maxY()));
    return Math.hypot(dx, dy);
  }

  List<ProofFault> faults() {
    List<ProofFault> faults = new ArrayList<>();
    wrong.forEach((panel, label) -> faults.add(new LabelFault.LabelWrong(panel, label)));
    return faults;
  }

  List<ProofNote> notes() {
    return inside.isEmpty()
        ? List.of()
        : List.of(
            new ProofNote.WordsInFilm(inside.size(), inside.stream().limit(MOST_SHOWN).toList()));
  }

  /** Two panels that bear each other's labels are one fault. */
  static List<ProofFault> paired(List<ProofFault> faults) {
    List<ProofFault> all = new ArrayList<>();
    for (ProofFault f : faults) {
      if (f instanceof LabelFault.LabelWrong a) {
        boolean swapped = faults.contains(new LabelFault.LabelWrong(a.label(), a.panel()));
        if (!swapped) {
          all.add(f);
        } else if (a.panel().compareTo(a.label()) < 0) {
          all.add(new LabelFault.LabelsSwapped(a.panel(), a.label()));
        }
      } else {
        all.add(f);
      }
    }
    return all;
  }
}
