package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * Checks the sign shop's drawing against the plan before anything is cut.
 *
 * <p>The drawing is laid on the plan by its contours (any place, turn and size, mirrored or not);
 * when the panels lie apart, each by itself. Then every fault is said: mirrored, another size,
 * pulled out and staying exchanged, the blank's edge missing, openings missing or added. A turn
 * alone is a note. What can't be told (polarity of bare lines, mirroring of a symmetric graphic) is
 * said to be so.
 *
 * <p>Known limits: differences narrower than 1.2 mm or smaller than 0.05 % of the openings are not
 * seen; one stencil is checked at a time.
 */
public final class ProofCheck {
  private static final double WHOLE_IS_FINE = 0.97;
  private static final double APART_IS_BETTER = 0.02;
  private static final double CANNOT_TELL = 0.005;
  private static final double SIZE_OFF = 0.002;
  private static final double TURN_OFF = 0.2;
  private static final double SCALES_AGREE = 0.01;

  /** One sheet and where it was found. */
  private record Found(PlannedPiece sheet, PoseFit fit) {}

  private final ProofPlan plan;
  private final DrawingContours contours;
  private final ShadingMeaning shading;
  private final List<ProofFault> faults = new ArrayList<>();
  private final List<ProofNote> notes = new ArrayList<>();
  private PoseSearch registrar;

  private ProofCheck(ProofPlan plan, DrawingContours contours, ShadingMeaning shading) {
    this.plan = plan;
    this.contours = contours;
    this.shading = shading;
  }

  /** Compares the drawing with the plan. */
  public static ProofReport run(ProofPlan plan, ShopDrawing drawing, ShadingMeaning shading) {
    return new ProofCheck(plan, DrawingContours.of(drawing), shading).report();
  }

  private ProofReport report() {
    if (contours.rings().isEmpty() || plan.openings().isEmpty()) {
      return notFound(0);
    }
    registrar = new PoseSearch(contours);
    List<PoseFit> whole =
        registrar.fits(new PlannedPiece(0, plan.blank(), plan.openings()), p -> true);
    double best = whole.isEmpty() ? 0 : whole.get(0).overlap();
    List<Found> apart = best < WHOLE_IS_FINE && plan.panels().size() > 1 ? apart() : List.of();
    if (mean(apart) > best + APART_IS_BETTER) {
      notes.add(new ProofNote.PanelsApart(apart.size()));
      return compared(apart);
    }
    if (whole.isEmpty() || !whole.get(0).isFound()) {
      return notFound(best);
    }
    tellPose(whole);
    return compared(
        List.of(new Found(new PlannedPiece(0, plan.blank(), plan.openings()), whole.get(0))));
  }

  private ProofReport notFound(double best) {
    return new ProofReport(
        List.of(new ProofFault.NotFound(best)),
        List.of(),
        best,
        Region.empty(),
        plan.openings(),
        Region.empty(),
        List.of());
  }

  /** Each panel by itself, all mirrored or none, all of one size; empty when one is not found. */
  private List<Found> apart() {
    List<Found> plain = apart(false);
    List<Found> mirrored = apart(true);
    double difference = mean(plain) - mean(mirrored);
    if (Math.abs(difference) < CANNOT_TELL && !plain.isEmpty()) {
      notes.add(new ProofNote.MirroringCannotBeTold());
      return plain;
    }
    return difference > 0 ? plain : mirrored;
  }

  private List<Found> apart(boolean mirrored) {
    List<PlannedPiece> sheets = new ArrayList<>();
    for (Bounds panel : plan.panels()) {
      Region open = plan.openings().intersect(Region.rectangle(panel));
      sheets.add(new PlannedPiece(sheets.size() + 1, panel, open));
    }
    sheets.sort((a, b) -> Double.compare(b.openings.area(), a.openings.area()));
    List<Found> found = new ArrayList<>();
    for (PlannedPiece sheet : sheets) {
      double scale = found.isEmpty() ? 0 : found.get(0).fit.pose().scale();
      Optional<PoseFit> fit =
          registrar
              .fits(
                  sheet,
                  p ->
                      p.mirrored() == mirrored
                          && (scale == 0 || Math.abs(p.scale() / scale - 1) < SCALES_AGREE))
              .stream()
              .findFirst();
      fit.ifPresent(f -> found.add(new Found(sheet, f)));
    }
    return found.size() == sheets.size() ? found : List.of();
  }

