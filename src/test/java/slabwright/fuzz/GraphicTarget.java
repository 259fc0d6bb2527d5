package slabwright.fuzz;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import slabwright.inlay.GraphicReader;
import slabwright.inlay.GraphicSettings;
import slabwright.inlay.InlayContext;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.artwork.picture.TraceSettings;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/** A graphic of any kind, read at the width of an inlay; its stencil too, when that is asked. */
final class GraphicTarget implements FuzzTarget {
  private static final double WIDTH = 1200;
  private static final List<String> SNIPPETS =
      List.of(
          "<use href='#a'/>",
          "<g transform='scale(0)'><rect width='9' height='9'/></g>",
          "<g transform='matrix(1 2 2 4 0 0)'><circle r='9'/></g>",
          "<image href='data:,' width='9' height='9'/>",
          "<text x='5' y='50' font-size='1e7'>W</text>",
          "<text font-size='12'>&#x627;&#x1F9A9;a\u0301</text>",
          "<rect width='1e9' height='1e-9' stroke='red' stroke-width='1e6'/>",
          "<path d='M0 0A0 0 0 0 1 9 9A1e9 1 45 1 0 0 0Z' stroke='#000' stroke-dasharray='1e-7'/>",
          "<path d='M0 0Q1e30 1e30 9 9T5 5S1 1 2 2' stroke-linejoin='round' stroke='blue'/>",
          "<clipPath id='a'><use href='#a'/></clipPath>",
          "<mask id='a'><rect width='99' height='99' mask='url(#a)'/></mask>",
          "<filter id='a'><feGaussianBlur stdDeviation='1e9'/></filter>",
          "<rect width='9' height='9' filter='url(#a)' clip-path='url(#a)' mask='url(#a)'/>",
          "<pattern id='a' width='1e-6' height='1e-6' patternUnits='userSpaceOnUse'>"
              + "<rect width='1' height='1'/></pattern><rect width='90' height='90' fill='url(#a)'/>",
          "<linearGradient id='a' href='#a'/><rect width='9' height='9' fill='url(#a)'/>",
          "<style>*{fill:var(--a);--a:var(--a)} @media print{} rect:not(</style>",
          "<style>rect{transform:rotate(calc(1turn/0));width:calc(9px*(1+}</style>",
          "<svg viewBox='0 0 0 0'><rect width='9' height='9'/></svg>",
          "<switch><foreignObject/><g/></switch>",
          "<![CDATA[",
          "<!--",
          "<?xml version='1.1'?>",
          "<script>while(1);</script>",
          "<animate attributeName='x' dur='1s'/>");

  private final List<byte[]> files;
  private final Path scratch;
  private final boolean stencil;

  GraphicTarget(List<byte[]> files, Path scratch, boolean stencil) {
    this.files = files;
    this.scratch = scratch;
    this.stencil = stencil;
  }

  static List<byte[]> svgs() throws IOException {
    List<byte[]> all = new ArrayList<>();
    try (Stream<Path> artwork = Files.list(Path.of("src/test/resources/artwork"))) {
      for (Path p : artwork.filter(f -> f.toString().endsWith(".svg")).sorted().toList()) {
        all.add(Files.readAllBytes(p));
      }
    }
    all.add(Files.readAllBytes(Path.of("sample-plans/bike-wheel.svg")));
    all.add(Files.readAllBytes(Path.of("sample-plans/heron-ring.svg")));
    return all;
  }

  /** Written out by hand, nothing packed, so that every operator can be met. */
  static List<byte[]> pdfs() {
    return Stream.of(
            "0.8 0.2 0.2 rg 40 200 m 40 20 360 20 360 200 c f 12 w [30 12 20] 9 d 40 40 200 90 re S",
            "q 2 0 0 0.5 10 10 cm 0 0 1 RG 20 w 1 J 1 j 30 200 m 100 100 l 170 60 l S Q"
                + " 100 100 90 90 re W* n /S sh 0 0 300 300 re f*",
            "/G gs 1 0 0 0 k 20 20 200 200 re f q 1 0 0 1 50 50 cm /F Do Q /F Do /L BDC 0 g 9 9 40"
                + " 40 re B* EMC BT /T 24 Tf 30 60 Td (Heron 7) Tj ET",
            "/Pattern cs /P scn 10 10 250 250 re f /C CS 0.3 SC 4 w 10 290 m 290 10 l S"
                + " BI /W 2 /H 2 /BPC 8 /CS /G ID abcd EI")
        .map(GraphicTarget::pdf)
        .toList();
  }

