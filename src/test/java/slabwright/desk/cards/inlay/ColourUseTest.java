package slabwright.desk.cards.inlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slabwright.site.ColourChoice;
import slabwright.site.ColourChoice.Use;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

class ColourUseTest {
  private static final List<String> BOTH = List.of("#112233", "#445566");
  private static final StencilSpec SPEC = StencilSpec.forRoll(Length.mm(1220));

  @Test
  void every_colour_is_dyed_until_something_is_said() {
    assertThat(ColourUse.of(SPEC, "#112233")).isEqualTo(Use.DYE);
  }

  @Test
  void leaving_one_colour_leaves_the_others_dyed() {
    StencilSpec left = ColourUse.with(SPEC, BOTH, "#112233", Use.LEAVE);
    assertThat(ColourUse.of(left, "#112233")).isEqualTo(Use.LEAVE);
    assertThat(ColourUse.of(left, "#445566")).isEqualTo(Use.DYE);
  }

  @Test
  void an_ignored_colour_can_still_be_taken_back() {
    StencilSpec ignored = ColourUse.with(SPEC, BOTH, "#112233", Use.IGNORE);
    assertThat(ColourUse.all(Optional.empty(), ignored)).containsExactly("#112233");
    StencilSpec back = ColourUse.with(ignored, BOTH, "#112233", Use.DYE);
    assertThat(back).isEqualTo(SPEC);
  }

  @Test
  void leaving_the_only_named_dye_does_not_dye_the_others() {
    StencilSpec one = SPEC.withColours(List.of(new ColourChoice("#112233", Use.DYE, "d")));
    StencilSpec none = ColourUse.with(one, BOTH, "#112233", Use.LEAVE);
    assertThat(ColourUse.of(none, "#445566")).isEqualTo(Use.LEAVE);
    assertThat(none.colours().get(0).product()).isEqualTo("d");
  }
}
