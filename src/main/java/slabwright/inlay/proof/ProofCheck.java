package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slabwright.inlay.panel.Panel;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Checks the sign shop's drawing against the plan before anything is cut.
 *
 * <p>The drawing is laid on the plan by its contours (any place, turn and size, mirrored or not);
 * when the panels lie apart, each by itself. Then every fault is said, each as one kind with its
 * place and size: mirrored, another size, stretched, turned or shifted in the blank, pulled out and
 * staying exchanged, an edge of the blank missing or elsewhere, panels and openings missing or
 * added, edges that stray. {@link ProofLimits} say from where on. A turn alone is a note.
 *
 * <p>What can't be told is never right: polarity of bare lines, shading without a meaning, a
 * drawing less sure of its edges than a limit asks.
 *
 * <p>Known limits: one stencil is checked at a time ({@link ProofBatch} finds which); lines that
 * lie within the blank and bound no shading are not looked at.
 */
final class ProofCheck {
  private static final double APART_IS_BETTER = 0.02;
  private static final double CANNOT_TELL = 0.005;
  private static final double WORTH_A_LOOK = 0.03;
  private static final double LETTERS_DIFFER = 0.85;
  private static final int MOST_LOOKS = 12;
  private static final double TURN_NOTED = 0.2;
  private static final double SCALES_AGREE = 0.01;
  private static final double SURE_PANEL = 0.7;
  private static final double SAME_PLACE = 0.2;

  private final Sighting sighting;
  private final ProofPlan plan;
  private final ShopDrawing drawing;
  private final DrawingContours contours;
  private final ShadingMeaning shading;
  private final ProofLimits limits;
  private final ProofLimits telling;
  private final double doubt;
  private final List<ProofFault> faults = new ArrayList<>();
  private final List<ProofNote> notes = new ArrayList<>();

  private ProofCheck(Sighting sighting, ShadingMeaning shading, ProofLimits limits) {
    this.sighting = sighting;
    this.plan = sighting.plan;
    this.drawing = sighting.scale.drawing();
    this.contours = sighting.contours;
    this.shading = shading;
    this.limits = limits;
    this.doubt = drawing.doubt();
    this.telling = doubt > limits.smallest() ? limits.beyond(doubt) : limits;
  }

  /** Compares the drawing with the plan by the usual limits. */
  public static ProofReport run(ProofPlan plan, ShopDrawing drawing, ShadingMeaning shading) {
    return run(plan, drawing, shading, ProofLimits.USUAL);
  }

  /** Compares the drawing with the plan. */
  public static ProofReport run(
      ProofPlan plan, ShopDrawing drawing, ShadingMeaning shading, ProofLimits limits) {
    return run(Sighting.of(plan, drawing), shading, limits);
  }

  /** Compares a drawing that was looked at with its plan. */
  static ProofReport run(Sighting sighting, ShadingMeaning shading, ProofLimits limits) {
    DrawingScale scale = sighting.scale;
    ProofReport first = lettered(sighting, shading, limits);
    if (scale.denominator() == 1 || first.poses().isEmpty()) {
      return scale.drawing().has(ShopDrawing.Role.UNSIZED)
          ? first.with(List.of(), List.of(unsized(scale)))
          : first;
    }
    if (scale.stated()) {
      return first.with(List.of(), List.of(new ProofNote.ScaleStated(scale.denominator())));
    }
    // laid on the plan closely, the size comes out a hair other than by the rough pose
    double off = Math.sqrt(Math.abs(first.poses().get(0).determinant()));
    DrawingScale settled = scale.enlarged(1 / off);
    return lettered(sighting.with(settled), shading, limits)
        .with(List.of(), List.of(unsized(settled)));
  }

  private static ProofNote unsized(DrawingScale settled) {
    return settled.drawing().has(ShopDrawing.Role.UNSIZED)
        ? new ProofNote.PictureHasNoSize()
        : new ProofNote.ScaleCannotBeTold(settled.denominator());
  }

  /** Letters of texts are openings when that makes the drawing right, else they are notes. */
  private static ProofReport lettered(
      Sighting sighting, ShadingMeaning shading, ProofLimits limits) {
    ProofReport all = new ProofCheck(sighting, shading, limits).report();
    if (all.faults().isEmpty() || !sighting.scale.drawing().has(ShopDrawing.Role.LETTER)) {
      return all;
    }
    Sighting rest = sighting.with(sighting.scale.withoutLetters());
    ProofReport without = new ProofCheck(rest, shading, limits).report();
    return without.faults().size() <= all.faults().size() ? without : all;
  }

