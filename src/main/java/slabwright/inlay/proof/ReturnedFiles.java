package slabwright.inlay.proof;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/**
 * What came back in one or several files. A file that can't be read ends nothing for the others; as
 * long as it is not seen the verdict is never to cut.
 *
 * @param unread files that can't be read, or in part, and why
 */
public record ReturnedFiles(List<ReturnedPage> pages, List<ProofNote> unread) {
  public ReturnedFiles {
    pages = List.copyOf(pages);
    unread = List.copyOf(unread);
  }

  /**
   * Reads the files; refused when none of them can be read.
   *
   * @param page of each, from 1; absent is every page
   */
  public static Result<ReturnedFiles> read(List<Path> files, OptionalInt page) {
    List<ReturnedPage> pages = new ArrayList<>();
    List<ProofNote> unread = new ArrayList<>();
    List<ProofNote> inPart = new ArrayList<>();
    List<Refusal> reasons = new ArrayList<>();
    for (Path file : files) {
      Result<ReturnedFile> read = one(file, page);
      if (read instanceof Result.Refused<ReturnedFile> refused) {
        unread.add(new ProofNote.FileUnread(String.valueOf(file.getFileName()), refused.message()));
        reasons.addAll(refused.refusals());
      } else {
        pages.addAll(read.orThrow().pages());
        inPart.addAll(read.orThrow().unpainted());
      }
    }
    if (unread.size() == files.size() && !files.isEmpty()) {
      return Result.refused(reasons);
    }
    unread.addAll(inPart);
    return Result.ok(new ReturnedFiles(pages, unread));
  }

  private static Result<ReturnedFile> one(Path file, OptionalInt page) {
    try {
      Result<ReturnedFile> read = ReturnedFile.read(file);
      return page.isPresent() ? read.flatMap(f -> f.only(page.getAsInt())) : read;
    } catch (IOException broken) {
      return Result.refused(Message.of("inlay.returned-file.breaks", file.toString()));
    }
  }
}
