package slabwright.pdfin.painted;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDPropertyList;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentMembershipDictionary;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;

/**
 * Which layers (optional content) are switched off: ISO 32000-1, section 8.11. Visibility
 * expressions are not read; the policy that must stand beside them is.
 */
final class OptionalContent {
  private final Optional<PDOptionalContentProperties> properties;

  OptionalContent(PDDocumentCatalog catalog) {
    this.properties = Optional.ofNullable(catalog.getOCProperties());
  }

  boolean isHidden(COSDictionary layer) {
    return properties.isPresent() && layer != null && isHidden(PDPropertyList.create(layer));
  }

  private boolean isHidden(PDPropertyList layer) {
    if (layer instanceof PDOptionalContentGroup group) {
      return !properties.orElseThrow().isGroupEnabled(group);
    }
    return layer instanceof PDOptionalContentMembershipDictionary many && isHidden(many);
  }

  private boolean isHidden(PDOptionalContentMembershipDictionary many) {
    List<Boolean> hidden = new ArrayList<>();
    for (PDPropertyList one : many.getOCGs()) {
      if (one instanceof PDOptionalContentGroup) {
        hidden.add(isHidden(one));
      }
    }
    if (hidden.isEmpty()) {
      return false;
    }
    COSName policy = many.getVisibilityPolicy();
    if (COSName.ALL_ON.equals(policy)) {
      return hidden.contains(true);
    }
    if (COSName.ALL_OFF.equals(policy)) {
      return hidden.contains(false);
    }
    return COSName.ANY_OFF.equals(policy) ? !hidden.contains(true) : !hidden.contains(false);
  }
}
