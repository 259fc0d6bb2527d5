package slabwright.inlay.artwork;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.artwork.ArtworkQuestion.Kind;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.units.CieLab;
import slabwright.units.ColourNaming;
import slabwright.units.Message;

/** What must be asked about the colours of a graphic, whatever format it came in. */
final class ArtworkQuestionFinder {
  /** Lightness and distance from grey of what counts as white; our own choice, no source. */
  private static final double WHITE_FROM = 90;

  private static final double GREYISH = 10;

  /** The difference just noticed, CIE 1976: Sharma, Digital Color Imaging Handbook, 2003. */
  private static final double JUST_NOTICED = 2.3;

  /** Our own choice, no source: each colour is a stencil, and a day more or less. */
  private static final int MANY_COLOURS = 12;

  /** Openings no thicker than this, so many of one colour; our own choice, no source. */
  private static final double SMALL_MM = 15;

  private static final int MANY_OPENINGS = 150;

  /** So much outline, mm, is not planned, and the widest place along it is long to seek. */
  private static final double FAR_TOO_LONG = 1_000_000;

  private final List<ColourRegion> colours;
  private final List<ArtworkQuestion> found = new ArrayList<>();

  private ArtworkQuestionFinder(List<ColourRegion> colours) {
    this.colours = colours;
  }

  /**
   * All questions.
   *
   * @param colours as they are seen
   * @param asked by whoever read the file; what is about a colour that is not seen goes
   */
  static List<ArtworkQuestion> of(List<ColourRegion> colours, List<ArtworkQuestion> asked) {
    ArtworkQuestionFinder finder = new ArtworkQuestionFinder(colours);
    asked.stream().filter(q -> finder.isSeen(q.colours())).forEach(finder.found::add);
    colours.forEach(finder::white);
    finder.close();
    colours.forEach(finder::manyOpenings);
    finder.manyColours();
    return finder.found;
  }

  private boolean isSeen(List<String> asked) {
    return asked.stream().allMatch(hex -> colours.stream().anyMatch(c -> c.hex().equals(hex)));
  }

  private void white(ColourRegion colour) {
    CieLab lab = CieLab.ofHex(colour.hex());
    boolean asked = found.stream().anyMatch(q -> q.colours().contains(colour.hex()));
    if (!asked && lab.l() >= WHITE_FROM && Math.hypot(lab.a(), lab.b()) <= GREYISH) {
      Message message = Message.of("inlay.artwork-question.white", colour.hex());
      add(Kind.WHITE, message, List.of(colour.hex()), colour.region());
    }
  }

  private void close() {
    for (int i = 0; i < colours.size(); i++) {
      for (int j = 0; j < i; j++) {
        close(colours.get(i), colours.get(j));
      }
    }
  }

  private void close(ColourRegion later, ColourRegion earlier) {
    double deltaE = CieLab.ofHex(later.hex()).deltaE(CieLab.ofHex(earlier.hex()));
    if (deltaE <= JUST_NOTICED) {
      Message message =
          Message.of("inlay.artwork-question.close-colours", later.hex(), earlier.hex(), deltaE);
      add(Kind.CLOSE_COLOURS, message, List.of(later.hex(), earlier.hex()), later.region());
    }
  }

  private void manyOpenings(ColourRegion colour) {
    // twice the area by the boundary is the width of a long strip and half that of a dot
    long small = colour.region().shells().stream().filter(ArtworkQuestionFinder::isSmall).count();
    if (small > MANY_OPENINGS) {
      Message message =
          Message.of(
              "inlay.artwork-question.many-openings",
              small,
              ColourNaming.of(colour.hex()),
              colour.hex(),
              SMALL_MM);
      Region all = colour.region();
      boolean tooLong = all.boundaryLength() > FAR_TOO_LONG;
      add(Kind.MANY_OPENINGS, message, List.of(colour.hex()), tooLong ? all.parts().get(0) : all);
    }
  }

  private static boolean isSmall(Ring shell) {
    return 2 * Math.abs(shell.signedArea()) / shell.length() <= SMALL_MM;
  }

  private void manyColours() {
    if (colours.size() > MANY_COLOURS) {
      Message message = Message.of("inlay.artwork-question.many-colours", colours.size());
      found.add(new ArtworkQuestion(Kind.MANY_COLOURS, message, List.of(), Optional.empty()));
    }
  }

  private void add(Kind kind, Message message, List<String> about, Region where) {
    Optional<Vec> place = where.isEmpty() ? Optional.empty() : Optional.of(where.labelPoint());
    found.add(new ArtworkQuestion(kind, message, about, place));
  }
}
