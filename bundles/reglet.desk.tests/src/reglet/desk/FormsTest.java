package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Change;
import reglet.model.Component;
import reglet.model.ProductData;
import reglet.model.Rule;
import reglet.model.Submittal;

/** What is printed for programs is what the published schemas say; a validator from the registry is the judge. */
class FormsTest {

    static void valid(String schema, JsonElement form) throws Exception {
        try (InputStream in = Forms.class.getResourceAsStream("schema/" + schema + ".json")) {
            JsonSchema judge = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(in);
            Set<ValidationMessage> messages = judge.validate(Forms.text(form), InputFormat.JSON);
            assertEquals(Set.of(), messages);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"harbour-clinic", "mesa-library", "orchard-row"})
    void findingsRegistersAndComparisonsKeepToTheirSchemas(String name) throws Exception {
        OpenJob job = Samples.open(name);
        valid("check", Forms.check(job.job(), job.checked()));
        for (String section : job.job().sections()) {
            valid("register", Forms.register(section, job.register(section)));
        }
        for (Submittal submittal : job.job().submittals()) {
            valid("compare", Forms.comparison(job, job.compare(submittal)));
            valid("review", ReviewReports.form(job, submittal));
            valid("since", Reviews.form(Reviews.since(job, submittal, submittal)));
        }
        for (Component component : job.pack().components()) {
            List<String> products = job.job().products().stream().filter(product -> product.component().equals(component.id()))
                .map(ProductData::id).toList();
            if (!products.isEmpty()) {
                valid("candidates", Reviews.form(job, Reviews.candidates(job, products)));
            }
        }
        JsonArray explained = new JsonArray();
        for (Rule rule : job.pack().rules()) {
            explained.addAll(Forms.explanations(rule, job.explain(rule.id())));
        }
        valid("explain", explained);
        valid("worksheets", WorksheetForms.worksheets(job.worksheets()));
        valid("check", RemedyForms.check(job));
        valid("try", RemedyForms.tried(job, job.after(List.of(new Change("W1.mat", "filament-1-4")))));
        valid("propose", RemedyForms.proposal(job.propose()));
    }

    @Test
    void whatWorksheetsAskForKeepsToItsSchema() throws Exception {
        valid("worksheet-inputs", WorksheetForms.names(Calculations.names()));
        for (String name : Calculations.names()) {
            valid("worksheet-inputs", WorksheetForms.inputs(name));
        }
    }

    /** The example that stands in the form's definition: 115 mph, exposure B, 30 ft, zone 5, 10 ft²; ASCE 7-16, chapter 30. */
    @Test
    void aWorksheetRunAlonePrintsWhatTheFormPromises() throws Exception {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("speed", "115 mph");
        typed.put("exposure", "B");
        typed.put("height", "30 ft");
        typed.put("zone", "5");
        typed.put("area", "10 ft2");
        JsonObject form = WorksheetForms.worksheets(List.of(Calculations.run("wind", typed, "typed")));
        valid("worksheets", form);
        JsonObject wind = form.getAsJsonArray("worksheets").get(0).getAsJsonObject();
        JsonObject speed = wind.getAsJsonObject("inputs").getAsJsonObject("speed");
        assertEquals(51.41, speed.get("value").getAsDouble(), 0.005);
        assertEquals("m/s", speed.get("unit").getAsString());
        assertEquals("115 mph", speed.get("text").getAsString());
        JsonObject qh = null;
        for (JsonElement step : wind.getAsJsonArray("steps")) {
            if (step.getAsJsonObject().get("symbol").getAsString().equals("qh")) {
                qh = step.getAsJsonObject();
            }
        }
        // 964.3 Pa: 0.00256 psf/mph², Kz 0.70 (Table 26.10-1), Kd 0.85, worked in full by hand
        assertEquals(965, qh.get("value").getAsDouble(), 2);
        assertEquals("Pa", qh.get("unit").getAsString());
        assertEquals(-914.5, wind.getAsJsonObject("results").getAsJsonObject("pressure.out").get("value").getAsDouble(), 2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"orchard-row"})
    void numbersAreInSiWithTheUcumCodeBesideThem(String name) throws Exception {
        OpenJob job = Samples.open(name);
        JsonObject lath = null;
        for (JsonElement finding : Forms.check(job.job(), job.checked()).getAsJsonArray("findings")) {
            if (finding.getAsJsonObject().get("rule").getAsString().equals("lath.weight")) {
                lath = finding.getAsJsonObject().getAsJsonObject("facts").getAsJsonObject("lath.weight");
            }
        }
        assertTrue(lath != null, "the sample's light lath is not found");
        // 2.5 lb/yd2 = 2.5 x 0.45359237 kg / 0.83612736 m2 (NIST SP 811, exact factors)
        assertEquals(2.5 * 0.45359237 / 0.83612736, lath.get("value").getAsDouble(), 1e-9);
        assertEquals("kg/m2", lath.get("unit").getAsString());
        assertEquals("2.5 lb/yd²", lath.get("text").getAsString());
    }
}
