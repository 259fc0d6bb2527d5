package slabwright.inlay.artwork;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.shape.Bounds;
import slabwright.units.Message;
import slabwright.units.SortedCopy;

/**
 * A graphic as it will lie on the floor: one region for each colour that is seen.
 *
 * <p>Frame: millimetres from the top-left corner of the painted bounds, x right, y down. Every
 * curve is flattened within the stated tolerance at this size. What is painted is what counts, not
 * the page: fills, strokes, text, markers and copies, cut by clips and masks, in paint order. Known
 * limits: gradients and patterns become one colour, partial opacity counts as painted, and filter
 * effects are left out; each is said in a warning.
 *
 * @param name the file's name, as used in sentences
 * @param mmPerPx mm on the floor for one CSS pixel of the graphic
 * @param painted bounds of all colours; its corner is (0, 0) within the tolerance
 * @param colours disjoint regions in the order the colours are first painted
 * @param questions all that must be asked, answered or not
 * @param names of inks, where the file gives them, by {@code #rrggbb}
 * @param doubtMm how far 95 % of its edges may be off at most, when it was traced from a picture
 * @param background a colour that fills the whole page behind all others; not among the colours
 */
public record Artwork(
    String name,
    double mmPerPx,
    Bounds painted,
    List<ColourRegion> colours,
    Optional<ColourRegion> background,
    List<ArtworkWarning> warnings,
    List<ArtworkQuestion> questions,
    Map<String, String> names,
    OptionalDouble doubtMm)
    implements ArtworkResult {
  public Artwork {
    colours = List.copyOf(colours);
    warnings = List.copyOf(warnings);
    questions = List.copyOf(questions);
    names = SortedCopy.of(names);
  }

  /** The same, with a picture in it that was traced. */
  public Artwork tracedInPart(double doubt) {
    Message said =
        Message.of(
            "inlay.embedded-pictures.traced",
            doubt,
            doubt / 25.4,
            painted.width() / 1000,
            painted.width() / 304.8);
    return traced(doubt, new ArtworkWarning(ArtworkWarning.Kind.TRACED, said, Optional.empty()));
  }

  /**
   * The same, traced from a picture.
   *
   * @param said what the person should know of it
   */
  public Artwork traced(double doubt, ArtworkWarning said) {
    List<ArtworkWarning> all = new ArrayList<>(warnings);
    all.add(said);
    return new Artwork(
        name,
        mmPerPx,
        painted,
        colours,
        background,
        all,
        questions,
        names,
        OptionalDouble.of(doubt));
  }
}