  private ProofReport report() {
    if (sighting.isEmpty()) {
      return notFound(0);
    }
    PlannedPiece blank = sighting.blank;
    List<PoseFit> whole = sighting.whole();
    double best = Sighting.top(whole);
    if (plan.apart()) {
      List<SheetJudgement> pieces = apart();
      return pieces.isEmpty() ? notFound(best) : apart(pieces);
    }
    if (sighting.needsPanels()) {
      List<SheetJudgement> apart = apart();
      boolean found = !whole.isEmpty() && whole.get(0).isFound();
      if (mean(apart) > best + APART_IS_BETTER && !(found && isOneDrawing(apart))) {
        return apart(apart);
      }
    }
    if (whole.isEmpty() || !whole.get(0).mayBeFound()) {
      return notFound(best);
    }
    SheetJudgement judged = judge(blank, whole);
    if (best < LETTERS_DIFFER) {
      judged = byEdge(blank, judged);
    }
    if (!judged.fit.isFound() && !judged.isOtherLettering()) {
      return notFound(best);
    }
    tellPose(whole, judged);
    return compared(List.of(judged));
  }

  private ProofReport notFound(double best) {
    return new ProofReport(
        limits,
        List.of(),
        List.of(new ProofFault.NotFound(best)),
        List.of(),
        ProofFigures.NONE,
        best,
        Region.empty(),
        plan.openings(),
        Region.empty(),
        List.of());
  }

  /** The panels found in the drawing, in the plan's order. */
  private List<String> panelNames(List<SheetJudgement> found) {
    boolean whole = found.stream().anyMatch(f -> f.sheet.panel.isEmpty());
    return plan.panels().stream()
        .map(Panel::name)
        .filter(n -> whole || found.stream().anyMatch(f -> f.sheet.panel.equals(n)))
        .toList();
  }

  /**
   * The pose that judges best. Those that fit as well by their cells are looked at too, unmirrored
   * ones first, unless the first is right and lies closely. A graphic that is nearly the same when
   * it is turned can hide a fault in another turn: what lies much closer is that one, right or not.
   * A mirror image is taken where it alone is right and lies no farther off, or lies much closer
   * with its edge, for a panel may look nearly the same in a mirror.
   */
  private SheetJudgement judge(PlannedPiece sheet, List<PoseFit> fits) {
    double top = fits.get(0).overlap() - Math.max(WORTH_A_LOOK, sheet.unsureOverlap());
    List<SheetJudgement> judged = new ArrayList<>();
    fits.stream()
        .filter(f -> f.overlap() >= top)
        .sorted(Comparator.comparing(f -> f.pose().mirrored()))
        .limit(MOST_LOOKS)
        .forEach(
            f -> {
              if (judged.stream().noneMatch(j -> j.isRight() && j.liesClosely())) {
                judged.add(new SheetJudgement(telling, sheet, f, contours, false));
              }
            });
    Map<Boolean, List<SheetJudgement>> mirrored =
        judged.stream().collect(Collectors.partitioningBy(j -> j.fit.pose().mirrored()));
    if (mirrored.containsValue(List.of())) {
      return closest(judged);
    }
    SheetJudgement plain = closest(mirrored.get(false));
    SheetJudgement other = closest(mirrored.get(true));
    boolean hasEdge = other.hasItsEdge() || !plain.hasItsEdge();
    boolean right = other.isRight() && !plain.liesMuchCloserThan(other);
    boolean closer = hasEdge && other.liesMuchCloserThan(plain);
    return !plain.isRight() && (right || closer) ? other : plain;
  }

  /**
   * The right one, else the best; but what lies much closer than that, right or not. Of two that
   * are wrong it needs its edge: a lone oblong, fatter, lies closer upside down and larger.
   */
  private static SheetJudgement closest(List<SheetJudgement> judged) {
    SheetJudgement best =
        judged.stream()
            .filter(SheetJudgement::isRight)
            .findFirst()
            .orElseGet(() -> judged.stream().min(SheetJudgement.best()).orElseThrow());
    return judged.stream()
        .filter(j -> best.isRight() || j.hasItsEdge() || !best.hasItsEdge())
        .filter(j -> j.liesMuchCloserThan(best))
        .min(Comparator.comparingDouble(SheetJudgement::unlike))
        .orElse(best);
  }

