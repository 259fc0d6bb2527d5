package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.units.Length;

/**
 * What a person accepted or set by hand so that a graphic can be cut. Each part is absent until it
 * is asked for; the graphic itself is never touched.
 *
 * @param thickenMask vinyl between openings thinner than this is widened to it
 * @param dropUnder openings smaller than this, mm², are left out
 * @param fillUnder loose pieces of vinyl smaller than this, mm², are left out, so that dye reaches
 *     the floor there too
 * @param roundNeedles needle points of openings are rounded to this radius
 * @param tieWidth width of ties; absent is twice the narrowest mask that the film holds
 * @param baseLightness CIE L* of the base dye that lies under the inlay, when there is one
 * @param seams where the seams shall be; absent means where they cost least
 * @param blanks local blanks set by hand; none means that each colour has the blank it needs
 */
@RecordBuilder
public record StencilChanges(
    Optional<Length> thickenMask,
    OptionalDouble dropUnder,
    OptionalDouble fillUnder,
    Optional<Length> roundNeedles,
    Optional<Length> tieWidth,
    OptionalDouble baseLightness,
    Optional<HandSeams> seams,
    List<LocalBlank> blanks)
    implements StencilChangesBuilder.With {
  /** Nothing changed. */
  public static final StencilChanges NONE =
      new StencilChanges(
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          Optional.empty(),
          List.of());

  /** Changes without blanks set by hand. */
  public StencilChanges(
      Optional<Length> thickenMask,
      OptionalDouble dropUnder,
      OptionalDouble fillUnder,
      Optional<Length> roundNeedles,
      Optional<Length> tieWidth,
      OptionalDouble baseLightness,
      Optional<HandSeams> seams) {
    this(
        thickenMask, dropUnder, fillUnder, roundNeedles, tieWidth, baseLightness, seams, List.of());
  }

  public StencilChanges {
    blanks = List.copyOf(blanks);
  }
}
