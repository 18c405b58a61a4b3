package reglet.workbench.start;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

import reglet.desk.FreshFolder;
import reglet.workbench.Session;

/** The invented jobs that come with the window. Each is copied before it is opened, so that it can be changed at will. */
final class SampleJobs {
    private static final String ROOT = "samples/";
    private static final String TITLE = "title:";

    private SampleJobs() {
    }

    /** A sample: its folder's name and its title. */
    record Sample(String name, String title) {
    }

    /** Those in the bundle, by name. */
    static List<Sample> all() {
        Bundle bundle = FrameworkUtil.getBundle(SampleJobs.class);
        List<Sample> samples = new ArrayList<>();
        var folders = bundle.getEntryPaths(ROOT);
        if (folders != null) {
            for (String folder : Collections.list(folders)) {
                URL job = bundle.getEntry(folder + "job.yaml");
                if (job != null) {
                    String name = folder.substring(ROOT.length()).replace("/", "");
                    samples.add(new Sample(name, title(job, name)));
                }
            }
        }
        samples.sort(java.util.Comparator.comparing(Sample::name));
        return List.copyOf(samples);
    }

    private static String title(URL job, String name) {
        try (InputStream content = job.openStream()) {
            return new String(content.readAllBytes(), StandardCharsets.UTF_8).lines().filter(line -> line.startsWith(TITLE)).findFirst()
                .map(line -> line.substring(TITLE.length()).strip()).orElse(name);
        } catch (IOException unreadable) {
            return name;
        }
    }

    /** Copies a sample into a new folder below another one, and opens it. */
    static void open(Session session, Sample sample, Path below) {
        session.work().run("Copying the sample " + sample.title(), true, monitor -> {
            Path folder = FreshFolder.free(below.resolve(sample.name()));
            FreshFolder.fill(folder, files(sample));
            session.open(folder);
        });
    }

    private static Map<String, byte[]> files(Sample sample) throws IOException {
        Bundle bundle = FrameworkUtil.getBundle(SampleJobs.class);
        String root = ROOT + sample.name() + "/";
        Map<String, byte[]> files = new TreeMap<>();
        for (URL entry : Collections.list(bundle.findEntries(root, "*", true))) {
            String path = entry.getPath().substring(entry.getPath().indexOf(root) + root.length());
            if (!path.endsWith("/") && !path.isEmpty()) {
                try (InputStream content = entry.openStream()) {
                    files.put(path, content.readAllBytes());
                }
            }
        }
        return files;
    }
}
