package reglet.drafting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import reglet.model.Office;
import reglet.model.UnusableInput;

/** Templates come from outside: they print what they are given, and reach nothing else. */
class OfficeTemplateTest {
    private static final Map<String, Object> MODEL = Map.of("job", Map.of("title", "Clinic", "note", ""), "office",
        Map.of("name", "Quay", "address", List.of("14 Lantern Row", "Northquay")));

    private static Office office(String template) {
        return new Office("office", "Quay", List.of(), Optional.empty(), Office.Paper.LETTER, Map.of(), Map.of(Office.HEADER, template));
    }

    private static String fill(String template) throws UnusableInput {
        return OfficeTemplate.fill(office(template), Office.HEADER, MODEL);
    }

    private static String refused(String template) {
        return assertTimeoutPreemptively(Duration.ofSeconds(10), () -> assertThrows(UnusableInput.class, () -> fill(template))
            .getMessage());
    }

    @Test
    void aTemplatePrintsChoosesAndRepeats() throws Exception {
        assertEquals("CLINIC: 14 Lantern Row; Northquay", fill("${job.title?upper_case}: <#list office.address as line>${line}<#sep>; "
            + "</#list>"
            + "<#if job.note?has_content>never</#if>"));
    }

    @Test
    void whatTheModelSaysIsNeverMarkup() throws Exception {
        Map<String, Object> hostile = Map.of("job", Map.of("title", "# <b>*x*</b> [a](b) `c` ${d} <#if>\n- e"));
        assertEquals("\\# \\<b\\>\\*x\\*\\</b\\> \\[a\\]\\(b\\) \\`c\\` \\$\\{d\\} \\<\\#if\\> \\- e",
            OfficeTemplate.fill(office("${job.title}"), Office.HEADER, hostile));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
        "${\"freemarker.template.utility.Execute\" ? new()(\"id\")}",
        "${\"freemarker.template.utility.Execute\"?<#-- hidden -->new()(\"id\")}",
        "${\"}\"}${\"freemarker.template.utility.Execute\"?new()(\"id\")}",
        "${\"${'freemarker.template.utility.Execute'?new()('id')}\"}",
        "${job?api.class}",
        "${job.getClass()}",
        "${\"1+1\"?eval}",
        "<#assign x = \"${1}\"?interpret><@x/>",
        "<#include \"/etc/passwd\">",
        "<#include \"../office.yaml\">",
        "<#include \"file:///etc/passwd\">",
        "<#import \"/etc/passwd\" as p>",
        "<#macro m><@m/></#macro><@m/>",
        "<#function f x><#return f(x)></#function>${f(1)}",
        "<#assign s = \"x\">",
        "<#setting locale=\"de\">",
        "<#attempt>x<#recover>y</#attempt>",
        "<#stop \"x\">",
        "${.data_model?keys?join(',')}",
        "${\"x\"?left_pad(2000000000)}",
        "${(1..2000000000)?join(',')}",
        "${\"aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa!\"?matches(\"(a+)+\")?size}",
        "<#ftl output_format=\"HTML\">x",
        "<#noautoesc>${job.title}</#noautoesc>",
        "${job.title?no_esc}"})
    void nothingOutsideIsReached(String template) {
        String message = refused(template);
        assertTrue(message.startsWith("office/header.ftl"), message);
    }

    @ParameterizedTest
    @ValueSource(strings = {"<#list 1.. as x></#list>", "<#list 1..2000000000 as x></#list>",
        "<#list 1.. as x><#list 1.. as y><#if x == 0>z</#if></#list></#list>"})
    void endlessWorkIsStopped(String template) {
        assertTrue(refused(template).contains("did not end within 2 seconds"));
    }

    @Test
    void hugeOutputIsStopped() {
        assertTrue(refused("<#list 1.. as x>long line </#list>").contains("prints more than 20000 characters"));
        assertTrue(refused("x".repeat(20_001)).contains("has 20001 characters"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "One ${jobb.title}          | office/header.ftl:1:7: \"jobb\" is not known or empty; expected one of: job, office",
        "One ${job.titel}           | office/header.ftl:1:7: \"job.titel\" is not known or empty",
        "<#if job.title>x</#if>     | office/header.ftl:1:6:",
        "One ${job.title            | office/header.ftl:1:",
        "One <#list a as b>         | office/header.ftl:1:",
        "One ${job.title?url}       | office/header.ftl:1:17: \"?url\" can't be used here; expected one of: cap_first",
        "One <#include \"a\">       | office/header.ftl:1:6: \"<#include\" can't be used here; expected one of: if"})
    void whatIsWrongIsSaidWithItsPlace(String template, String said) {
        String message = refused(template);
        assertTrue(message.startsWith(said), message);
    }
}
