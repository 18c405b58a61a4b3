package reglet.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.Set;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Rule;
import reglet.model.Submittal;

/** What is printed for programs is what the published schemas say; a validator from the registry is the judge. */
class FormsTest {

    private static void valid(String schema, JsonElement form) throws Exception {
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
        }
        JsonArray explained = new JsonArray();
        for (Rule rule : job.pack().rules()) {
            explained.addAll(Forms.explanations(rule, job.explain(rule.id())));
        }
        valid("explain", explained);
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
