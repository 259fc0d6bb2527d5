package slabwright.inlay.artwork;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import slabwright.units.Message;

/** What kind of file a graphic is, by its first bytes and never by its name. */
public enum GraphicFormat {
  /** Text, so perhaps SVG; its reader says what is wrong otherwise. */
  SVG,
  /** Packed with gzip, as SVGZ is. */
  PACKED,
  PDF,
  /** A picture of pixels. */
  PICTURE,
  POSTSCRIPT,
  DXF,
  ZIP,
  OFFICE,
  WEB_PAGE,
  FONT,
  METAFILE,
  LAYERED_PICTURE,
  PHONE_PICTURE,
  WEB_PICTURE,
  EMPTY,
  UNKNOWN;

  /** So many first bytes tell the format. */
  public static final int FIRST_BYTES = 1024;

  /** The kind of file that starts with these bytes. */
  public static GraphicFormat of(byte[] file) {
    if (file.length == 0) {
      return EMPTY;
    }
    // one character a byte, so that places agree
    String head =
        new String(file, 0, Math.min(FIRST_BYTES, file.length), StandardCharsets.ISO_8859_1);
    if (head.startsWith("\u001f\u008b")) {
      return PACKED;
    }
    if (isPicture(head)) {
      return PICTURE;
    }
    return binary(head).orElseGet(() -> text(file, head));
  }

  private static boolean isPicture(String head) {
    return head.startsWith("\u0089PNG")
        || head.startsWith("\u00ff\u00d8\u00ff")
        || head.startsWith("GIF8")
        || (head.startsWith("BM") && head.length() > 14 && head.charAt(6) == 0)
        || head.startsWith("II*\0")
        || head.startsWith("MM\0*");
  }

  private static Optional<GraphicFormat> binary(String head) {
    if (head.startsWith("%!PS") || head.startsWith("\u00c5\u00d0\u00d3\u00c6")) {
      // a PostScript file may carry the mark of a PDF in a comment
      return Optional.of(POSTSCRIPT);
    }
    if (head.contains("%PDF-")) {
      return Optional.of(PDF);
    }
    if (head.startsWith("PK\u0003\u0004") || head.startsWith("PK\u0005\u0006")) {
      return Optional.of(ZIP);
    }
    if (head.startsWith("\u00d0\u00cf\u0011\u00e0") || head.startsWith("{\\rtf")) {
      return Optional.of(OFFICE);
    }
    if (head.startsWith("OTTO") || head.startsWith("wOF") || head.startsWith("\0\u0001\0\0")) {
      return Optional.of(FONT);
    }
    if (head.startsWith("\u00d7\u00cd\u00c6\u009a") || head.startsWith(" EMF", 40)) {
      return Optional.of(METAFILE);
    }
    if (head.startsWith("RIFF") && head.startsWith("WEBP", 8)) {
      return Optional.of(WEB_PICTURE);
    }
    if (head.startsWith("8BPS")) {
      return Optional.of(LAYERED_PICTURE);
    }
    if (head.startsWith("ftyp", 4)) {
      return Optional.of(PHONE_PICTURE);
    }
    return head.length() > 30 && head.startsWith("DXF", 15) ? Optional.of(DXF) : Optional.empty();
  }

  private static GraphicFormat text(byte[] file, String head) {
    boolean wide = head.startsWith("\u00fe\u00ff") || head.startsWith("\u00ff\u00fe");
    String plain = head.replace("\0", "").toLowerCase(Locale.ROOT).stripLeading();
    if (plain.startsWith("<!doctype html") || plain.startsWith("<html")) {
      return WEB_PAGE;
    }
    String[] lines = plain.split("\\R", 3);
    if (lines.length > 1
        && (lines[0].strip().equals("0") || lines[0].strip().equals("999"))
        && !lines[1].contains("<")) {
      return DXF;
    }
    boolean marks = wide || plain.contains("<");
    boolean zeros = !wide && indexOfZero(file) >= 0 && !plain.startsWith("<");
    return zeros || (!marks && !isText(head)) ? UNKNOWN : SVG;
  }

  private static int indexOfZero(byte[] file) {
    byte[] head = Arrays.copyOf(file, Math.min(FIRST_BYTES, file.length));
    for (int i = 0; i < head.length; i++) {
      if (head[i] == 0) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isText(String head) {
    return head.chars().allMatch(c -> c >= ' ' || Character.isWhitespace(c));
  }

  /** What it is and what to ask for instead; empty for what is read. */
  public Optional<Message> refusal() {
    return switch (this) {
      case SVG, PACKED, PDF, PICTURE -> Optional.empty();
      case POSTSCRIPT -> Optional.of(Message.of("inlay.graphic-format.postscript"));
      case DXF -> Optional.of(Message.of("inlay.graphic-format.dxf"));
      case ZIP -> Optional.of(Message.of("inlay.graphic-format.zip"));
      case OFFICE -> Optional.of(Message.of("inlay.graphic-format.office"));
      case WEB_PAGE -> Optional.of(Message.of("inlay.graphic-format.web-page"));
      case FONT -> Optional.of(Message.of("inlay.graphic-format.font"));
      case METAFILE -> Optional.of(Message.of("inlay.graphic-format.metafile"));
      case LAYERED_PICTURE -> Optional.of(Message.of("inlay.graphic-format.layered-picture"));
      case PHONE_PICTURE -> Optional.of(Message.of("inlay.graphic-format.phone-picture"));
      case WEB_PICTURE -> Optional.of(Message.of("inlay.graphic-format.web-picture"));
      case EMPTY -> Optional.of(Message.of("inlay.graphic-format.empty"));
      case UNKNOWN -> Optional.of(Message.of("inlay.graphic-format.unknown"));
    };
  }
}
