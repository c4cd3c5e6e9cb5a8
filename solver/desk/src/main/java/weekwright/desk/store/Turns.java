package weekwright.desk.store;

import java.io.IOException;
import java.nio.file.Path;
import weekwright.model.document.DocumentException;

/** One writer at a time: work on a folder under its lock, and what a failure of the disk means to a coach. */
final class Turns {
    /** How often the lock is asked for before giving up: five seconds, far longer than any write. */
    static final int PATIENCE = 100;

    private static final int PAUSE_MILLIS = 50;

    private final Path folder;
    private final Disk disk;
    private final int patience;

    Turns(Path folder, Disk disk, int patience) {
        this.folder = folder;
        this.disk = disk;
        this.patience = patience;
    }

    /** What is done under the lock. */
    interface Turn<T> {
        T run() throws IOException, DocumentException;
    }

    /** Does work in a folder that is there. */
    <T> T take(Turn<T> turn) throws DocumentException {
        try {
            return locked(turn);
        } catch (IOException e) {
            throw StoreFault.of(folder, e);
        }
    }

    /** Does work in a folder that is made where it is missing. */
    <T> T begin(Turn<T> turn) throws DocumentException {
        try {
            if (!disk.isFolder(folder)) {
                disk.makeFolder(folder);
            }
            return locked(turn);
        } catch (IOException e) {
            throw StoreFault.of(folder, e);
        }
    }

    private <T> T locked(Turn<T> turn) throws IOException, DocumentException {
        if (!disk.isFolder(folder)) {
            throw StoreFault.gone(folder);
        }
        Disk.Lock lock = lock();
        try {
            return turn.run();
        } finally {
            lock.close();
        }
    }

    private Disk.Lock lock() throws IOException {
        for (int i = 0; ; i++) {
            Disk.Lock lock = disk.tryLock(folder);
            if (lock != null) {
                return lock;
            }
            if (i >= patience) {
                throw StoreFault.busy(folder);
            }
            pause();
        }
    }

    private void pause() {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw StoreFault.busy(folder);
        }
    }
}
