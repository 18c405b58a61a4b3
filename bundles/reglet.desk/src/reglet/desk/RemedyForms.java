package reglet.desk;

import java.util.List;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;

import reglet.model.Change;
import reglet.model.Finding;
import reglet.model.Proposal;
import reglet.model.Remedies;
import reglet.model.Remedy;
import reglet.model.WhatIf;

/** What could be done, as the commands print it for programs; as {@link Forms} has it. */
public final class RemedyForms {

    private RemedyForms() {
    }

    /** The findings of a job with the remedies of each. */
    public static JsonObject check(OpenJob job) {
        JsonObject form = Forms.check(job.job(), job.checked());
        JsonArray findings = form.getAsJsonArray("findings");
        for (int i = 0; i < findings.size(); i++) {
            findings.get(i).getAsJsonObject().add("remedies", remedies(job.remedies(job.checked().findings().get(i))));
        }
        return form;
    }

    private static JsonArray remedies(Remedies remedies) {
        JsonArray all = new JsonArray();
        for (Remedy remedy : remedies.all()) {
            JsonObject one = new JsonObject();
            JsonArray changes = new JsonArray();
            for (Change change : remedy.changes()) {
                JsonObject made = new JsonObject();
                made.addProperty("set", change.set());
                made.addProperty("to", change.to());
                changes.add(made);
            }
            one.add("changes", changes);
            one.addProperty("cost", remedy.cost());
            // the rules, each once: where they were found stands in the findings
            one.add("clears", Forms.strings(remedy.clears().stream().map(key -> key.substring(0, key.indexOf(' '))).distinct().toList()));
            all.add(one);
        }
        return all;
    }

    /** The findings before and after changes. */
    public static JsonObject tried(OpenJob before, OpenJob after) {
        JsonObject form = new JsonObject();
        form.add("before", Forms.findings(before.checked().findings()));
        form.add("after", Forms.findings(after.checked().findings()));
        return form;
    }

    /** What each option not taken would clear and bring. */
    public static JsonArray whatIf(List<WhatIf> each) {
        JsonArray all = new JsonArray();
        for (WhatIf one : each) {
            JsonObject form = new JsonObject();
            form.addProperty("wall", one.wall());
            form.addProperty("component", one.component());
            form.addProperty("option", one.option());
            form.addProperty("fits", one.fits());
            form.add("clears", Forms.findings(one.clears()));
            form.add("brings", Forms.findings(one.brings()));
            all.add(form);
        }
        return all;
    }

    /** A proposal, or what keeps one from being. */
    public static JsonObject proposal(Proposal proposal) {
        JsonObject form = new JsonObject();
        if (!proposal.stands()) {
            JsonArray together = new JsonArray();
            for (Proposal.Fixed fixed : proposal.together()) {
                JsonObject one = new JsonObject();
                one.addProperty("wall", fixed.wall());
                one.addProperty("component", fixed.component());
                one.addProperty("option", fixed.option());
                together.add(one);
            }
            form.add("cannot stand together", together);
            form.addProperty("smallest", proposal.smallest());
            return form;
        }
        JsonObject walls = new JsonObject();
        proposal.picks().forEach((wall, picks) -> {
            JsonObject components = new JsonObject();
            picks.forEach((component, pick) -> {
                JsonObject one = new JsonObject();
                one.addProperty("option", pick.option());
                one.addProperty("status", "proposed");
                one.add("because", Forms.strings(pick.because()));
                components.add(component, one);
            });
            walls.add(wall, components);
        });
        form.add("walls", walls);
        form.addProperty("cost", proposal.cost());
        form.addProperty("optimal", proposal.optimal());
        if (!proposal.left().isEmpty()) {
            form.add("left", Forms.strings(proposal.left().stream().map(Finding::key).toList()));
        }
        return form;
    }
}
