package reglet.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import reglet.model.UnusableInput;
import reglet.reading.sheet.SheetFixtures;

/** What happens when the process hangs, grows, floods, talks nonsense, breaks off, or nobody wants its answer any more. */
class LimitsTest {
    private static final Child.Limits SMALL = new Child.Limits(24, Duration.ofSeconds(2), Duration.ofSeconds(2), 2 << 20);
    private static final Child.Limits SLOW = new Child.Limits(24, Duration.ofSeconds(60), Duration.ofSeconds(60), 2 << 20);

    @TempDir
    Path folder;

    @Test
    void aSheetThatHangsIsStoppedAndTheNextIsMeasured() throws IOException {
        assertEquals(List.of("reading it took too long and was stopped", ""), problems(Misbehaving.Hangs.class, SMALL));
    }

    @Test
    void aSheetThatNeedsTooMuchMemoryIsStoppedAndTheNextIsMeasured() throws IOException {
        assertEquals(List.of("reading it needed more than 24 MB of memory and was stopped", ""),
            problems(Misbehaving.EatsMemory.class, SLOW));
    }

    @Test
    void anAnswerThatIsNoneIsAProblemOfTheSheet() throws IOException {
        assertEquals(List.of("reading it broke off without an answer", ""), problems(Misbehaving.TalksNonsense.class, SLOW));
        assertEquals(List.of("reading it broke off without an answer", ""), problems(Misbehaving.BreaksOff.class, SLOW));
    }

    @Test
    void aFailureIsToldInTheProcessesOwnWords() throws IOException {
        assertEquals(List.of("reading it failed (Exception in thread \"main\" java.lang.IllegalStateException: the reason)", ""),
            problems(Misbehaving.Fails.class, SLOW));
    }

    private List<String> problems(Class<?> main, Child.Limits limits) throws IOException {
        return Child.of(main, limits).measure(List.of(folder.resolve("bad.pdf"), folder.resolve("good.pdf"))).stream()
            .map(Measure::problem).toList();
    }

    @Test
    void aPackageThatGrowsTooLargeIsRefused() throws IOException {
        assertTrue(failure(Misbehaving.Floods.class, SLOW).contains("larger than 2 MB"));
    }

    @Test
    void aPackageThatTakesTooLongNamesTheSheet() throws IOException {
        assertEquals("the package was not put together because of bad.pdf: reading it took too long and was stopped",
            failure(Misbehaving.Hangs.class, SMALL));
    }

    @Test
    void aPackageThatBreaksOffIsNoPackage() throws IOException {
        assertEquals("the package was not put together because of bad.pdf: reading it broke off without an answer",
            failure(Misbehaving.BreaksOff.class, SLOW));
    }

    @Test
    void aProcessThatCannotEvenStartIsNoProblemOfASheet() {
        Child none = Child.of(LimitsTest.class, SLOW);
        IOException failed = assertThrows(IOException.class, () -> none.measure(List.of(folder.resolve("good.pdf"))));
        assertTrue(failed.getMessage().contains("LimitsTest"), failed.getMessage());
    }

    private String failure(Class<?> main, Child.Limits limits) throws IOException {
        PackagePlan plan = plan();
        return assertThrows(IOException.class, () -> Child.of(main, limits).assemble(plan)).getMessage();
    }

    private PackagePlan plan() throws IOException {
        return new PackagePlan("Package", Made.pdf("Cover"), List.of(Made.own("Cover", 1, 1), Made.sheet("Sheet 1", 1,
            folder.resolve("bad.pdf"))), List.of());
    }

    @Test
    void anInterruptedCallEndsTheProcess() throws Exception {
        PackagePlan plan = plan();
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        List<Long> before = children();
        Thread caller = new Thread(() -> {
            try {
                Child.of(Misbehaving.Hangs.class, SLOW).assemble(plan);
            } catch (IOException failed) {
                thrown.set(failed);
            }
        });
        caller.start();
        while (children().equals(before)) {
            Thread.sleep(20);
        }
        caller.interrupt();
        caller.join(10_000);
        assertInstanceOf(InterruptedIOException.class, thrown.get());
        assertTrue(caller.getState() == Thread.State.TERMINATED);
        assertEquals(before, children());
    }

    private static List<Long> children() {
        return ProcessHandle.current().children().filter(ProcessHandle::isAlive).map(ProcessHandle::pid).sorted().toList();
    }

    @Test
    void aSheetThatHangsFloodsOrTalksNonsenseIsGivenUp() {
        for (Class<?> bad : List.of(Misbehaving.Hangs.class, Misbehaving.TalksNonsense.class, Misbehaving.Fails.class,
            Misbehaving.Floods.class)) {
            assertThrows(UnusableInput.class, () -> Child.of(bad, SMALL).read(folder.resolve("bad.pdf"), SheetFixtures.pack(), ""),
                bad.getSimpleName());
        }
    }
}
