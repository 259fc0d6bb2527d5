package slabwright.inlay.stencil;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Region;

/**
 * The vinyl for one laying step. Openings and mask share no inside and together are the blank.
 *
 * <p>Frame: millimetres from the blank's top-left corner as read, x right, y down.
 *
 * @param layer its place in the laying order, from 1; the base dye is layer 0
 * @param colour the colour's name
 * @param artwork where the colour is seen in the graphic
 * @param wanted where the dye shall reach, after spreading under later layers
 * @param openings what is cut out: {@code wanted} less the ties
 * @param mask the vinyl that stays
 * @param loosePieces the parts of the mask that nothing holds, largest first
 */
public record Stencil(
    int layer,
    String colour,
    Region artwork,
    Region wanted,
    Region openings,
    Region mask,
    List<LoosePiece> loosePieces) {

  public Stencil {
    loosePieces = List.copyOf(loosePieces);
  }

  /** Cuts the wanted openings out of a blank that surrounds them. */
  static Stencil cut(int layer, String colour, Region artwork, Region wanted, Bounds blank) {
    return new Stencil(layer, colour, artwork, wanted, Region.empty(), Region.empty(), List.of())
        .cutting(wanted, blank);
  }

  /** This stencil with other openings in the same blank. */
  Stencil cutting(Region open, Bounds blank) {
    return cutting(open, List.of(blank));
  }

  /**
   * The same stencil cut out of vinyl that is only as large as it needs.
   *
   * @param blanks that hold all openings and don't meet
   */
  public Stencil within(List<Bounds> blanks) {
    return cutting(openings, blanks);
  }

  private Stencil cutting(Region open, List<Bounds> blanks) {
    List<Region> films = blanks.stream().map(b -> Region.rectangleWithout(b, open)).toList();
    List<LoosePiece> pieces = new ArrayList<>();
    for (int i = 0; i < blanks.size(); i++) {
      pieces.addAll(loose(films.get(i), blanks.get(i)));
    }
    pieces.sort((a, b) -> Double.compare(b.area(), a.area()));
    Region left = films.size() == 1 ? films.get(0) : Region.union(films);
    return new Stencil(layer, colour, artwork, wanted, open, left, pieces);
  }

  /** Length of cut in mm: every opening boundary once, no panel outline. */
  public double cutLength() {
    return openings.boundaryLength();
  }

  /** Area in mm² that ties keep from dye and that is touched up by hand. */
  public double touchUpArea() {
    return wanted.area() - openings.area();
  }

  private static List<LoosePiece> loose(Region mask, Bounds blank) {
    List<LoosePiece> pieces = new ArrayList<>();
    for (Region part : mask.parts()) {
      if (!TiePlan.reachesRim(part.bounds(), blank)) {
        pieces.add(new LoosePiece(part));
      }
    }
    return pieces;
  }
}
