package slabwright.inlay;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.site.ColourChoice;
import slabwright.site.ColourChoice.Use;
import slabwright.site.StencilSpec;

/**
 * What a graphic asks and a person has not answered. The answers are the settings themselves: a
 * colour that has a choice of its own is answered, and so is every colour once some are named to be
 * dyed, since then the others are left.
 */
public final class OpenQuestions {
  private OpenQuestions() {}

  public static List<ArtworkQuestion> of(Artwork artwork, StencilSpec spec) {
    boolean named = spec.colours().stream().anyMatch(c -> c.use() == Use.DYE);
    return named
        ? List.of()
        : artwork.questions().stream()
            .filter(q -> q.colours().stream().noneMatch(hex -> hasChoice(spec, hex)))
            .toList();
  }

  /**
   * The settings with what a question offers taken; a question that offers nothing for one colour
   * leaves them as they are.
   */
  public static StencilSpec accepted(ArtworkQuestion question, StencilSpec spec) {
    return switch (question.kind().offered()) {
      case LEAVE_BARE -> with(spec, question.colours(), Use.LEAVE);
      case IGNORE -> with(spec, question.colours(), Use.IGNORE);
      case MERGE -> spec.withMergeDeltaE(Math.max(spec.mergeDeltaE(), question.deltaE()));
    };
  }

  /**
   * The settings with every colour that is dyed now named to be dyed, lightest first: all questions
   * are answered by "as it is drawn".
   */
  public static StencilSpec asDrawn(Artwork artwork, StencilSpec spec) {
    List<ColourChoice> choices = new ArrayList<>(spec.colours());
    artwork.colours().stream()
        .filter(c -> !hasChoice(spec, c.hex()))
        .sorted(Comparator.comparingDouble(ColourRegion::lightness).reversed())
        .forEach(c -> choices.add(new ColourChoice(c.hex(), Use.DYE, "")));
    return spec.withColours(choices);
  }

  private static StencilSpec with(StencilSpec spec, List<String> colours, Use use) {
    Set<String> about = new LinkedHashSet<>(colours);
    List<ColourChoice> choices = new ArrayList<>();
    spec.colours().stream().filter(c -> !about.contains(c.colour())).forEach(choices::add);
    about.forEach(hex -> choices.add(new ColourChoice(hex, use, "")));
    return spec.withColours(choices);
  }

  private static boolean hasChoice(StencilSpec spec, String hex) {
    return spec.colours().stream().anyMatch(c -> c.colour().equals(hex));
  }
}
