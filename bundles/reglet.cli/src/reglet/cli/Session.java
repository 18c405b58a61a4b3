package reglet.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;

import reglet.desk.Caches;
import reglet.desk.Desk;
import reglet.desk.Issues;
import reglet.desk.OpenJob;
import reglet.desk.Shelf;
import reglet.model.Issue;
import reglet.model.Pack;
import reglet.model.Place;
import reglet.model.Problem;
import reglet.model.UnusableInput;

/** What the verbs of one command line share. */
final class Session {
    private final Callable<Shelf> packs;
    final PrintWriter out;
    final PrintWriter err;

    Session(Callable<Shelf> packs, PrintWriter out, PrintWriter err) {
        this.packs = packs;
        this.out = out;
        this.err = err;
    }

    /** The pack that is used without a job: the one named, or the only one. */
    Pack pack(String name, List<Path> packFolders) throws Exception {
        Shelf shelf = packs.call();
        return new Desk(shelf.with(Shelf.folders(packFolders)), Caches.folder()).pack(name);
    }

    /** The issue in a folder: a frozen one, or the present draft of a job. */
    Issue issue(Path folder, List<Path> packFolders) throws Exception {
        if (!Issues.isIssue(folder)) {
            return Issues.present(open(folder, packFolders));
        }
        try {
            return Issues.read(folder, pack(Issues.packName(folder), packFolders));
        } catch (UnusableInput unusable) {
            throw unusable.below(folder.toString());
        }
    }

    /** Opens a job folder with the installed packs and those in other folders. */
    OpenJob open(Path folder, List<Path> packFolders) throws Exception {
        if (!Files.isDirectory(folder)) {
            throw new UnusableInput(new Problem(Place.of(folder.toString()), "there is no such folder",
                "expected a job folder, with a job.yaml in it"));
        }
        try {
            return new Desk(packs.call().with(Shelf.folders(packFolders)), Caches.folder()).open(folder);
        } catch (UnusableInput unusable) {
            throw unusable.below(folder.toString());
        } catch (IOException unreachable) {
            throw new IOException(folder + ": " + unreachable.getMessage(), unreachable);
        }
    }
}