  /** Laid by the blank's edge instead, when that shows that only the lettering is another. */
  private SheetJudgement byEdge(PlannedPiece blank, SheetJudgement judged) {
    SheetJudgement other = new SheetJudgement(telling, blank, judged.fit, contours, true);
    return other.isOtherLettering() && other.faults.size() < judged.faults.size() ? other : judged;
  }

  /** Each panel by itself, no two in the same place; without those that are not found. */
  private List<SheetJudgement> apart() {
    List<PlannedPiece> sheets = new ArrayList<>(sighting.panels());
    // the surest first: it says the size and takes its place
    sheets.sort(
        Comparator.comparingDouble((PlannedPiece s) -> Sighting.top(sighting.fits(s))).reversed());
    List<SheetJudgement> found = new ArrayList<>();
    for (PlannedPiece sheet : sheets) {
      List<PoseFit> free =
          ofSize(sheet, found).stream()
              .filter(f -> f.overlap() >= SURE_PANEL)
              .filter(f -> found.stream().noneMatch(o -> samePlace(o, sheet, f)))
              .toList();
      if (!free.isEmpty()) {
        found.add(judge(sheet, free));
      }
    }
    return found;
  }

  /** Fits of the size of the first panel found; looked for once more when there are none. */
  private List<PoseFit> ofSize(PlannedPiece sheet, List<SheetJudgement> found) {
    List<PoseFit> fits = sighting.fits(sheet);
    if (found.isEmpty()) {
      return fits;
    }
    double scale = found.get(0).fit.pose().scale();
    ScaleRange same = new ScaleRange(scale * (1 - SCALES_AGREE), scale * (1 + SCALES_AGREE));
    List<PoseFit> right = fits.stream().filter(f -> same.holds(f.pose().scale())).toList();
    return right.isEmpty() ? sighting.fitsOfScale(sheet, same) : right;
  }

  private static boolean samePlace(SheetJudgement there, PlannedPiece sheet, PoseFit fit) {
    Vec a = there.fit.pose().apply(there.sheet.bounds.middle());
    Vec b = fit.pose().apply(sheet.bounds.middle());
    double size = Math.min(sheet.bounds.width(), sheet.bounds.height());
    return a.distanceTo(b) < SAME_PLACE * size * fit.pose().scale();
  }

  private static double mean(List<SheetJudgement> found) {
    double all = found.stream().mapToDouble(f -> f.sheet.openings.area()).sum();
    double alike = found.stream().mapToDouble(f -> f.sheet.openings.area() * f.fit.overlap()).sum();
    return all == 0 ? 0 : alike / all;
  }

  /**
   * Whether what was found of panels is a drawing of the whole with faults: one panel whose own
   * edge is not drawn, or several that lie as the plan has them.
   */
  private boolean isOneDrawing(List<SheetJudgement> found) {
    return found.size() == 1 ? !found.get(0).hasItsEdge() : lieTogether(found);
  }

  private boolean lieTogether(List<SheetJudgement> found) {
    Affine first = found.get(0).toDrawing();
    Bounds b = plan.blank();
    double size = Math.max(b.width(), b.height());
    List<Vec> places = List.of(b.middle(), new Vec(b.minX(), b.minY()));
    return found.stream()
        .map(SheetJudgement::toDrawing)
        .flatMap(a -> places.stream().map(p -> a.apply(p).distanceTo(first.apply(p))))
        .allMatch(apart -> apart < CANNOT_TELL * size);
  }

