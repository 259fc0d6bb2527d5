package slabwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each way a field of version 2 can be wrong is refused with its key. */
class VersionTwoRefusalTest {
  private static final String SQUARE =
      "\"id\":\"a\",\"name\":\"A\",\"outline\":[{\"at\":[0,0]},{\"at\":[9000,0]},{\"at\":[9000,9000]},{\"at\":[0,9000]}]";

  private static List<String> faults(String site, String area) {
    String text =
        "{\"version\":2,\"name\":\"S\","
            + site
            + "\"areas\":[{"
            + SQUARE
            + (area.isEmpty() ? "" : ",")
            + area
            + "}]}";
    return FaultKeys.of(PlanFile.parse(text.replace('\'', '"')));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'built':{'year':58} | site.area-details-rules.the-year-built 58.0",
        "'coatDivisions':[{'line':[[1,1],[1,1]]}] | site.area-details-rules.line-that-divides-a-coat",
        "'stops':[{'kind':'asbestos'},{'kind':'asbestos'}] | site.area-details-rules.stop-stands-twice",
        "'stops':[{'kind':'mould'}] | store.field-reader.is-it-must-be-one",
        "'stops':[{'kind':'asbestos','state':'cleared','by':'K','on':'May'}] | store.field-reader.a-date-such-as",
        "'stops':[{'kind':'asbestos','state':'cleared','by':'K'}] | store.field-reader.lacks-add-it",
        "'stops':[{'kind':'asbestos','state':'cleared','by':' ','on':'2026-12-01'}] | site.area-details-rules.stop-settled-by-nobody",
        "'stops':[{'kind':'asbestos','state':'open','by':'K'}] | store.field-reader.field-at-is-not-known by",
        "'holds':[{'step':'grind','reason':''}] | site.area-details-rules.hold-has-no-reason",
        "'holds':[{'step':'Grind it','reason':'x'}] | site.area-details-rules.held-step-is-no-word",
        "'holds':[{'step':'grind','reason':'x'},{'step':'grind','reason':'y'}] | site.area-details-rules.step-is-held-twice",
        "'taped':['wall A-B 3 m','a\\nb'] | site.area-details-rules.taped-line-of-holds-a 2 A",
        "'machines':[{'id':'m','body':700,'grinding':600,'length':0}] | site.detail-rules.the-length",
        "'machines':[{'id':'m','body':700,'grinding':600,'passing':-1}] | site.detail-rules.the-passing-clearance",
        "'doorways':[{'id':'d','name':'D','wall':0,'offset':9,'width':900,'clear':950}] | site.outline-rules.the-clear-width-of-doorway-2",
        "'doorways':[{'id':'d','name':'D','wall':0,'offset':9,'width':900,'leadsTo':{'area':'b','doorway':'e'}}] | site.job-rules.leads-to-doorway-of-floor",
        "'doorways':[{'id':'d','name':'D','wall':0,'offset':9,'width':900,'leadsTo':{'area':'a','doorway':'d'}}] | site.job-rules.leads-to-its-own-floor",
        "'doorways':[{'id':'d','name':'D','wall':0,'offset':9,'width':900,'wayIn':true,'sealed':true}] | site.job-rules.sealed-way-in",
        "'marks':[{'id':'t','kind':'trench','lie':'low','depth':0,'form':{'shape':'place','at':[9,9]}}] | site.mark-rules.depth",
        "'marks':[{'id':'t','kind':'trench','lie':'flush','depth':5,'form':{'shape':'place','at':[9,9]}}] | store.field-reader.field-at-is-not-known depth",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'page':0}] | site.inlay-spec-rules.the-page-of-the-graphic",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'picture':{'file':'../a.png','colours':3}}] | site.file-rules.traced-picture-lies-outside",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'picture':{'file':'a.png','colours':1}}] | site.inlay-spec-rules.the-number-of-traced-colours",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'picture':{'file':'a.png','colours':3,'roundness':2}}] | site.inlay-spec-rules.the-roundness-of-corners",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'picture':{'file':'a.png','colours':3,'background':'white'}}] | site.file-rules.the-colour-must-be-written",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600,'changes':{'blanks':[{'colour':'#ff0000','corner':[0,0],'width':0,'height':9}]}}}] | site.inlay-spec-rules.the-width-of-a-local",
      })
  void of_an_area(String field, String key) {
    assertThat(faults("", field)).singleElement().asString().contains(key);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'clientPhoto':{'file':'C:/a.jpg','points':[]}, | site.file-rules.clients-photo-lies-outside",
        "'crew':{'language':'Spanish'}, | site.job-rules.the-crews-language-is-write",
        "'crew':{'persons':[{'name':''}]}, | site.job-rules.person-of-the-crew-has",
        "'crew':{'tools':{'vacuum':-1}}, | site.job-rules.the-number-of-tool vacuum",
        "'shopBook':'/books/a.json', | site.file-rules.shop-book-lies-outside /books/a.json",
        "'photos':[{'file':'../a.jpg','area':'a','corner':0}], | site.file-rules.photo-lies-outside ../a.jpg",
        "'photos':[{'file':'a.jpg','area':'a','corner':-1}], | site.job-rules.photo-is-pinned-to-corner",
        "'photos':[{'file':'a.jpg','area':'a'}], | store.job-codec.must-be-pinned-to-either",
        "'coatReadings':[{'area':'a','product':'p','at':'noon'}], | store.field-reader.a-date-and-time-such",
        "'coatReadings':[{'area':'a','product':'p','at':'2026-12-07T08:00','slabC':140}], | site.job-rules.the-slabs-c",
        "'coatReadings':[{'area':'a','product':'p','at':'2026-12-07T08:00','humidity':0}], | site.job-rules.humidity-read-at",
        "'forecast':[{'on':'2026-12-07'},{'on':'2026-12-07'}], | site.job-rules.the-day-is-forecast-twice",
        "'forecast':[{'on':'2026-12-07','lowC':9,'highC':3}], | site.job-rules.the-lowest-c-is-above",
        "'forecast':[{'on':'2026-12-07','rain':101}], | site.job-rules.the-chance-of-rain-in",
        "'forecast':[{'lowC':9}], | store.field-reader.lacks-add-it",
      })
  void of_a_site(String field, String key) {
    assertThat(faults(field, "")).anySatisfy(s -> assertThat(s).contains(key));
  }

  @Test
  void a_photo_with_three_floor_points_is_refused() {
    String point = "{'picture':[1,2],'floor':[3,4]}";
    String photo =
        "'clientPhoto':{'file':'a.jpg','points':[" + point + "," + point + "," + point + "]},";
    assertThat(faults(photo, "")).containsExactly("site.job-rules.the-clients-photo-has-floor 3");
  }
}