  private static byte[] pdf(String operators) {
    String form = "0 0 m 80 0 l 80 90 l 0 80 l h f";
    List<String> objects =
        List.of(
            "<</Type/Catalog/Pages 2 0 R/OCProperties<</OCGs[9 0 R]/D<</OFF[9 0 R]>>>>>>",
            "<</Type/Pages/Kids[3 0 R]/Count 1>>",
            "<</Type/Page/Parent 2 0 R/MediaBox[0 0 300 300]/Rotate 0/Contents 4 0 R/Resources"
                + "<</XObject<</F 5 0 R>>/ExtGState<</G 6 0 R>>/Shading<</S 7 0 R>>/Pattern"
                + "<</P 8 0 R>>/ColorSpace<</C[/Separation/Dye/DeviceRGB 10 0 R]>>"
                + "/Properties<</L 9 0 R>>/Font<</T 11 0 R>>>>>>",
            stream("", operators),
            stream("/Type/XObject/Subtype/Form/BBox[0 0 60 100]/Matrix[1 0 0 1 0 0]", form),
            "<</Type/ExtGState/ca 0.9/CA 1/LW 3/BM/Multiply>>",
            "<</ShadingType 2/ColorSpace/DeviceRGB/Coords[0 0 300 300]/Function 10 0 R>>",
            stream(
                "/PatternType 1/PaintType 1/TilingType 1/BBox[0 0 20 20]/XStep 30/YStep 30"
                    + "/Resources<<>>",
                "1 0 0 rg 2 2 12 12 re f"),
            "<</Type/OCG/Name(Guides)>>",
            "<</FunctionType 2/Domain[0 1]/C0[1 0 0]/C1[0 0 1]/N 1>>",
            "<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>");
    StringBuilder out = new StringBuilder("%PDF-1.7\n");
    StringBuilder places = new StringBuilder("0000000000 65535 f \n");
    for (int i = 0; i < objects.size(); i++) {
      places.append(String.format(Locale.ROOT, "%010d 00000 n \n", out.length()));
      out.append(i + 1).append(" 0 obj\n").append(objects.get(i)).append("\nendobj\n");
    }
    int xref = out.length();
    out.append("xref\n0 ").append(objects.size() + 1).append('\n').append(places);
    out.append("trailer <</Root 1 0 R/Size ").append(objects.size() + 1).append(">>\nstartxref\n");
    return out.append(xref).append("\n%%EOF\n").toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  private static String stream(String entries, String content) {
    return "<<" + entries + "/Length " + content.length() + ">>stream\n" + content + "\nendstream";
  }

  static List<byte[]> pictures() throws IOException {
    List<byte[]> all = new ArrayList<>();
    for (int type :
        new int[] {
          BufferedImage.TYPE_INT_RGB,
          BufferedImage.TYPE_INT_ARGB,
          BufferedImage.TYPE_BYTE_GRAY,
          BufferedImage.TYPE_BYTE_INDEXED,
          BufferedImage.TYPE_BYTE_BINARY
        }) {
      for (String format : List.of("png", "jpg", "gif", "bmp", "tif")) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        if (ImageIO.write(drawn(type), format, out)) {
          all.add(out.toByteArray());
        }
      }
    }
    return all;
  }

  private static BufferedImage drawn(int type) {
    BufferedImage image = new BufferedImage(64, 48, type);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 64, 48);
    g.setColor(new Color(30, 60, 140));
    g.setStroke(new BasicStroke(6));
    g.drawOval(8, 8, 30, 30);
    g.setColor(new Color(180, 40, 30));
    g.fillPolygon(new int[] {34, 60, 50}, new int[] {8, 20, 44}, 3);
    g.dispose();
    return image;
  }

  /** Bytes of a picture, signs of anything else; a tenth of those as bytes too. */
  static byte[] spoilt(byte[] file, Random random) {
    boolean pixels = file[0] != '<' && file[0] != '%';
    if (pixels || random.nextInt(10) == 0) {
      return new ByteMutator(random).spoil(file);
    }
    boolean svg = file[0] == '<';
    var as = svg ? StandardCharsets.UTF_8 : StandardCharsets.ISO_8859_1;
    List<String> snippets = svg ? SNIPPETS : List.of();
    return new TextMutator(random, snippets).spoil(new String(file, as)).getBytes(as);
  }

  @Override
  public byte[] input(Random random) {
    return spoilt(files.get(random.nextInt(files.size())), random);
  }

  @Override
  public List<Message> read(byte[] input) throws IOException {
    Path file = Files.write(scratch.resolve("graphic.bin"), input);
    StencilSpec spec = StencilSpec.forRoll(Length.parse("610 mm").orThrow());
    Result<GraphicReader.Reading> read =
        GraphicReader.read(file, WIDTH, spec, new GraphicSettings(1, TraceSettings.TOLD, Map.of()));
    if (read instanceof Result.Refused<GraphicReader.Reading> bad) {
      return bad.refusals().stream().map(Refusal::message).toList();
    }
    List<Message> said = new ArrayList<>();
    read.orThrow().artwork().warnings().forEach(w -> said.add(w.message()));
    if (stencil) {
      InlayPlan.of(read.orThrow().graphic(), spec, InlayContext.graphicAlone());
    }
    return said;
  }
}
