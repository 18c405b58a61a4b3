package reglet.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import reglet.model.Calculation;
import reglet.model.JobWorksheets;
import reglet.model.JobWorksheets.Undone;
import reglet.model.Meeting;
import reglet.model.Scope;
import reglet.model.WallType;
import reglet.model.Worksheet;
import reglet.rules.Outcome.Failed;
import reglet.rules.Outcome.Known;
import reglet.rules.Outcome.Missing;

/** Makes every worksheet that a pack asks for in a job. */
final class WorksheetRuns {
    private final Inquiry inquiry;
    private final List<Worksheet> made = new ArrayList<>();
    private final Set<Undone> undone = new LinkedHashSet<>();

    private WorksheetRuns(Inquiry inquiry) {
        this.inquiry = inquiry;
    }

    static JobWorksheets of(Inquiry inquiry) {
        WorksheetRuns runs = new WorksheetRuns(inquiry);
        for (WallType wall : inquiry.job.walls()) {
            inquiry.book.pack.calculations().forEach(calculation -> runs.each(calculation, wall));
        }
        return new JobWorksheets(runs.made, new ArrayList<>(runs.undone));
    }

    private void each(Calculation calculation, WallType wall) {
        List<Map<String, String>> picks = Setting.picks(wall, inquiry.book.components(calculation));
        if (calculation.each() == Scope.WALL) {
            all(calculation, picks.stream().map(picked -> inquiry.setting(wall, picked)).toList());
            return;
        }
        for (Meeting meeting : wall.meetings()) {
            if (meeting.subject().equals(calculation.subject())) {
                all(calculation, picks.stream().map(picked -> inquiry.setting(wall, meeting, picked)).toList());
            }
        }
    }

    /** One worksheet for all accepted alternatives that give the same; where they differ, each says what it was made with. */
    private void all(Calculation calculation, List<Setting> settings) {
        Map<Worksheet, Setting> different = new LinkedHashMap<>();
        settings.forEach(setting -> one(calculation, setting).ifPresent(worksheet -> different.putIfAbsent(worksheet, setting)));
        different.forEach((worksheet, setting) -> made.add(different.size() == 1 ? worksheet
            : worksheet.titled(worksheet.title() + ", with " + String.join(", ", apart(setting, different.values())))));
    }

    /** Titles of the options that are not picked in all of the settings. */
    private List<String> apart(Setting setting, Collection<Setting> all) {
        return setting.picks().entrySet().stream()
            .filter(pick -> all.stream().anyMatch(other -> !pick.getValue().equals(other.picks().get(pick.getKey()))))
            .map(pick -> inquiry.book.component(pick.getKey()).option(pick.getValue()).orElseThrow().title()).toList();
    }

    private Optional<Worksheet> one(Calculation calculation, Setting setting) {
        Outcome outcome = inquiry.worksheet(calculation, setting);
        if (outcome instanceof Known known) {
            return Optional.of((Worksheet) known.value());
        }
        if (outcome instanceof Missing missing) {
            undone.add(undone(calculation, setting, List.copyOf(new TreeSet<>(missing.names())), ""));
        } else if (outcome instanceof Failed failed) {
            undone.add(undone(calculation, setting, List.of(), failed.why()));
        }
        return Optional.empty();
    }

    private static Undone undone(Calculation calculation, Setting setting, List<String> missing, String why) {
        return new Undone(calculation.worksheet(), calculation.title(), setting.wallId(),
            calculation.each() == Scope.MEETING ? setting.meetingId() : "", missing, why);
    }
}