  private ProofReport apart(List<SheetJudgement> found) {
    List<Panel> absent =
        plan.cutPanels().stream()
            .filter(p -> found.stream().noneMatch(f -> f.sheet.panel.equals(p.name())))
            .toList();
    if (found.size() == 1 && !absent.isEmpty()) {
      notes.add(
          new ProofNote.OnePanelAlone(
              found.get(0).sheet.panel, absent.stream().map(Panel::name).toList()));
    } else {
      notes.add(new ProofNote.PanelsApart(found.size()));
      absent.forEach(p -> faults.add(PanelFault.PanelMissing.of(p)));
    }
    List<SheetJudgement> mirrored = found.stream().filter(f -> f.fit.pose().mirrored()).toList();
    if (mirrored.size() == found.size()) {
      faults.add(new ProofFault.Mirrored());
    } else {
      for (SheetJudgement f : mirrored) {
        faults.add(PanelFault.PanelMirrored.of(f.sheet.panel, f.sheet.bounds));
      }
    }
    tellTurn(found.get(0).fit.pose());
    return compared(found);
  }

  /** Says when another pose fits as well as the one taken. */
  private void tellPose(List<PoseFit> fits, SheetJudgement taken) {
    PoseFit best = taken.fit;
    boolean mirror = false;
    boolean turn = false;
    for (PoseFit other : fits) {
      if (!other.pose().equals(best.pose()) && best.overlap() - other.overlap() < CANNOT_TELL) {
        mirror |= other.pose().mirrored() != best.pose().mirrored();
        turn |= other.pose().mirrored() == best.pose().mirrored();
      }
    }
    if (mirror) {
      notes.add(new ProofNote.MirroringCannotBeTold());
    }
    if (turn) {
      notes.add(new ProofNote.TurnCannotBeTold());
    }
    // as the mirror image it is right and as it is it is wrong, so it is the mirror image
    if (best.pose().mirrored() && (!mirror || taken.isRight())) {
      faults.add(new ProofFault.Mirrored());
    }
    if (!mirror) {
      tellTurn(best.pose());
    }
  }

  private void tellTurn(Pose pose) {
    if (Math.min(pose.degrees(), 360 - pose.degrees()) > TURN_NOTED) {
      notes.add(new ProofNote.Turned(pose.degrees()));
    }
  }

  private ProofReport compared(List<SheetJudgement> found) {
    tellPolarity(found.get(0).fit.showsMask());
    ProofFigures figures = ProofFigures.NONE;
    for (SheetJudgement f : found) {
      faults.addAll(f.faults);
      figures = figures.and(f.figures(doubt));
    }
    if (faults.isEmpty()) { // what is off takes its weeding cuts along
      found.forEach(f -> f.weedCutOff(drawing.weedCuts()).ifPresent(faults::add));
    }
    found.stream().flatMap(f -> f.notes().stream()).limit(1).forEach(notes::add);
    if (doubt > limits.smallest()) {
      notes.add(new ProofNote.DrawingInDoubt(doubt, limits.smallest()));
    }
    tellBeside(found);
    PanelLabels labels = new PanelLabels(plan, found, drawing);
    faults.addAll(labels.faults());
    notes.addAll(labels.notes());
    Region drawn = Region.union(found.stream().map(SheetJudgement::drawn).toList());
    return new ProofReport(
        limits,
        panelNames(found),
        ProofReport.onceEach(faults),
        notes,
        figures,
        ProofReport.overlap(plan.openings(), drawn),
        drawn,
        Region.union(SheetJudgement.all(found, SheetJudgement::missing)),
        Region.union(SheetJudgement.all(found, SheetJudgement::added)),
        found.stream().map(SheetJudgement::toDrawing).toList());
  }

  private void tellPolarity(boolean showsMask) {
    ShadingMeaning meaning =
        contours.told() && shading == ShadingMeaning.UNKNOWN ? ShadingMeaning.PULLED_OUT : shading;
    boolean lines = !contours.shaded();
    if (lines ? !contours.told() : meaning == ShadingMeaning.UNKNOWN) {
      notes.add(new ProofNote.PolarityCannotBeTold(contours.shaded()));
    } else if (!lines && showsMask == (meaning == ShadingMeaning.PULLED_OUT)) {
      faults.add(new ProofFault.Exchanged());
    }
  }

  private void tellBeside(List<SheetJudgement> found) {
    long beside =
        contours.rings().stream()
            .filter(r -> found.stream().noneMatch(f -> holds(f, r.centroid())))
            .count();
    if (beside > 0) {
      notes.add(new ProofNote.BesideIgnored((int) beside));
    }
  }

  private static boolean holds(SheetJudgement f, Vec drawn) {
    return f.sheet.bounds.grown(1).contains(f.toDrawing().inverse().apply(drawn));
  }
}
