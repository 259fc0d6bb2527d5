package slabwright.desk.cards.inlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PlaceCycle;
import slabwright.inlay.DyeNames;
import slabwright.inlay.FixAcceptance;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.OpenQuestions;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.stencil.FindingGroups;
import slabwright.inlay.stencil.FixEffect;
import slabwright.inlay.stencil.FixKind;
import slabwright.inlay.stencil.LoosePiece;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Vec;
import slabwright.site.Inlay;
import slabwright.site.StencilSpec;
import slabwright.units.ColourNaming;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** What an inlay's plan has to say, as rows with a way to the place and an offer to mend it. */
record InlayFindings(
    Artwork artwork,
    InlayPlan plan,
    Inlay inlay,
    SelectedInlay picked,
    UnitSystem units,
    Words words,
    Function<Vec, Runnable> goTo) {
  private static final int MOST_LOOSE = 4;

  List<FindingRow> all() {
    List<FindingRow> all = new ArrayList<>();
    all.add(
        FindingRow.fine(words.say("desk.cards.inlay.inlay-findings.weed-the-graphic-keep-the")));
    OpenQuestions.of(artwork, inlay.spec()).forEach(q -> question(all, q));
    accepted(all);
    FindingGroups.of(plan.findings(), units).forEach(g -> all.add(row(g)));
    loose(all);
    return all;
  }

  /** What is asked, with what is offered as a button; the second row takes it as it is drawn. */
  private void question(List<FindingRow> all, ArtworkQuestion q) {
    StencilSpec taken = OpenQuestions.accepted(q, inlay.spec());
    Optional<FindingRow.Offer> offer =
        taken.equals(inlay.spec())
            ? Optional.empty()
            : Optional.of(answer(offered(q), s -> OpenQuestions.accepted(q, s)));
    String asked = words.say("desk.cards.inlay.inlay-findings.question", words.say(q.message()));
    all.add(new FindingRow(FindingRow.Sign.LOOK, asked, q.place().map(this::show), offer));
    if (all.stream()
        .noneMatch(r -> r.offer().filter(o -> o.word().equals(asDrawn())).isPresent())) {
      all.add(
          new FindingRow(
              FindingRow.Sign.LOOK,
              words.say("desk.cards.inlay.inlay-findings.or-all-as-drawn"),
              Optional.empty(),
              Optional.of(answer(asDrawn(), s -> OpenQuestions.asDrawn(artwork, s)))));
    }
  }

  private String asDrawn() {
    return words.say("desk.cards.inlay.inlay-findings.as-drawn");
  }

  private Runnable show(Vec place) {
    return goTo.apply(plan.stencils().fromGraphic().apply(place));
  }

  private FindingRow.Offer answer(String word, UnaryOperator<StencilSpec> how) {
    return new FindingRow.Offer(
        word, () -> picked.cut(Message.of("desk.cards.inlay.inlay-findings.answer", word), how));
  }

  private String offered(ArtworkQuestion q) {
    return switch (q.kind().offered()) {
      case LEAVE_BARE -> words.say("desk.cards.inlay.inlay-findings.leave-bare");
      case IGNORE -> words.say("desk.cards.inlay.inlay-findings.leave-out");
      case MERGE -> words.say("desk.cards.inlay.inlay-findings.merge");
    };
  }

  private FindingRow row(FindingGroups.Group group) {
    boolean cant = group.weight() == slabwright.inlay.stencil.Finding.Weight.CANNOT;
    return new FindingRow(
        cant ? FindingRow.Sign.CANT : FindingRow.Sign.LOOK,
        words.say(group.sentence()),
        places(group.places()),
        group.fix().filter(f -> !FixAcceptance.isAccepted(f, inlay.spec())).map(this::offer));
  }

  private Optional<Runnable> places(List<Vec> places) {
    return switch (places.size()) {
      case 0 -> Optional.empty();
      case 1 -> Optional.of(goTo.apply(places.get(0)));
      default -> Optional.of(new PlaceCycle(places.stream().map(goTo).toList()));
    };
  }

  private FindingRow.Offer offer(FixKind fix) {
    return new FindingRow.Offer(
        words.say("desk.cards.inlay.inlay-findings.fix"),
        () ->
            picked.cut(
                Message.of("desk.cards.inlay.inlay-findings.accept", fix.step()),
                s -> FixAcceptance.accept(fix, s)));
  }

  private void accepted(List<FindingRow> all) {
    for (FixKind fix : FixKind.values()) {
      if (FixAcceptance.isAccepted(fix, inlay.spec())) {
        String changes =
            plan.stencils().changes().stream()
                .filter(c -> c.fix() == fix)
                .map((FixEffect c) -> words.say(c.said(units)))
                .collect(Collectors.joining(" "));
        all.add(
            new FindingRow(
                FindingRow.Sign.FINE,
                changes.isEmpty()
                    ? words.say(
                        "desk.cards.inlay.inlay-findings.accepted-none-was-found", fix.step())
                    : changes,
                Optional.empty(),
                Optional.of(takeBack(fix))));
      }
    }
  }

  private FindingRow.Offer takeBack(FixKind fix) {
    return new FindingRow.Offer(
        words.say("desk.cards.inlay.inlay-findings.take-back"),
        () ->
            picked.cut(
                Message.of("desk.cards.inlay.inlay-findings.do-not", fix.step()),
                s -> FixAcceptance.withdraw(fix, s)));
  }

  private void loose(List<FindingRow> all) {
    int n = plan.loosePieces();
    if (n == 0) {
      return;
    }
    all.add(FindingRow.look(words.say("desk.cards.inlay.inlay-findings.loose", n)));
    for (Stencil s : plan.stencils().stencils()) {
      for (LoosePiece piece : s.loosePieces().stream().limit(MOST_LOOSE).toList()) {
        String said =
            words.say(
                "desk.cards.inlay.inlay-findings.loose-in",
                name(s.colour()),
                QuantityFormat.smallArea(piece.area(), units));
        Runnable show = goTo.apply(piece.region().bounds().middle());
        all.add(new FindingRow(FindingRow.Sign.LOOK, said, Optional.of(show)));
      }
    }
  }

  private String name(String colour) {
    return picked
        .now()
        .map(i -> words.say(DyeNames.of(i, plan).get(colour)))
        .orElseGet(() -> words.say(ColourNaming.of(colour)));
  }
}
