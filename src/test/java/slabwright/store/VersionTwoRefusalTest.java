package slabwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slabwright.site.Refusal;

/** Each way a field of version 2 can be wrong gives one sentence. */
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
    return PlanFile.parse(text.replace('\'', '"')) instanceof PlanFile.Reading.Bad bad
        ? bad.faults().stream().map(Refusal::sentence).toList()
        : List.of();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'built':{'year':58} | The year built is 58.0",
        "'coatDivisions':[{'line':[[1,1],[1,1]]}] | has no length; give at least 2",
        "'stops':[{'kind':'asbestos'},{'kind':'asbestos'}] | stands twice",
        "'stops':[{'kind':'mould'}] | must be one of: asbestos, lead-paint",
        "'stops':[{'kind':'asbestos','state':'cleared','by':'K','on':'May'}] | write a date such as",
        "'stops':[{'kind':'asbestos','state':'cleared','by':'K'}] | lacks \"on\"",
        "'stops':[{'kind':'asbestos','state':'cleared','by':' ','on':'2026-12-01'}] | by nobody",
        "'stops':[{'kind':'asbestos','state':'open','by':'K'}] | Field \"by\"",
        "'holds':[{'step':'grind','reason':''}] | write why it waits",
        "'holds':[{'step':'Grind it','reason':'x'}] | must be a word in lower case",
        "'holds':[{'step':'grind','reason':'x'},{'step':'grind','reason':'y'}] | is held twice",
        "'taped':['wall A-B 3 m','a\\nb'] | Taped line 2 of \"A\" holds a line break",
        "'machines':[{'id':'m','body':700,'grinding':600,'length':0}] | The length of machine",
        "'machines':[{'id':'m','body':700,'grinding':600,'passing':-1}] | The passing clearance",
        "'doorways':[{'id':'d','name':'D','wall':0,'offset':9,'width':900,'clear':950}] | larger than its opening",
        "'doorways':[{'id':'d','name':'D','wall':0,'offset':9,'width':900,'leadsTo':{'area':'b','doorway':'e'}}] | which is not there",
        "'doorways':[{'id':'d','name':'D','wall':0,'offset':9,'width':900,'leadsTo':{'area':'a','doorway':'d'}}] | its own floor area",
        "'marks':[{'id':'t','kind':'trench','lie':'low','depth':0,'form':{'shape':'place','at':[9,9]}}] | The depth of mark",
        "'marks':[{'id':'t','kind':'trench','lie':'flush','depth':5,'form':{'shape':'place','at':[9,9]}}] | Field \"depth\"",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'page':0}] | The page of the graphic",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'picture':{'file':'../a.png','colours':3}}] | lies outside the plan's folder",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'picture':{'file':'a.png','colours':1}}] | The number of traced colours",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'picture':{'file':'a.png','colours':3,'roundness':2}}] | The roundness of corners",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600},'picture':{'file':'a.png','colours':3,'background':'white'}}] | must be written as #rrggbb",
        "'inlays':[{'id':'i','graphic':'a.svg','middle':[0,0],'width':500,'stencil':{'roll':600,'changes':{'blanks':[{'colour':'#ff0000','corner':[0,0],'width':0,'height':9}]}}}] | The width of a local blank",
      })
  void of_an_area(String field, String said) {
    assertThat(faults("", field)).singleElement().asString().contains(said);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "'clientPhoto':{'file':'C:/a.jpg','points':[]}, | lies outside the plan's folder",
        "'crew':{'language':'Spanish'}, | write a tag such as en or es-MX",
        "'crew':{'persons':[{'name':''}]}, | write a name or initials",
        "'crew':{'tools':{'vacuum':-1}}, | The number of tool \"vacuum\"",
        "'shopBook':'/books/a.json', | The shop book \"/books/a.json\" lies outside",
        "'photos':[{'file':'../a.jpg','area':'a','corner':0}], | The photo \"../a.jpg\" lies outside",
        "'photos':[{'file':'a.jpg','area':'a','corner':-1}], | corners count from 0",
        "'photos':[{'file':'a.jpg','area':'a'}], | either a \"mark\" or a \"corner\"",
        "'coatReadings':[{'area':'a','product':'p','at':'noon'}], | write a date and time such as",
        "'coatReadings':[{'area':'a','product':'p','at':'2026-12-07T08:00','slabC':140}], | The slab's °C read at",
        "'coatReadings':[{'area':'a','product':'p','at':'2026-12-07T08:00','humidity':0}], | The relative humidity in % read at",
        "'forecast':[{'on':'2026-12-07'},{'on':'2026-12-07'}], | is forecast twice",
        "'forecast':[{'on':'2026-12-07','lowC':9,'highC':3}], | swap or correct them",
        "'forecast':[{'on':'2026-12-07','rain':101}], | The chance of rain in %",
        "'forecast':[{'lowC':9}], | lacks \"on\"",
      })
  void of_a_site(String field, String said) {
    assertThat(faults(field, "")).anySatisfy(s -> assertThat(s).contains(said));
  }

  @Test
  void a_photo_with_three_floor_points_is_refused() {
    String point = "{'picture':[1,2],'floor':[3,4]}";
    String photo =
        "'clientPhoto':{'file':'a.jpg','points':[" + point + "," + point + "," + point + "]},";
    assertThat(faults(photo, "")).containsExactly("The client's photo has 3 floor points; give 4.");
  }
}
