package slabwright.inlay.panel;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.stencil.Finding;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.units.LetterNumbering;
import slabwright.units.Message;

/** From a seam layout to named panels, laps with witness marks, and the orders of work. */
final class PanelBuilder {
  private static final double MM_IN_INCH = 25.4;

  private final Bounds blank;
  private final PanelParameters rules;
  private final SeamLayout layout;
  private final Region openings;
  private final StripDirection turn;
  private final WitnessMarkPlacer witnesses;
  private final int letters;
  private final List<Panel> panels = new ArrayList<>();
  private final List<Seam> laps = new ArrayList<>();
  private final List<Finding> findings;

  /**
   * A builder.
   *
   * @param letters how many strips have letters already
   */
  PanelBuilder(
      Bounds blank, Region openings, PanelParameters rules, SeamLayout layout, int letters) {
    this.letters = letters;
    this.blank = blank;
    this.rules = rules;
    this.layout = layout;
    this.turn = layout.turn();
    this.openings = openings;
    this.witnesses = new WitnessMarkPlacer(openings, turn, rules.overlap());
    this.findings = new ArrayList<>(layout.findings());
  }

  PanelPlan build() {
    PanelPlan plan = buildWithoutTicks();
    List<RegistrationTick> ticks = new RegistrationPlacer(openings, panels).place();
    PanelPlan ticked = plan.withTicks(ticks).withFindings(findings);
    panels.forEach(panel -> tooFewTicks(panel, ticked.ticks(panel)).ifPresent(findings::add));
    return plan.withTicks(ticks).withFindings(findings);
  }

  PanelPlan buildWithoutTicks() {
    for (int i = 0; i < layout.strips().size(); i++) {
      pieces(LetterNumbering.of(letters + i), layout.strips().get(i));
    }
    for (int i = 0; i < layout.seams().size(); i++) {
      double seam = layout.seams().get(i);
      Bounds lap = turn.box(seam, 0, seam + rules.overlap(), turn.along(blank));
      laps.add(
          lap(LetterNumbering.of(letters + i), LetterNumbering.of(letters + i + 1), lap, false));
    }
    checkWidths();
    double film = layout.cost().roll() * rules.roll().width();
    return new PanelPlan(
        blank,
        turn,
        layout.seams(),
        panels,
        laying(),
        laps,
        List.of(),
        layout.cost().roll(),
        1 - blank.width() * blank.height() / film,
        layout.cost(),
        findings);
  }

  private void pieces(String name, Strip strip) {
    List<Double> joints = strip.joints();
    for (int j = 0; j <= joints.size(); j++) {
      double from = j == 0 ? 0 : joints.get(j - 1);
      double to = j == joints.size() ? turn.along(blank) : joints.get(j) + rules.overlap();
      String own = joints.isEmpty() ? name : name + (j + 1);
      panels.add(new Panel(own, turn.box(strip.from(), from, strip.to(), to)));
      if (j > 0) {
        Bounds lap = turn.box(strip.from(), from, strip.to(), from + rules.overlap());
        laps.add(lap(name + j, own, lap, true));
      }
    }
  }

  private Seam lap(String first, String second, Bounds box, boolean joint) {
    List<WitnessMark> marks = witnesses.on(box, joint);
    if (marks.size() < 2) {
      findings.add(
          Finding.look(
              Message.of("inlay.panel-builder.no-room-for-witness-marks", first, second),
              box.middle()));
    }
    return new Seam(first, second, box, marks);
  }

  /** Far from the traffic first; on a level, in the order of the names. */
  private List<String> laying() {
    Comparator<Panel> farFirst =
        Comparator.comparingDouble((Panel p) -> rules.trafficFrom().farness(p.box())).reversed();
    return panels.stream().sorted(farFirst).map(Panel::name).toList();
  }

  static Optional<Finding> tooFewTicks(Panel panel, List<RegistrationTick> ticks) {
    return RegistrationPlacer.holds(panel, ticks)
        ? Optional.empty()
        : Optional.of(
            Finding.look(
                Message.of(
                    "inlay.panel-builder.too-few-ticks",
                    panel.name(),
                    ticks.size(),
                    RegistrationTick.ARM + RegistrationTick.CLEAR),
                panel.box().middle()));
  }

  private void checkWidths() {
    for (Panel panel : panels) {
      double width = turn.across(panel.box());
      if (width > rules.roll().usableWidth() + SeamPlaceSearch.SLACK) {
        findings.add(
            Finding.cannot(
                Message.of(
                    "inlay.panel-builder.panel-too-wide",
                    panel.name(),
                    width,
                    width / MM_IN_INCH,
                    width - rules.roll().usableWidth(),
                    (width - rules.roll().usableWidth()) / MM_IN_INCH)));
      } else if (width < rules.narrowest() - SeamPlaceSearch.SLACK && panels.size() > 1) {
        findings.add(
            Finding.look(
                Message.of(
                    "inlay.panel-builder.panel-narrow", panel.name(), width, width / MM_IN_INCH),
                panel.box().middle()));
      }
    }
  }
}
