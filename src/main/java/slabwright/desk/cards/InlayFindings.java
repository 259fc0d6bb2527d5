package slabwright.desk.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.Mending;
import slabwright.inlay.stencil.Change;
import slabwright.inlay.stencil.FindingGroups;
import slabwright.inlay.stencil.Fix;
import slabwright.inlay.stencil.LoosePiece;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Vec;
import slabwright.site.Inlay;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;

/** What an inlay's plan has to say, as rows with a way to the place and an offer to mend it. */
record InlayFindings(
    InlayPlan plan,
    Inlay inlay,
    PickedInlay picked,
    UnitSystem units,
    Function<Vec, Runnable> goTo) {
  private static final int MOST_LOOSE = 4;

  List<Finding> all() {
    List<Finding> all = new ArrayList<>();
    all.add(Finding.fine("Weed the graphic, keep the surround; nothing is mirrored"));
    accepted(all);
    FindingGroups.of(plan.findings(), units).forEach(g -> all.add(row(g)));
    loose(all);
    return all;
  }

  private Finding row(FindingGroups.Group group) {
    boolean cant = group.weight() == slabwright.inlay.stencil.Finding.Weight.CANNOT;
    return new Finding(
        cant ? Finding.Sign.CANT : Finding.Sign.LOOK,
        group.sentence(),
        places(group.places()),
        group.fix().filter(f -> !Mending.isAccepted(f, inlay.spec())).map(this::offer));
  }

  private Optional<Runnable> places(List<Vec> places) {
    return switch (places.size()) {
      case 0 -> Optional.empty();
      case 1 -> Optional.of(goTo.apply(places.get(0)));
      default -> Optional.of(new OneByOne(places.stream().map(goTo).toList()));
    };
  }

  private Finding.Offer offer(Fix fix) {
    return new Finding.Offer("Fix", () -> picked.cut(fix.step(), s -> Mending.accept(fix, s)));
  }

  private void accepted(List<Finding> all) {
    for (Fix fix : Fix.values()) {
      if (Mending.isAccepted(fix, inlay.spec())) {
        String words =
            plan.stencils().changes().stream()
                .filter(c -> c.fix() == fix)
                .map((Change c) -> c.words(units))
                .collect(Collectors.joining(" "));
        all.add(
            new Finding(
                Finding.Sign.FINE,
                words.isEmpty() ? "Accepted: " + fix.step() + "; none was found." : words,
                Optional.empty(),
                Optional.of(takeBack(fix))));
      }
    }
  }

  private Finding.Offer takeBack(Fix fix) {
    return new Finding.Offer(
        "Take back", () -> picked.cut("do not " + fix.step(), s -> Mending.takeBack(fix, s)));
  }

  private void loose(List<Finding> all) {
    int n = plan.loosePieces();
    if (n == 0) {
      return;
    }
    String carry = n == 1 ? " loose piece: carry it" : " loose pieces: carry them";
    all.add(Finding.look(n + carry + " over on transfer tape"));
    for (Stencil s : plan.stencils().stencils()) {
      for (LoosePiece piece : s.loosePieces().stream().limit(MOST_LOOSE).toList()) {
        String words =
            String.format(
                Locale.ROOT,
                "Loose in %s: %s",
                s.colour(),
                Quantity.smallArea(piece.area(), units));
        all.add(new Finding(Finding.Sign.LOOK, words, Optional.of(goTo.apply(piece.place()))));
      }
    }
  }
}
