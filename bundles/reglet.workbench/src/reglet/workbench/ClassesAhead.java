package reglet.workbench;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.wiring.BundleWiring;

/**
 * Loads the window's own classes beside it once it stands: a view that is looked at for the first time would load and check them on the
 * window's thread, where a key waits for it. None of them is initialized before its time.
 */
final class ClassesAhead extends Job {
    private static final String ROOT = "/reglet/workbench";

    ClassesAhead() {
        super("Loading classes ahead");
        setSystem(true);
        setPriority(Job.DECORATE);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Bundle bundle = FrameworkUtil.getBundle(ClassesAhead.class);
        BundleWiring wiring = bundle.adapt(BundleWiring.class);
        for (String resource : wiring.listResources(ROOT, "*.class", BundleWiring.LISTRESOURCES_LOCAL
            | BundleWiring.LISTRESOURCES_RECURSE)) {
            if (monitor.isCanceled()) {
                return Status.CANCEL_STATUS;
            }
            try {
                // asking for its methods links a class
                Class.forName(resource.replace(".class", "").replace('/', '.'), false, wiring.getClassLoader()).getDeclaredMethods();
            } catch (ClassNotFoundException | LinkageError missing) {
                // who needs it will be told
            }
        }
        return Status.OK_STATUS;
    }
}
