package stillroom.desk.imports;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import stillroom.desk.imports.Upload.Incoming;

/** The uploads that are looked at now: the newest few; older ones are forgotten, as nothing of them is stored. */
final class Uploads {
    private static final int MOST = 4;
    private static final long SOON_MILLIS = 700;

    private final ConcurrentLinkedDeque<Upload> held = new ConcurrentLinkedDeque<>();
    private final ExecutorService worker = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "imports");
        thread.setDaemon(true);
        return thread;
    });

    /** Begins to read; waits a moment, as most uploads are read by then. */
    Upload begin(List<Incoming> files, CardNames cards) {
        Upload upload = new Upload(UUID.randomUUID().toString(), files.size());
        held.addFirst(upload);
        while (held.size() > MOST) {
            held.removeLast().stop();
        }
        await(() -> upload.read(files, cards));
        return upload;
    }

    /** Works in the background, waiting a moment for it to be done. */
    void await(Runnable work) {
        try {
            worker.submit(work).get(SOON_MILLIS, TimeUnit.MILLISECONDS);
        } catch (java.util.concurrent.TimeoutException stillAtIt) {
            // The page shows how far it is.
        } catch (java.util.concurrent.ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    Optional<Upload> upload(String id) {
        return held.stream().filter(upload -> upload.id().equals(id)).findFirst();
    }

    void forget(Upload upload) {
        upload.stop();
        held.remove(upload);
    }
}
