package slabwright.inlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.stencil.DyeLayer;
import slabwright.inlay.stencil.Finding;
import slabwright.site.ColourChoice;
import slabwright.site.StencilSpec;
import slabwright.units.Message;

/** Sorts a graphic's colours into dyes by a person's choices. */
final class DyeLayerBuilder {
  private final Artwork artwork;
  private final List<ColourChoice> choices;
  private final List<Finding> findings = new ArrayList<>();

  DyeLayerBuilder(Artwork artwork, StencilSpec spec) {
    this.artwork = artwork;
    this.choices = spec.colours();
  }

  DyedGraphic build() {
    boolean ordered = choices.stream().anyMatch(c -> c.use() == ColourChoice.Use.DYE);
    List<DyeLayer> layers = ordered ? chosen() : allBut();
    return new DyedGraphic(artwork.painted(), layers, findings);
  }

  private List<DyeLayer> allBut() {
    return DyeLayer.lightestFirst(
        artwork.colours().stream()
            .filter(c -> !isChosen(c.hex()))
            .map(DyeLayerBuilder::layer)
            .toList());
  }

  private List<DyeLayer> chosen() {
    List<DyeLayer> layers = new ArrayList<>();
    for (ColourChoice choice : choices) {
      if (choice.use() == ColourChoice.Use.DYE) {
        find(choice.colour())
            .ifPresentOrElse(
                c -> layers.add(layer(c)),
                () ->
                    findings.add(
                        Finding.look(
                            Message.of(
                                "inlay.dye-layer-builder.not-seen-in-graphic", choice.colour()))));
      }
    }
    artwork.colours().stream().filter(c -> !isChosen(c.hex())).forEach(this::leave);
    return layers;
  }

  private void leave(ColourRegion colour) {
    findings.add(
        Finding.look(
            Message.of("inlay.dye-layer-builder.no-choice-yet", colour.hex()),
            colour.region().labelPoint()));
  }

  private boolean isChosen(String hex) {
    return choices.stream().anyMatch(c -> c.colour().equals(hex));
  }

  private Optional<ColourRegion> find(String hex) {
    return artwork.colours().stream().filter(c -> c.hex().equals(hex)).findFirst();
  }

  private static DyeLayer layer(ColourRegion colour) {
    return new DyeLayer(colour.hex(), colour.lightness(), colour.region());
  }
}
