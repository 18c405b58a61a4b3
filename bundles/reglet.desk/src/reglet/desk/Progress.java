package reglet.desk;

/** How far long work is, and whether it is still wanted. Called between steps, never inside one. */
public interface Progress {
    /** Nobody watches and nobody cancels. */
    Progress NONE = new Progress() {
        @Override
        public void step(int done, int of, String what) {
        }

        @Override
        public boolean cancelled() {
            return false;
        }
    };

    /**
     * @param done steps finished
     * @param of   steps in all
     * @param what the step that begins now, in words
     */
    void step(int done, int of, String what);

    boolean cancelled();
}
