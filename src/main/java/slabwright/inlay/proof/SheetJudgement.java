package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * One sheet found in the drawing, judged by the limits: where its openings lie in it, where its
 * edge lies, and what differs once they lie on each other.
 */
final class SheetJudgement {
  private static final double STRAIN_TOLD = 0.5;
  private static final double UNEVEN = 0.35;
  private static final double BESIDE_EDGE_MM = 1.5;
  private static final double CUT_OFF_MM = 0.1;
  private static final double CLOSELY_MM = 0.02;
  private static final double MUCH_CLOSER = 0.5;
  private static final double NOTEWORTHY_FAT_MM = 0.2;
  private static final double FAT_SHARE = 0.6;
  private static final double UNEVENLY_FAT = 0.35;
  private static final double FAT_TOLERANCE_MM = 0.02;
  private static final double LITTLE_FAULT_MM2 = 20;
  private static final double MOSTLY_LETTERS = 0.6;
  private static final int WEED_CUT_STEPS = 100;

  final PlannedPiece sheet;
  final PoseFit fit;
  final List<ProofFault> faults = new ArrayList<>();
  private final ProofLimits limits;
  private final DrawingContours contours;
  private final Affine toDrawing;
  private final OpeningsFit openings;
  private final Region open;
  private final OpeningsDifference difference;
  private double move;

  /**
   * Judges a sheet.
   *
   * @param byEdge whether the openings are laid by the sheet's edge alone, because they are so
   *     different that they say nothing about their own place
   */
  SheetJudgement(
      ProofLimits limits,
      PlannedPiece sheet,
      PoseFit fit,
      DrawingContours contours,
      boolean byEdge) {
    this.limits = limits;
    this.sheet = sheet;
    this.fit = fit;
    this.contours = contours;
    Affine pose = fit.pose().affine();
    List<Ring> nearly = rings(pose.inverse());
    BlankFit rough = BlankFit.of(nearly, sheet.bounds);
    openings =
        byEdge && rough.found()
            ? new OpeningsFit(rough.whole(sheet.bounds), 0)
            : OpeningsFit.of(sheet, new ContourSegments(nearly), rough);
    toDrawing = openings.map().then(pose);
    DrawnStrain strain = DrawnStrain.of(toDrawing, sheet.bounds.middle());
    BlankEdgeCheck edge =
        new BlankEdgeCheck(limits, sheet, strain, rings(strain.rigid().inverse()));
    edge.fault().ifPresent(faults::add);
    place(strain, edge.fit());
    open = open();
    difference =
        new OpeningsDifference(
            limits, sheet.openings, open, sheet.bounds.grown(-rim(edge)), openings.fat());
    differences();
  }

  /** Beside the sheet's edge, where openings are cut off by it and not by their own edge. */
  private double rim(BlankEdgeCheck edge) {
    // openings that lie elsewhere in their panel are cut off elsewhere
    double cutOff = Math.min(move, limits.move()) + CUT_OFF_MM;
    return Math.max(BESIDE_EDGE_MM * limits.edge(), cutOff) + edge.worst();
  }

  private List<Ring> rings(Affine map) {
    return contours.rings().stream().map(r -> r.ring().map(map)).toList();
  }

  /** The drawn openings laid on the planned ones. */
  private Region open() {
    Region here = contours.area().map(toDrawing.inverse());
    Region vinyl = Region.rectangle(sheet.bounds);
    return fit.showsMask() ? vinyl.minus(here) : vinyl.intersect(here);
  }

  /** Size, stretch, turn and shift, each by itself, when together they move too much. */
  private void place(DrawnStrain strain, BlankFit blank) {
    Affine inBlank = strain.stretch().then(blank.map(sheet.bounds).inverse());
    double reach = 0;
    for (EdgeSample s : sheet.edgeSamples()) {
      move = Math.max(move, inBlank.apply(s.at()).distanceTo(s.at()));
      reach = Math.max(reach, s.at().distanceTo(sheet.bounds.middle()));
    }
    if (move <= limits.move()) {
      return;
    }
    double size = Math.abs(strain.size()) * reach;
    double stretch = (Math.abs(strain.size()) + strain.uneven()) * reach;
    boolean uneven = strain.uneven() > UNEVEN * (Math.abs(strain.size()) + strain.uneven());
    double turn = Math.abs(blank.turn()) * reach;
    double shift = blank.shift().length();
    double told = STRAIN_TOLD * limits.move();
    double largest = Math.max(Math.max(uneven ? stretch : size, turn), shift);
    told = Math.min(told, largest);
    if (uneven && stretch >= told) {
      faults.add(stretched(strain, stretch));
    } else if (!uneven && size >= told) {
      faults.add(new ProofFault.WrongSize(strain.size() * 100, size));
    }
    if (turn >= told) {
      faults.add(new ProofFault.TurnedInBlank(-Math.toDegrees(blank.turn()), turn));
    }
    if (shift >= told) {
      Vec s = Affine.turn(-blank.turn()).apply(blank.shift()).times(-1);
      faults.add(new ProofFault.ShiftedInBlank(s.x(), s.y()));
    }
  }

  /** Along the direction that is farther from the planned size. */
  private static ProofFault stretched(DrawnStrain strain, double far) {
    double degrees = Math.toDegrees(strain.direction());
    double by = 200 * strain.uneven() / (1 + strain.size() - strain.uneven());
    return new ProofFault.Stretched(by, (degrees + 180) % 180, far);
  }

