package slabwright.inlay.artwork.batik;

import java.awt.geom.Dimension2D;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.util.ParsedURL;
import slabwright.inlay.artwork.ArtworkPage;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/** What the SVG library asks of its surroundings: no network, no files, no scripts, our fonts. */
final class SceneUserAgent extends UserAgentAdapter {
  private static final Pattern QUOTED = Pattern.compile("\\(\"(.{1,80}?)\"\\)", Pattern.DOTALL);

  private final ArtworkPage page;
  private final FontResolver fonts;
  private final WarningCollector notes;

  SceneUserAgent(ArtworkPage page, FontResolver fonts, WarningCollector notes) {
    this.page = page;
    this.fonts = fonts;
    this.notes = notes;
    addStdFeatures();
  }

  @Override
  public Dimension2D getViewportSize() {
    return new Dimension2D() {
      @Override
      public double getWidth() {
        return page.width();
      }

      @Override
      public double getHeight() {
        return page.height();
      }

      @Override
      public void setSize(double width, double height) {
        throw new UnsupportedOperationException();
      }
    };
  }

  @Override
  public FontFamilyResolver getFontFamilyResolver() {
    return fonts;
  }

  @Override
  public String getDefaultFontFamily() {
    return "'" + FontResolver.NO_NAME + "'";
  }

  @Override
  public ExternalResourceSecurity getExternalResourceSecurity(ParsedURL resource, ParsedURL doc) {
    return () -> {
      if (resource == null || !"data".equals(resource.getProtocol())) {
        throw new SecurityException("only data inside the file may be read");
      }
    };
  }

  @Override
  public void checkLoadExternalResource(ParsedURL resource, ParsedURL doc) {
    getExternalResourceSecurity(resource, doc).checkLoadExternalResource();
  }

  @Override
  public ScriptSecurity getScriptSecurity(String type, ParsedURL script, ParsedURL doc) {
    return new NoLoadScriptSecurity(type);
  }

  @Override
  public void checkLoadScript(String type, ParsedURL script, ParsedURL doc) {
    getScriptSecurity(type, script, doc).checkLoadScript();
  }

  @Override
  public void displayError(Exception e) {
    displayError(String.valueOf(e.getMessage()));
  }

  @Override
  public void displayError(String message) {
    // the library's own words are for programmers; what it quotes is the graphic's
    Matcher quoted = QUOTED.matcher(message);
    notes.add(
        Kind.STYLE_LEFT_OUT,
        quoted.find()
            ? Message.of("inlay.scene-user-agent.style-not-understood", quoted.group(1))
            : Message.of("inlay.scene-user-agent.part-not-understood"));
  }

  @Override
  public void displayMessage(String message) {
    // progress reports of the library are of no interest
  }
}
