package slabwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.inlay.GraphicSettings;
import slabwright.inlay.InlayPlan;
import slabwright.project.RefusedInput;
import slabwright.project.export.GraphicResult;
import slabwright.project.export.OutFolder;
import slabwright.site.StencilSpec;
import slabwright.units.FileName;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** {@code inlay GRAPHIC…}: stencils, panels and cut files of graphics, with no plan at all. */
@Command(name = "inlay", mixinStandardHelpOptions = true)
final class InlayCommand implements Callable<Integer> {
  @Parameters(paramLabel = "GRAPHIC", arity = "1..*")
  private List<Path> graphics;

  @Mixin private InlayOptions options;

  @Mixin private TraceOptions tracing;

  @Option(names = "--json")
  private boolean json;

  @Option(names = "--out", paramLabel = "DIR")
  private Path out;

  @Option(names = "--accept-font")
  private boolean acceptFont;

  @Spec private CommandSpec spec;

  private final Words words;

  InlayCommand(Words words) {
    this.words = words;
  }

  private final Set<String> used = new HashSet<>();

  @Override
  public Integer call() throws RefusedInput, IOException {
    StencilSpec settings = options.spec();
    GraphicSettings how = new GraphicSettings(options.page(), tracing.settings(), options.merged());
    OutFolder folder = out == null ? null : new OutFolder(out);
    int code = 0;
    for (Path graphic : graphics) {
      code = Math.max(code, guarded(graphic, settings, how, folder));
    }
    if (folder != null && !folder.names().isEmpty()) {
      folder.commit();
    }
    return code;
  }

  /** A fault of ours in one graphic, or a graphic that is gone, does not end the run of several. */
  private int guarded(Path graphic, StencilSpec settings, GraphicSettings how, OutFolder folder)
      throws IOException {
    try {
      return one(graphic, settings, how, folder);
    } catch (IllegalArgumentException
        | IllegalStateException
        | ArithmeticException
        | ClassCastException
        | NullPointerException
        | IndexOutOfBoundsException
        | StackOverflowError fault) {
      String why = words.say("cli.inlay.own-fault", graphic.toString(), fault.toString());
      spec.commandLine().getErr().println(why);
      if (json) {
        spec.commandLine().getOut().println(new GraphicResult.Failed(graphic, why).json());
      }
      return ExitCode.OWN_FAULT.code();
    }
  }

  private int one(Path graphic, StencilSpec settings, GraphicSettings how, OutFolder folder)
      throws IOException {
    GraphicResult result =
        GraphicResult.compute(
            graphic, options.width().mm(), settings, how, options.units(), options.asDrawn());
    PrintWriter print = spec.commandLine().getOut();
    if (json) {
      print.println(result.json());
    }
    if (result instanceof GraphicResult.Unusable unusable) {
      spec.commandLine().getErr().println(words.say(unusable.message()));
      return ExitCode.REFUSED.code();
    }
    GraphicResult.Planned planned = (GraphicResult.Planned) result;
    if (!json) {
      summary(print, planned);
    }
    int code = planned.questions().isEmpty() ? 0 : ExitCode.QUESTION_OPEN.code();
    return folder == null ? code : Math.max(code, write(planned, folder));
  }

  private int write(GraphicResult.Planned planned, OutFolder folder) throws IOException {
    String stem = stem(planned.graphic());
    String prefix = graphics.size() == 1 ? "" : stem + "/";
    List<String> said = planned.addTo(folder, prefix, stem, acceptFont, words);
    said.forEach(spec.commandLine().getErr()::println);
    return said.isEmpty() ? 0 : ExitCode.REFUSED.code();
  }

  /** The file's name without its ending, cleaned and unlike any before. */
  private String stem(Path graphic) {
    String base =
        FileName.ofId(String.valueOf(graphic.getFileName()).replaceFirst("\\.[A-Za-z]+$", ""));
    String name = base;
    for (int i = 2; !used.add(name); i++) {
      name = base + "-" + i;
    }
    return name;
  }

  private void summary(PrintWriter print, GraphicResult.Planned planned) {
    InlayPlan plan = planned.plan();
    UnitSystem units = options.units();
    Words words = this.words.inUnits(units);
    print.println(
        words.say(
            "cli.inlay.summary",
            String.valueOf(planned.graphic().getFileName()),
            QuantityFormat.area(plan.openingArea(), units),
            plan.stencils().stencils().size(),
            QuantityFormat.run(plan.cutLength(), units),
            plan.panelsCut(),
            QuantityFormat.run(plan.rollLength(), units),
            plan.loosePieces()));
    planned.artwork().warnings().forEach(w -> print.println("  ! " + words.say(w.message())));
    planned.questions().forEach(q -> ConsoleSummary.question(print, q, words));
    ConsoleSummary.findings(print, plan.findings(), units, words);
  }
}