  private void differences() {
    List<LetterRows.Found> rows =
        new LetterRows(sheet.openings, open, difference.missing(), difference.added()).found();
    double lettering = rows.stream().mapToDouble(LetterRows.Found::area).sum();
    if (lettering >= MOSTLY_LETTERS * sheet.openings.area()) {
      // what was laid on other letters says nothing about size or place
      faults.removeIf(f -> !(f instanceof ProofFault.EdgeMissing));
    }
    rows.forEach(r -> faults.add(r.fault()));
    Region band = fatBand();
    difference.missing().stream()
        .filter(r -> isTold(r, rows) && !isOf(band, r))
        .map(r -> new ProofFault.PieceMissing(r.labelPoint(), r.area(), longer(r.bounds())))
        .forEach(faults::add);
    difference.added().stream()
        .filter(r -> isTold(r, rows) && !isOf(band, r))
        .map(r -> new ProofFault.PieceAdded(r.labelPoint(), r.area(), longer(r.bounds())))
        .forEach(faults::add);
    if (Stream.concat(difference.missing().stream(), difference.added().stream())
        .anyMatch(r -> isOf(band, r))) {
      faults.add(new ProofFault.FatterAllRound(openings.fat()));
    } else {
      straying(rows);
    }
  }

  private boolean isFat() {
    return difference.straying().even() && Math.abs(openings.fat()) > FAT_SHARE * limits.edge();
  }

  /**
   * Along the planned edges, what follows from openings that are fatter or thinner all round than
   * an edge may stray; empty where they are not.
   */
  private Region fatBand() {
    double fat = openings.fat();
    if (!isFat() || Math.abs(fat) <= limits.edge()) {
      return Region.empty();
    }
    Region other = sheet.openings.offset(fat * (1 + UNEVENLY_FAT), FAT_TOLERANCE_MM);
    return fat > 0 ? other.minus(sheet.openings) : sheet.openings.minus(other);
  }

  /** Whether a piece is so nearly within the band that what is left of it is no piece. */
  private boolean isOf(Region band, Region piece) {
    return !band.isEmpty() && piece.minus(band).area() < limits.pieceArea();
  }

  private static boolean isTold(Region piece, List<LetterRows.Found> rows) {
    return rows.stream().noneMatch(r -> r.box().contains(piece.labelPoint()));
  }

  private void straying(List<LetterRows.Found> rows) {
    OpeningsDifference.Straying s = difference.straying();
    boolean within = s.places() == 0 && s.most() <= limits.edge();
    if (within || rows.stream().anyMatch(r -> r.box().contains(s.at()))) {
      return;
    }
    faults.add(
        isFat()
            ? new ProofFault.FatterAllRound(openings.fat())
            : new ProofFault.EdgeOff(s.at(), s.most(), s.places(), s.slivers()));
  }

  private static double longer(Bounds b) {
    return Math.max(b.width(), b.height());
  }

  /** A note when the openings are a little fatter or thinner within the limits. */
  List<ProofNote> notes() {
    boolean said = faults.stream().anyMatch(f -> f instanceof ProofFault.FatterAllRound);
    return !said && Math.abs(openings.fat()) >= NOTEWORTHY_FAT_MM
        ? List.of(new ProofNote.Fat(openings.fat()))
        : List.of();
  }

  /** Whether what differs is lettering alone, so that a poor overlap is no other graphic. */
  boolean isOtherLettering() {
    return faults.stream().anyMatch(f -> f instanceof ProofFault.OtherTypeface);
  }

  /** Where a cut that divides waste runs into film that stays; empty when none does. */
  Optional<ProofFault> weedCutOff(List<Line> cuts) {
    Affine back = toDrawing.inverse();
    for (Line cut : cuts) {
      List<Vec> p = cut.map(back).points();
      for (int k = 0; k <= WEED_CUT_STEPS; k++) {
        Vec at = p.get(0).towards(p.get(p.size() - 1), (double) k / WEED_CUT_STEPS);
        boolean stays = sheet.bounds.contains(at) && !sheet.openings.contains(at);
        if (stays && sheet.openings.distanceTo(at) > limits.edge()) {
          return Optional.of(new ProofFault.WeedCutOff(at));
        }
      }
    }
    return Optional.empty();
  }

  /** Whether the sheet's own edge is drawn where it should be. */
  boolean hasItsEdge() {
    return faults.stream()
        .noneMatch(
            f -> f instanceof ProofFault.EdgeMissing || f instanceof ProofFault.BlankEdgeOff);
  }

  boolean isRight() {
    return faults.isEmpty();
  }

  /** How far edges lie apart on an average, mm. */
  double unlike() {
    return difference.area() / sheet.openings.boundaryLength();
  }

  boolean liesClosely() {
    return unlike() <= CLOSELY_MM;
  }

  boolean liesMuchCloserThan(SheetJudgement other) {
    return !other.liesClosely() && unlike() < MUCH_CLOSER * other.unlike();
  }

  /** The lower the better the drawing lies on the plan. */
  double badness() {
    return difference.area()
        + LITTLE_FAULT_MM2 * faults.size()
        + Math.max(0, move - limits.move()) * sheet.openings.boundaryLength();
  }

  static Comparator<SheetJudgement> best() {
    return Comparator.comparing((SheetJudgement j) -> !j.isRight())
        .thenComparingDouble(SheetJudgement::badness);
  }

  Region drawn() {
    return open;
  }

  List<Region> missing() {
    return difference.missing();
  }

  List<Region> added() {
    return difference.added();
  }

  Affine toDrawing() {
    return toDrawing;
  }

  ProofFigures figures(double doubt) {
    OpeningsDifference.Straying s = difference.straying();
    return new ProofFigures(s.most(), move, openings.fat(), s.slivers(), doubt);
  }

  static <T> List<T> all(List<SheetJudgement> sheets, Function<SheetJudgement, List<T>> what) {
    return sheets.stream().flatMap(j -> what.apply(j).stream()).collect(Collectors.toList());
  }
}
