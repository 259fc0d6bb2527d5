package slabwright.inlay.artwork;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Map;
import java.util.Set;
import slabwright.units.Message;
import slabwright.units.SortedCopy;

/**
 * How a graphic is read.
 *
 * @param widthMm width of what is painted, in mm
 * @param toleranceMm farthest a flattened curve may stray from the true one, in mm at final size
 * @param mergeDeltaE colours closer than this (CIE 1976 Delta E) count as one; 0 merges none
 * @param ignored colours treated as if they were not painted, {@code #rrggbb}
 * @param merged colours that count as another, whatever their distance, {@code #rrggbb}
 * @param installedFonts whether fonts installed on this computer may be used beside the shipped
 *     ones
 */
@RecordBuilder
public record ArtworkOptions(
    double widthMm,
    double toleranceMm,
    double mergeDeltaE,
    Set<String> ignored,
    Map<String, String> merged,
    boolean installedFonts)
    implements ArtworkOptionsBuilder.With {
  /** Far finer than a plotter's blade, yet coarse enough for quick geometry. */
  public static final double TOLERANCE_MM = 0.01;

  private static final double NARROWEST_MM = 10;
  private static final double WIDEST_MM = 100_000;

  public ArtworkOptions {
    ignored = SortedCopy.of(ignored);
    merged = SortedCopy.of(merged);
  }

  /**
   * Checks that the width makes sense.
   *
   * @throws RefusedArtworkException when it does not
   */
  public void checkWidth() {
    if (!(widthMm >= NARROWEST_MM && widthMm <= WIDEST_MM)) {
      throw new RefusedArtworkException(
          ArtworkRefusal.Reason.ABSURD_SIZE,
          Message.of("inlay.artwork-options.width-out-of-range", widthMm));
    }
  }

  public static ArtworkOptions ofWidth(double mm) {
    return new ArtworkOptions(mm, TOLERANCE_MM, 0, Set.of(), Map.of(), true);
  }

  public ArtworkOptions withTolerance(double mm) {
    return withToleranceMm(mm);
  }

  public ArtworkOptions ignoring(Set<String> colours) {
    return withIgnored(colours);
  }

  /** With colours that count as another, {@code #rrggbb}. */
  public ArtworkOptions merging(Map<String, String> colours) {
    return withMerged(colours);
  }

  /** The same picture on every computer: shipped fonts alone. */
  public ArtworkOptions withShippedFontsOnly() {
    return withInstalledFonts(false);
  }
}
