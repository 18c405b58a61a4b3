package reglet.workbench;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Opens the window once for all tests, as the application does, on a thread of its own; tests stay on theirs. */
final class Workbench implements BeforeAllCallback, ExtensionContext.Store.CloseableResource {
    private static Thread thread;
    /** With -Dreglet.watch=true all that keeps the window from answering is printed at the end. */
    private static Watch watch;

    @Override
    public void beforeAll(ExtensionContext context) throws Exception {
        if (thread != null) {
            return;
        }
        CountDownLatch opened = new CountDownLatch(1);
        thread = new Thread(() -> Application.run(Optional.empty(), opened::countDown), "window");
        thread.setDaemon(true);
        thread.start();
        if (!opened.await(120, TimeUnit.SECONDS)) {
            throw new IllegalStateException("the window did not open");
        }
        if (Boolean.getBoolean("reglet.watch")) {
            watch = new Watch();
        }
        context.getRoot().getStore(ExtensionContext.Namespace.GLOBAL).put(Workbench.class, this);
    }

    static Display display() {
        return PlatformUI.getWorkbench().getDisplay();
    }

    @Override
    public void close() throws InterruptedException {
        if (watch != null) {
            watch.close();
            watch.tooLong().forEach(System.out::println);
        }
        display().syncExec(PlatformUI.getWorkbench()::close);
        thread.join(TimeUnit.SECONDS.toMillis(20));
    }
}
