package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import slabwright.project.SiteResult;
import slabwright.project.TaskProgress;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.FileName;
import slabwright.units.Result;
import slabwright.words.Words;

/**
 * Pictures of every floor as it should look: from above, from the way in, and on the client's photo
 * where the plan has one and it is there.
 *
 * @param plan its file, which photos and graphics are relative to
 */
public record PictureFiles(Site site, Path plan, Words words) {
  private static final int PIXELS = 2400;

  /** The files; refused when a floor can't be shown. */
  public Result<StagedFiles> files(TaskProgress steps) throws IOException {
    Result<SiteResult> work = SiteResult.compute(site, plan, steps::isCancelled);
    if (work instanceof Result.Refused<SiteResult> bad) {
      return Result.refused(bad.refusals());
    }
    SiteResult done = work.orThrow();
    Map<String, PictureRequest> wanted = wanted(done);
    StagedFiles files = new StagedFiles();
    int made = 0;
    for (Map.Entry<String, PictureRequest> e : wanted.entrySet()) {
      steps.report(SheetExport.MADE * (made++ + 0.5) / (wanted.size() + 0.5));
      Result<PictureRequest.FloorShown> shown = e.getValue().shown();
      if (shown instanceof Result.Refused<PictureRequest.FloorShown> bad) {
        return Result.refused(bad.refusals());
      }
      String caption = words.say(PictureRequest.CAPTION);
      files.add(e.getKey(), shown.orThrow().rendering().png(caption, steps::isCancelled));
    }
    return Result.ok(files);
  }

  private Map<String, PictureRequest> wanted(SiteResult done) {
    Map<String, PictureRequest> all = new LinkedHashMap<>();
    String stem = SheetRequest.folderName(done);
    for (FloorArea a : done.site().areas()) {
      Optional<String> id = Optional.of(a.id());
      String name = stem + "-" + FileName.ofId(a.id());
      all.put(
          name + "-floor.png",
          new PictureRequest(done, id, new PictureRequest.FromAbove(), PIXELS));
      all.put(
          name + "-from-door.png",
          new PictureRequest(done, id, new PictureRequest.FromDoor(), PIXELS));
    }
    done.site()
        .job()
        .clientPhoto()
        .map(p -> plan.toAbsolutePath().resolveSibling(p.file()))
        .filter(Files::isRegularFile)
        .map(f -> new PictureRequest(done, Optional.empty(), new PictureRequest.OnPhoto(f), PIXELS))
        .ifPresent(r -> all.put(stem + "-on-photo.png", r));
    return all;
  }
}
