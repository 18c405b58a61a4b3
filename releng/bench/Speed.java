package bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

import reglet.details.Details;
import reglet.model.Assembly;
import reglet.model.Change;
import reglet.model.Checked;
import reglet.model.Drawing;
import reglet.model.Job;
import reglet.model.JobWorksheets;
import reglet.model.Pack;
import reglet.model.Proposal;
import reglet.model.Remedies;
import reglet.model.WallType;
import reglet.model.WhatIf;
import reglet.rules.Check;
import reglet.rules.Engine;
import reglet.store.Jobs;
import reglet.store.Packs;
import reglet.worksheets.Worksheets;

/** How long the pure functions take, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class Speed {
    private Engine engine;
    private Check kept;
    private Check mistakes;
    private Check bare;
    private Assembly assembly;
    private Job oneWall;
    private Job tenWalls;
    private Job twentyWalls;

    @Setup
    public void read() throws Exception {
        Path root = Path.of(System.getProperty("reglet.root"));
        Pack pack = Packs.read(root.resolve("bundles/reglet.pack.adheredveneer/pack")).pack();
        engine = Engine.compile(pack, Worksheets::run);
        Job job = Jobs.read(root.resolve("sample-specs/harbour-clinic"), pack);
        oneWall = walls(job, 1);
        tenWalls = walls(job, 10);
        twentyWalls = walls(job, 20);
        kept = engine.open(oneWall);
        kept.checked();
        assembly = engine.resolve(oneWall);
        mistakes = engine.open(Jobs.read(root.resolve("sample-specs/orchard-row"), pack));
        WallType wall = oneWall.walls().get(0);
        bare = engine.open(oneWall.with(new WallType(wall.id(), wall.title(), wall.facts(), wall.meetings(),
            Map.of("framing", wall.choices().get("framing")), wall.at())));
    }

    private static Job walls(Job job, int number) {
        List<WallType> walls = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            WallType wall = job.walls().get(i % job.walls().size());
            walls.add(new WallType("W" + (i + 1), wall.title(), wall.facts(), wall.meetings(), wall.choices(), wall.at()));
        }
        return new Job(job.title(), job.note(), job.pack(), job.facts(), walls, job.sections(), job.changes(), job.accepted(),
            job.products(), job.submittals(), job.at());
    }

    @Benchmark
    public Checked checkAfterOneChange() throws Exception {
        return kept.after(List.of(new Change("W1.sealant", "silyl-50"))).checked();
    }

    @Benchmark
    public List<Drawing> detailsOfOneWall() {
        return Details.of(assembly, "W1");
    }

    @Benchmark
    public List<Remedies> remediesOfAllFindings() {
        return mistakes.checked().findings().stream().map(mistakes::remedies).toList();
    }

    @Benchmark
    public List<WhatIf> whatIfOfOneWall() {
        return engine.pack().components().stream().flatMap(component -> kept.whatIf("W1", component.id()).stream()).toList();
    }

    @Benchmark
    public Proposal proposeForOneWall() {
        return bare.propose();
    }

    @Benchmark
    public JobWorksheets worksheetsOfOneWall() {
        return engine.worksheets(oneWall);
    }

    @Benchmark
    public Checked checkOfTenWalls() {
        return engine.check(tenWalls);
    }

    @Benchmark
    public Checked checkOfTwentyWalls() {
        return engine.check(twentyWalls);
    }
}
