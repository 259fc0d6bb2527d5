package slabwright.inlay.cutfile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import slabwright.drawing.paint.PdfFile;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.stencil.StencilSet;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/**
 * Everything the sign shop gets, in one ZIP: a cut file for each panel as SVG, all of them as one
 * PDF, the proof page, and the order in plain text. The same plan and moment give the same bytes.
 *
 * @param made is written into the files
 * @param words of the door that makes them
 * @param papers that go into the ZIP beside the cut files, by what their names end in, such as
 *     {@code _order.pdf}
 */
public record ShopBundle(
    CutFileParameters job,
    StencilSet stencils,
    PanelPlan panels,
    FilmOrder order,
    UnitSystem units,
    Instant made,
    Function<Message, String> words,
    SortedMap<String, byte[]> papers) {
  private static final String PROOF = "_proof.pdf";

  public ShopBundle {
    papers = Collections.unmodifiableSortedMap(new TreeMap<>(papers));
  }

  /** Without papers. */
  public ShopBundle(
      CutFileParameters job,
      StencilSet stencils,
      PanelPlan panels,
      FilmOrder order,
      UnitSystem units,
      Instant made,
      Function<Message, String> words) {
    this(job, stencils, panels, order, units, made, words, new TreeMap<>());
  }

  /** Every file by its name: SVG and PDF of each panel, the proof page, and the ZIP of it all. */
  public SortedMap<String, byte[]> files() throws IOException {
    SortedMap<String, byte[]> all = new TreeMap<>();
    Shared shared = shared();
    all.putAll(shared.svgs());
    for (CutFile file : shared.files()) {
      all.put(file.name() + ".pdf", bytes(file.pdf(made, words)));
    }
    all.putAll(shared.proof());
    ByteArrayOutputStream zip = new ByteArrayOutputStream();
    write(zip, shared);
    all.put(job.fileNameStem() + "_sign-shop.zip", zip.toByteArray());
    return all;
  }

  /** Writes the ZIP; the stream stays open. */
  public void write(OutputStream out) throws IOException {
    write(out, shared());
  }

  /**
   * What stands in the ZIP and beside it, made once.
   *
   * @param svgs of the files by name, in their order
   * @param proof the page of all stencils, by its name
   */
  private record Shared(
      StayingPieces staying,
      List<CutFile> files,
      Map<String, byte[]> svgs,
      Map<String, byte[]> proof) {}

  private Shared shared() throws IOException {
    StayingPieces staying = StayingPieces.of(stencils, panels);
    List<CutFile> files = job.files(stencils, panels, staying);
    Map<String, byte[]> svgs = new LinkedHashMap<>();
    for (CutFile file : files) {
      svgs.put(file.name() + ".svg", file.svg(words).getBytes(StandardCharsets.UTF_8));
    }
    byte[] proof = bytes(proofPdf(staying));
    return new Shared(staying, files, svgs, Map.of(job.fileNameStem() + PROOF, proof));
  }

  private void write(OutputStream out, Shared shared) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out, StandardCharsets.UTF_8);
    String base = job.fileNameStem();
    for (Map.Entry<String, byte[]> svg : shared.svgs().entrySet()) {
      add(zip, svg.getKey(), svg.getValue());
    }
    add(zip, base + "_cut.pdf", bytes(cutPdf(shared.files())));
    for (Map.Entry<String, byte[]> page : shared.proof().entrySet()) {
      add(zip, page.getKey(), page.getValue());
    }
    String text =
        new OrderText(units, words)
            .write(job, stencils, panels, shared.staying(), order, shared.files());
    add(zip, base + "_order.txt", text.getBytes(StandardCharsets.UTF_8));
    for (Map.Entry<String, byte[]> paper : papers.entrySet()) {
      add(zip, base + paper.getKey(), paper.getValue());
    }
    zip.finish();
  }

  /** All cut files as pages in true size. */
  public PdfFile cutPdf() {
    return cutPdf(job.files(stencils, panels));
  }

  private PdfFile cutPdf(List<CutFile> files) {
    return PdfCutWriter.pdf(
        words.apply(Message.of("inlay.shop-bundle.cut-files", job.inlay(), job.issue())),
        made,
        files,
        words);
  }

  /** The proof page of every stencil. */
  public PdfFile proofPdf() {
    return proofPdf(StayingPieces.of(stencils, panels));
  }

  private PdfFile proofPdf(StayingPieces staying) {
    List<ProofPage> pages =
        stencils.stencils().stream()
            .map(s -> new ProofPage(job, stencils, s, panels.of(s), staying.of(s), units, words))
            .toList();
    return new PdfFile(
        words.apply(Message.of("inlay.shop-bundle.proof", job.inlay(), job.issue())),
        made,
        pages.stream().map(ProofPage::paper).toList(),
        pages.stream().map(ProofPage::layers).toList());
  }

  private void add(ZipOutputStream zip, String name, byte[] content) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(LocalDateTime.ofInstant(made, ZoneOffset.UTC));
    zip.putNextEntry(entry);
    zip.write(content);
    zip.closeEntry();
  }

  private static byte[] bytes(PdfFile pdf) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    pdf.write(out);
    return out.toByteArray();
  }
}
