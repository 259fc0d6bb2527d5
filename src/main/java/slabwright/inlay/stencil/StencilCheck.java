package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/** Looks at a stencil before it is cut: what will lift, tear or get lost, and where. */
public final class StencilCheck {
  private static final int MOST_OF_A_KIND = 12;

  private final StencilLimits limits;
  private final DoubleFunction<String> length;
  private final List<Finding> findings = new ArrayList<>();

  /**
   * Sets up the check.
   *
   * @param length how a length in mm is written for people
   */
  public StencilCheck(StencilLimits limits, DoubleFunction<String> length) {
    this.limits = limits;
    this.length = length;
  }

  /** What is to be seen, with places in the blank's frame; at most a dozen of each kind. */
  public List<Finding> of(Stencil stencil) {
    findings.clear();
    thin("Mask %s thin (the film holds %s).", stencil.mask(), limits.mask());
    thin(
        "Opening %s narrow (the least that weeds clean is %s).",
        stencil.openings(), limits.opening());
    small(stencil);
    needles("vinyl", stencil.mask());
    needles("opening", stencil.openings());
    return List.copyOf(findings);
  }

  private void thin(String sentence, Region region, double limit) {
    List<ThinPlace> places = ThinPlaces.in(region, limit);
    places.stream()
        .limit(MOST_OF_A_KIND)
        .forEach(
            p ->
                findings.add(
                    Finding.look(sentence.formatted(show(p.width()), show(limit)), p.at())));
    more(places.size(), "places like that");
  }

  private void small(Stencil stencil) {
    List<Region> loose =
        stencil.loosePieces().stream()
            .map(LoosePiece::region)
            .filter(r -> r.area() < limits.loosePiece())
            .toList();
    at(loose, "Loose piece so small that it may not hold on the tape.", "small loose pieces");
    List<Region> scraps =
        stencil.openings().parts().stream().filter(r -> r.area() < limits.scrap()).toList();
    at(scraps, "Scrap of an opening, hardly meant.", "scraps");
  }

  private void at(List<Region> regions, String text, String kind) {
    regions.stream()
        .limit(MOST_OF_A_KIND)
        .forEach(r -> findings.add(Finding.look(text, r.labelPoint())));
    more(regions.size(), kind);
  }

  private void needles(String what, Region region) {
    List<Vec> points = Corners.sharper(region, limits.needle());
    points.stream()
        .limit(MOST_OF_A_KIND)
        .forEach(p -> findings.add(Finding.look("Needle point of " + what + ".", p)));
    more(points.size(), "needle points of " + what);
  }

  private void more(int count, String kind) {
    if (count > MOST_OF_A_KIND) {
      findings.add(Finding.look("… and " + (count - MOST_OF_A_KIND) + " more " + kind + "."));
    }
  }

  private String show(double mm) {
    return length.apply(mm);
  }
}
