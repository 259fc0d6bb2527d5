package slabwright.inlay.artwork;

import java.awt.geom.Dimension2D;
import org.apache.batik.bridge.ExternalResourceSecurity;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.bridge.NoLoadScriptSecurity;
import org.apache.batik.bridge.ScriptSecurity;
import org.apache.batik.bridge.UserAgentAdapter;
import org.apache.batik.util.ParsedURL;
import slabwright.inlay.artwork.ArtworkWarning.Kind;

/** What the SVG library asks of its surroundings: no network, no files, no scripts, our fonts. */
final class SceneAgent extends UserAgentAdapter {
  private final Page page;
  private final FontBook fonts;
  private final Notes notes;

  SceneAgent(Page page, FontBook fonts, Notes notes) {
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
    return "'" + FontBook.NO_NAME + "'";
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
    notes.add(Kind.STYLE_LEFT_OUT, "a part is not understood and left out: " + Scene.plain(e));
  }

  @Override
  public void displayError(String message) {
    notes.add(Kind.STYLE_LEFT_OUT, "a part is not understood and left out: " + message);
  }

  @Override
  public void displayMessage(String message) {
    // progress reports of the library are of no interest
  }
}
