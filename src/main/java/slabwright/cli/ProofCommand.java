package slabwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.drawing.paint.SvgPainter;
import slabwright.figures.ProofFaultInks;
import slabwright.inlay.proof.ProofBatch;
import slabwright.inlay.proof.ProofNote;
import slabwright.inlay.proof.ProofVerdict;
import slabwright.inlay.proof.ShadingMeaning;
import slabwright.project.ProofRequest;
import slabwright.project.RefusedInput;
import slabwright.site.Site;
import slabwright.store.AtomicFile;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** {@code proof PLAN --inlay ID --file RETURNED}: the sign shop's drawing against the plan. */
@Command(name = "proof", mixinStandardHelpOptions = true)
final class ProofCommand implements Callable<Integer> {
  private static final double PICTURE_MM = 250;

  /** What the person says of shading. */
  enum Shading {
    PULLED_OUT,
    STAYS,
    UNKNOWN
  }

  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @Option(names = "--inlay", paramLabel = "ID")
  private String inlay;

  @Option(names = "--file", required = true, paramLabel = "FILE", arity = "1..*")
  private List<Path> files;

  @Option(names = "--stencil", paramLabel = "N")
  private Integer number;

  @Option(names = "--shading", paramLabel = "WHAT", defaultValue = "UNKNOWN")
  private Shading shading;

  @Option(names = "--page", paramLabel = "N")
  private Integer page;

  @Option(names = "--json")
  private boolean json;

  @Mixin private ProofOptions limits;

  @Option(names = "--picture", paramLabel = "FILE.svg")
  private Path picture;

  @Spec private CommandSpec spec;

  private final Words words;

  ProofCommand(Words words) {
    this.words = words;
  }

  @Override
  public Integer call() throws RefusedInput, IOException {
    Site site = PlanLoader.read(plan);
    ShadingMeaning meaning = ShadingMeaning.valueOf(shading.name());
    ProofRequest.Checked checked =
        new ProofRequest(
                Optional.ofNullable(inlay),
                asked(number),
                files,
                asked(page),
                meaning,
                limits.limits())
            .check(site, plan.toAbsolutePath().getParent());
    say(checked, site.units());
    if (picture != null) {
      ProofBatch.Judged shown = gravest(checked);
      AtomicFile.write(
          picture,
          SvgPainter.write(
                  ProofFaultInks.picture(shown.plan(), shown.report(), PICTURE_MM),
                  words.say("cli.proof.picture"))
              .getBytes(StandardCharsets.UTF_8));
    }
    return code(checked.verdict()).code();
  }

  private static OptionalInt asked(Integer n) {
    return n == null ? OptionalInt.empty() : OptionalInt.of(n);
  }

  /** The stencil that the verdict is of. */
  private static ProofBatch.Judged gravest(ProofRequest.Checked checked) {
    return checked.stencils().stream()
        .filter(s -> s.report().verdict() == checked.verdict())
        .findFirst()
        .orElseThrow();
  }

  private static ExitCode code(ProofVerdict verdict) {
    return switch (verdict) {
      case CUT -> ExitCode.DONE;
      case DO_NOT_CUT -> ExitCode.DO_NOT_CUT;
      case CANNOT_TELL -> ExitCode.CANNOT_TELL;
    };
  }

  private void say(ProofRequest.Checked checked, UnitSystem units) {
    PrintWriter out = spec.commandLine().getOut();
    Words words = this.words.inUnits(units);
    if (json) {
      out.println(checked.json(units));
      return;
    }
    out.println(words.say(gravest(checked).report().message()));
    boolean many =
        checked.stencils().size() > 1
            || gravest(checked).report().notes().stream()
                .anyMatch(n -> n instanceof ProofNote.StencilsAbsent);
    for (ProofBatch.Judged s : checked.stencils()) {
      if (many) {
        out.println(words.say("cli.proof.stencil", s.stencil(), words.say(s.report().message())));
      }
      s.report().faults().forEach(f -> out.println("✕ " + words.say(f.message(units))));
      s.report().notes().forEach(n -> out.println("! " + words.say(n.message(units))));
    }
    out.println(words.say(checked.stencils().get(0).report().limits().message()));
  }
}
