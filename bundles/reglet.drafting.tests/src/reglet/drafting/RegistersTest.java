package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import reglet.model.Assembly;
import reglet.model.Enclosures;
import reglet.model.RegisterItem;
import reglet.model.RegisterItem.Kind;
import reglet.model.RegisterItem.Sort;
import reglet.model.Submittal;
import reglet.model.TextChange;
import reglet.model.UnusableInput;

class RegistersTest {
    @Test
    void registerListsWhatTheSectionAsksForWithItsParagraph() throws UnusableInput {
        assertEquals(List.of(
            RegisterItem.of("lath.product-data", Sample.SECTION, "1.3.A", "Lath", "lath", Kind.ACTION, Sort.NONE, "product data"),
            RegisterItem.of("lath.sample", Sample.SECTION, "1.3.B", "Lath", "lath", Kind.ACTION, Sort.NONE, "sample")),
                register(Sample.small()));
    }

    @Test
    void whatWasHandedInSaysSo() throws UnusableInput {
        Sample sample = Sample.small();
        sample.submittals.add(new Submittal("04-73-00-01", Sample.SECTION, List.of("lath.sample"), List.of(), "", "", "", List.of(), "",
            List.of(), "",
            Enclosures.NONE, Optional.empty(), Sample.AT));
        assertEquals(List.of("open", "handed in: 04-73-00-01"), register(sample).stream().map(RegisterItem::status).toList());
    }

    @Test
    void struckParagraphsAreNotAskedFor() throws UnusableInput {
        assertEquals(List.of("lath.sample"),
            register(Sample.small().change(TextChange.Kind.STRIKE, "lath.product-data", "")).stream().map(RegisterItem::id).toList());
    }

    @Test
    void entryWithoutComponentIsAboutWhatItsTextStartsWith() throws UnusableInput {
        RegisterItem item = register(Sample.small().entry("mockup", "", Kind.INFORMATIONAL, "report", "Mock-up: a report.")).get(2);
        assertEquals("Mock-up", item.item());
        assertEquals("1.4.A", item.paragraph());
    }

    @Test
    void kindWithoutArticleStandsWithTheOtherSubmittals() throws UnusableInput {
        RegisterItem item = register(Sample.small().entry("warranty", "", Kind.CLOSEOUT, "warranty", "Warranty: the maker's.")).get(2);
        assertEquals("1.3.C", item.paragraph());
        assertEquals(Kind.CLOSEOUT, item.kind());
    }

    @Test
    void csvQuotesWhatNeedsIt() {
        assertEquals("section,paragraph,item,kind,sort,code,sends,sender,status,alternate,submit by,on site,lead,review,days,note,id\r\n"
            + "04 73 00,1.3.A,\"Lath, \"\"ribbed\"\"\",action,,,\"two\nlines\",,open,,,,,,,,a\r\n",
            Registers.csv(List.of(RegisterItem.of("a", Sample.SECTION, "1.3.A", "Lath, \"ribbed\"", "", Kind.ACTION, Sort.NONE,
                "two\nlines"))));
    }

    private static List<RegisterItem> register(Sample sample) throws UnusableInput {
        Assembly assembly = sample.assembly();
        return Registers.of(assembly, List.of(Drafter.draft(assembly, Sample.SECTION, ""))).items();
    }
}
