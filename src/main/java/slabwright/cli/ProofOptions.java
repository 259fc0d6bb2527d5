package slabwright.cli;

import picocli.CommandLine.Option;
import slabwright.inlay.proof.ProofLimits;
import slabwright.project.RefusedInput;
import slabwright.units.Length;
import slabwright.units.Message;

/** What a returned drawing may differ by, as options. */
final class ProofOptions {
  private static final String LEN = "LEN";

  @Option(names = "--edge-limit", paramLabel = LEN)
  private Length edge;

  @Option(names = "--move-limit", paramLabel = LEN)
  private Length move;

  @Option(names = "--thin-limit", paramLabel = LEN)
  private Length thin;

  @Option(names = "--piece-area", paramLabel = "MM2")
  private Double pieceArea;

  @Option(names = "--piece-thick", paramLabel = LEN)
  private Length pieceThick;

  ProofLimits limits() throws RefusedInput {
    ProofLimits usual = ProofLimits.USUAL;
    double[] given = {
      mm(edge, usual.edge()),
      mm(move, usual.move()),
      mm(thin, usual.thin()),
      pieceArea == null ? usual.pieceArea() : pieceArea,
      mm(pieceThick, usual.pieceThick())
    };
    for (double limit : given) {
      if (!(limit > 0) || Double.isInfinite(limit)) {
        throw RefusedInput.of(Message.of("cli.proof.limit"));
      }
    }
    return new ProofLimits(given[0], given[1], given[2], given[3], given[4]);
  }

  private static double mm(Length given, double usual) {
    return given == null ? usual : given.mm();
  }
}