  private static double mean(List<Found> found) {
    double sum = 0;
    double weight = 0;
    for (Found f : found) {
      double w = f.sheet.openings.area();
      sum += w * f.fit.overlap();
      weight += w;
    }
    return weight == 0 ? 0 : sum / weight;
  }

  /** Says when another pose fits as well as the best. */
  private void tellPose(List<PoseFit> fits) {
    PoseFit best = fits.get(0);
    boolean mirror = false;
    boolean turn = false;
    for (PoseFit other : fits.subList(1, fits.size())) {
      if (best.overlap() - other.overlap() < CANNOT_TELL) {
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
  }

  private ProofReport compared(List<Found> found) {
    tellPlace(found.get(0).fit.pose());
    List<Region> drawn = new ArrayList<>();
    List<Region> missing = new ArrayList<>();
    List<Region> added = new ArrayList<>();
    List<Affine> poses = new ArrayList<>();
    for (Found f : found) {
      PieceComparison c = PieceComparison.of(f.sheet, f.fit, contours.area());
      drawn.add(c.drawn());
      missing.add(c.missing());
      added.add(c.added());
      poses.add(f.fit.pose().affine());
      if (!registrar.isEdgeDrawn(f.sheet, f.fit.pose())) {
        faults.add(new ProofFault.EdgeMissing(f.sheet.panel));
      }
    }
    tellPolarity(found.get(0).fit.showsMask());
    Region lost = Region.union(missing);
    Region extra = Region.union(added);
    lost.parts().forEach(p -> faults.add(new ProofFault.PieceMissing(p.labelPoint(), p.area())));
    extra.parts().forEach(p -> faults.add(new ProofFault.PieceAdded(p.labelPoint(), p.area())));
    tellBeside(found);
    Region all = Region.union(drawn);
    return new ProofReport(faults, notes, overlap(all), all, lost, extra, poses);
  }

  private double overlap(Region drawn) {
    return plan.openings().intersect(drawn).area() / plan.openings().union(drawn).area();
  }

  private void tellPlace(Pose pose) {
    boolean unsure = notes.stream().anyMatch(n -> n instanceof ProofNote.MirroringCannotBeTold);
    if (pose.mirrored() && !unsure) {
      faults.add(new ProofFault.Mirrored());
    }
    if (Math.abs(pose.scale() - 1) > SIZE_OFF) {
      faults.add(new ProofFault.WrongSize((pose.scale() - 1) * 100));
    }
    double turn = Math.min(pose.degrees(), 360 - pose.degrees());
    if (turn > TURN_OFF && !unsure) {
      notes.add(new ProofNote.Turned(pose.degrees()));
    }
  }

  private void tellPolarity(boolean showsMask) {
    if (!contours.shaded() || shading == ShadingMeaning.UNKNOWN) {
      notes.add(new ProofNote.PolarityCannotBeTold(contours.shaded()));
    } else if (showsMask == (shading == ShadingMeaning.PULLED_OUT)) {
      faults.add(new ProofFault.Exchanged());
    }
  }

  private void tellBeside(List<Found> found) {
    long beside =
        contours.rings().stream()
            .filter(r -> found.stream().noneMatch(f -> holds(f, r.centroid())))
            .count();
    if (beside > 0) {
      notes.add(new ProofNote.BesideIgnored((int) beside));
    }
  }

  private static boolean holds(Found f, Vec drawn) {
    Vec p = f.fit.pose().affine().inverse().apply(drawn);
    return f.sheet.bounds.grown(1).contains(p);
  }
}
